using NodaTime;
using Practice.Domain.Evidence;
using Practice.Domain.Foods;
using Practice.Domain.Physiology;
using Practice.Domain.Quantities;
using Practice.Domain.Screening;

namespace Practice.Domain.Plans.Weeks;

/// <summary>
/// The first four hours after the finish: 1.0 to 1.2 g/kg of carbohydrate for each of them, and 0.25 to 0.40 g/kg of
/// protein at each sitting. Thomas 2016, Wallis and Podlogar 2022. In three sittings at half an hour, two hours and
/// three and a half (own rule). Check T08.
/// </summary>
public static class Recovery
{
    /// <summary>Where recovery comes from.</summary>
    public static Source Source { get; } =
        new(
            "recovery",
            "Carbohydrate 1.0-1.2 g/kg/h for four hours, protein 0.25-0.40 g/kg a meal: Thomas et al. 2016; Wallis, Podlogar 2022.",
            Provenance.Published
        );

    private const decimal LowGPerKgHour = 1.0m;
    private const decimal HighGPerKgHour = 1.2m;
    private const decimal AimGPerKgHour = 1.1m;
    private const decimal Hours = 4;

    /// <summary>Finishes from here on are followed by an evening meal, not by lunch.</summary>
    private static readonly LocalTime Afternoon = new(15, 0);

    /// <summary>Carbohydrate of the four hours, g.</summary>
    /// <param name="massKg">Body mass, kg.</param>
    /// <param name="gramsPerKgHour">Rate, g/kg/h, 1.0 to 1.2.</param>
    public static decimal CarbohydrateG(decimal massKg, decimal gramsPerKgHour = AimGPerKgHour) =>
        massKg * gramsPerKgHour * Hours;

    /// <summary>The sittings after the finish, without food.</summary>
    /// <param name="finish">Expected finish in the race's clock.</param>
    /// <param name="mass">Body mass.</param>
    /// <param name="adjustments">What screening changed.</param>
    public static PlanDay Layout(LocalDateTime finish, BodyMass mass, Adjustments adjustments)
    {
        ArgumentNullException.ThrowIfNull(adjustments);
        var aim = CarbohydrateG(mass.Kilograms);
        var late = finish.TimeOfDay >= Afternoon;
        Occasion Sitting(OccasionKind kind, int minutes, decimal share) =>
            new()
            {
                Kind = kind,
                Time = ToFiveMinutes(finish.PlusMinutes(minutes).TimeOfDay),
                CarbohydrateAimG = share * aim,
            };
        return new PlanDay
        {
            Date = finish.Date,
            DaysBefore = 0,
            Share = 1,
            Occasions =
            [
                Sitting(late ? OccasionKind.AfternoonSnack : OccasionKind.MorningSnack, 30, 0.27m),
                Sitting(late ? OccasionKind.EveningMeal : OccasionKind.Lunch, 120, 0.48m),
                Sitting(late ? OccasionKind.Supper : OccasionKind.AfternoonSnack, 210, 0.25m),
            ],
            Limits = new DayLimits
            {
                CarbohydrateAimG = aim,
                CarbohydrateTolerance = (HighGPerKgHour - LowGPerKgHour) / 2 / AimGPerKgHour,
                FibreMaxG = 25,
                FatMaxG = 0.8m * mass.Kilograms,
                FatMaxEnergyShare = 0.30m,
                ProteinMinG = adjustments.NoProteinFloor ? 0 : 3 * 0.25m * mass.Kilograms,
                ProteinMaxG = 4 * 0.40m * mass.Kilograms,
                DrinksShareMin = 0.10m,
                DrinksShareAim = 0.30m,
                DrinksShareMax = 0.55m,
                SugaryShareMax = 0.50m,
                SodiumMinMg = 0,
                SodiumMaxMg = adjustments.NoAddedSodium ? 1200 : 4000,
                FructoseMaxPerOccasionG = adjustments.FructoseMaxPerOccasionG ?? 50,
                LactoseMaxPerOccasionG = adjustments.LactoseMaxPerOccasionG,
                LactoseMaxPerDayG = adjustments.LactoseMaxPerDayG,
                OccasionWeightMaxG = 12.5m * mass.Kilograms * adjustments.OccasionWeightFactor,
            },
        };
    }

    private static LocalTime ToFiveMinutes(LocalTime time) =>
        LocalTime.FromMinutesSinceMidnight((time.Hour * 60 + time.Minute + 2) / 5 * 5 % 1440);
}
