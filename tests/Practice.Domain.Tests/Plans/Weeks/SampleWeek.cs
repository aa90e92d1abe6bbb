using NodaTime;
using Practice.Domain.Clients;
using Practice.Domain.Plans;
using Practice.Domain.Plans.Weeks;
using Practice.Domain.Quantities;
using Practice.Domain.Races;
using Practice.Domain.Screening;
using Practice.Domain.Targets;

namespace Practice.Domain.Tests.Plans.Weeks;

/// <summary>A runner of 70 kg before a marathon on a Sunday at nine, with the race week laid out.</summary>
internal static class SampleWeek
{
    public static readonly LocalDateTime Start = new(2027, 4, 18, 9, 0);
    public static readonly LocalDate Today = new(2027, 4, 1);

    public static Client Runner(string? livesIn = null)
    {
        var runner = Client.Register(
            Guid.Parse("11111111-1111-1111-1111-111111111111"),
            "Nora",
            "Field",
            new LocalDate(1990, 5, 17),
            new Physique
            {
                Sex = Sex.Female,
                HeightCm = 170,
                Vo2Max = 50,
            },
            new BodyMassEntry(Today, BodyMass.OfKilograms(70))
        );
        runner.LiveIn(livesIn);
        return runner;
    }

    private static Race Race(Client runner, ExpectedWeather? weather) =>
        Domain.Races.Race.Enter(
            runner.PracticeId,
            runner.Id,
            new RaceDetails
            {
                Name = "Harbour Marathon",
                DistanceKm = 42.195m,
                Start = Start,
                ZoneId = "Europe/London",
                GoalTime = Duration.FromMinutes(225),
                Weather = weather,
            }
        );

    public static RaceWeekPlan Plan(
        Adjustments? adjustments = null,
        ExpectedWeather? weather = null,
        string? livesIn = null
    )
    {
        var runner = Runner(livesIn);
        var race = Race(runner, weather);
        var screening = new ScreeningOutcome([], [], adjustments ?? Adjustments.None);
        var choices = new LoadingChoices();
        var targets = LoadingTargets.For(runner, race, screening, choices, Today);
        var plan = LoadingPlan.Empty(runner, race, screening, choices, MenuStyle.Vary, targets);
        return plan with { Week = WeekLayout.Of(plan, runner, race, screening.Adjustments, Today) };
    }
}
