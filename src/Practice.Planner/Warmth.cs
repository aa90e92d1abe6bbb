using NodaTime;
using Practice.Domain.Foods;
using Practice.Domain.Plans;
using Practice.Domain.Quantities;

namespace Practice.Planner;

/// <summary>
/// Loads the native solver and has the hot paths compiled, so that the first client of the day is not the one who waits.
/// </summary>
internal static class Warmth
{
    public static MenuRequest SmallRequest()
    {
        const decimal Aim = 300;
        return new MenuRequest
        {
            BodyMass = BodyMass.OfKilograms(60),
            Foods = FoodLibrary.Standard.All,
            Days =
            [
                new PlanDay
                {
                    Date = new LocalDate(2026, 1, 1),
                    DaysBefore = 1,
                    Share = 1,
                    Limits = new DayLimits
                    {
                        CarbohydrateAimG = Aim,
                        FibreMaxG = 15,
                        FatMaxG = 60,
                        ProteinMinG = 40,
                        ProteinMaxG = 90,
                        SodiumMaxMg = 5000,
                        OccasionWeightMaxG = 750,
                    },
                    Occasions =
                    [
                        Sitting(OccasionKind.Breakfast, 8, 0.4m * Aim),
                        Sitting(OccasionKind.MorningSnack, 11, 0.2m * Aim),
                        Sitting(OccasionKind.Lunch, 13, 0.4m * Aim),
                    ],
                },
            ],
        };
    }

    private static Occasion Sitting(OccasionKind kind, int hour, decimal aimG) =>
        new()
        {
            Kind = kind,
            Time = new LocalTime(hour, 0),
            CarbohydrateAimG = aimG,
        };
}
