using NodaTime;
using Practice.Domain.Clients;
using Practice.Domain.Physiology;
using Practice.Domain.Plans;
using Practice.Domain.Plans.Weeks;
using Practice.Domain.Races;

namespace Practice.Store.Tests;

/// <summary>A race week with no field left at its default.</summary>
internal static class SampleWeek
{
    public static RaceWeek Around(PlanDay morning, PlanDay recovery) =>
        new()
        {
            ClientZoneId = "America/New_York",
            Runner = new(Sex.Female, 51.5, Discipline.TrailRunning),
            Days =
            [
                new WeekDay
                {
                    Date = new LocalDate(2026, 10, 9),
                    DaysBefore = 2,
                    Kind = WeekDayKind.Loading,
                    Pointers = [new Advice("Eat what the plan says.", "600 g")],
                    Note = "Train at noon",
                    Travel = new(new LocalTime(12, 0), new LocalTime(17, 30)),
                },
            ],
            Morning = morning,
            MorningAdvice = [new Advice("Drink with breakfast.", "350 to 490 ml")],
            MorningNote = "Room service knows",
            Recovery = recovery,
            RecoveryAdvice = [new Advice("Start small.", "70 g")],
            RecoveryNote = "Milk is in the bag",
            Fluids = [new Advice("To thirst.", "0.5 L")],
            Caffeine = [new Advice("As usual.", "200 mg")],
            Sleep = [new Advice("Early.", "8 h")],
            DoNotTry = ["New shoes"],
            Packing = [new PackItem(Packing.Kit, "Cap", IsOwn: true)],
            Heat = new(21.5m, 60, 21.2m, HeatColour.Yellow, ["Start slower."]),
        };
}
