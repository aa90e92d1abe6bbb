using BenchmarkDotNet.Attributes;
using NodaTime;
using Practice.Domain.Clients;
using Practice.Domain.Foods;
using Practice.Domain.Plans;
using Practice.Domain.Practices;
using Practice.Domain.Quantities;
using Practice.Domain.Races;
using Practice.Domain.Screening;
using Practice.Domain.Targets;
using Practice.Handouts;
using Practice.Handouts.Blocks;
using Practice.Handouts.Content;

namespace Practice.Benchmarks;

/// <summary>From a plan of three and a half days to its paper: content, and content with PDF.</summary>
[MemoryDiagnoser]
public class HandoutBenchmark
{
    private static readonly LocalDate Today = new(2026, 9, 7);

    private readonly PracticeProfile _practice = new()
    {
        PracticeId = Guid.Empty,
        Name = "Fernhollow Performance Kitchen",
    };

    private readonly HandoutOptions _options = new()
    {
        Version = 1,
        IssuedOn = Today,
        Today = Today,
    };

    private RaceWeekPlan _plan = null!;

    [GlobalSetup]
    public void MakePlan()
    {
        var mass = BodyMass.OfKilograms(62);
        var choices = new LoadingChoices { WindowHours = 84 };
        var client = Client.Register(
            Guid.Empty,
            "Ada",
            "Example",
            new LocalDate(1990, 1, 1),
            new Physique { Sex = Sex.Female, HeightCm = 168 },
            new BodyMassEntry(Today, mass)
        );
        var race = Race.Enter(
            Guid.Empty,
            Guid.Empty,
            new RaceDetails
            {
                Name = "Harvest Marathon",
                DistanceKm = 42.195m,
                Start = new LocalDateTime(2026, 9, 13, 8, 30),
                ZoneId = "Europe/London",
            }
        );
        var targets = LoadingTargets.For(
            client,
            race,
            new ScreeningOutcome([], [], Adjustments.None),
            choices,
            Today
        );
        var header = new PlanHeader
        {
            ClientName = client.Name,
            BodyMass = mass,
            RaceName = race.Name,
            DistanceKm = race.DistanceKm,
            RaceStart = race.Start,
            ZoneId = race.ZoneId,
        };
        var days = LoadingLayout.Days(race.Start, mass, choices, targets, Adjustments.None);
        _plan = new()
        {
            Header = header,
            Choices = choices,
            Targets = targets,
            Days = [.. days.Select(Fill)],
            Fluids = PlanAdvice.Fluids(Adjustments.None),
            Cautions = [],
            Why = PlanAdvice.Why(header, targets, Adjustments.None),
        };
    }

    [Benchmark]
    public HandoutDoc Content() => LoadingHandout.Build(_plan, _practice, _options);

    [Benchmark]
    public byte[] Pdf() => HandoutPdf.Render(LoadingHandout.Build(_plan, _practice, _options));

    // five foods a sitting, whatever they are: the layout has as much to do as with a menu
    private static PlanDay Fill(PlanDay day) =>
        day with
        {
            Occasions =
            [
                .. day.Occasions.Select(
                    (occasion, sitting) =>
                        occasion with
                        {
                            Portions =
                            [
                                .. FoodLibrary
                                    .Standard.All.Skip(sitting * 20)
                                    .Take(5)
                                    .Select(f =>
                                        Portion.Of(f, f.Roles[0].Role, f.Serving.MinSteps)
                                    ),
                            ],
                        }
                ),
            ],
        };
}
