using System.Collections.Immutable;
using Practice.Domain.Course;
using Practice.Domain.Targets;
using Practice.Service.Courses;
using Practice.Service.Desks;

namespace Practice.Service.Demo;

/// <summary>
/// Courses of the demo practice's races: invented lines and heights, the same for everybody who runs the race. What a
/// runner carries and tolerates is invented too. Steps are the real planner's.
/// </summary>
public sealed class DemoCourses(
    OpenCourse open,
    BeginCourse begin,
    SaveCourse save,
    CourseDesk planning,
    PracticeCalendar calendar
)
{
    /// <summary>Begins the course of a race, where the demo knows one; stations and products, no steps yet.</summary>
    internal async Task Begin(Desk desk, Guid raceId, DemoClient client, CancellationToken cancel)
    {
        if (
            ProfileOf(client.Race) is not { } profile
            || await open.Run(desk, raceId, cancel) is not { } file
        )
            return;
        var course = await begin.Run(desk, file, profile, cancel);
        var sheet = (
            course.Value.Sheet with
            {
                Choices = ChoicesOf(desk, client, course.Value.Sheet.Choices),
                Products = IsLong(client.Race) ? Trail : course.Value.Sheet.Products,
            }
        ).WithStations(StationsOf(client.Race));
        await save.Run(desk, course, sheet, cancel);
    }

    /// <summary>Plans the steps of a race that has a course, so that its plan carries them.</summary>
    internal async Task Plan(Desk desk, Guid raceId, CancellationToken cancel)
    {
        if (await open.Run(desk, raceId, cancel) is not { Course: { } course } file)
            return;
        var sheet = course.Value.Sheet;
        var schedule = await planning.Plan(file, sheet, null, cancel);
        await save.Run(desk, course, sheet with { Steps = schedule.Steps }, cancel);
    }

    private static bool IsLong(DemoRace race) => race.DistanceKm > 43;

    private static CourseProfile? ProfileOf(DemoRace race) =>
        race.Place switch
        {
            "Saltmere" when race.DistanceKm > 40 => Hills(race, 9, 6, 22, 3.5),
            "Ottersby" => Hills(race, 74, 38, 9, 0.8),
            "Stannock" => Hills(race, 310, 190, 5, 2.1),
            "Pelagiri" => Hills(race, 24, 14, 13, 1.4),
            _ => null,
        };

    /// <summary>Waves of two lengths about a height, m.</summary>
    private static CourseProfile Hills(
        DemoRace race,
        double middleM,
        double swingM,
        double lengthKm,
        double shiftKm
    )
    {
        var points = ImmutableArray.CreateBuilder<CoursePoint>();
        for (var km = 0m; km < race.DistanceKm; km += 0.1m)
            points.Add(new CoursePoint(km, Height(km)));
        points.Add(new CoursePoint(race.DistanceKm, Height(race.DistanceKm)));
        var steps = points
            .Zip(points.Skip(1), (a, b) => (b.ElevationM - a.ElevationM) ?? 0)
            .ToList();
        return new CourseProfile
        {
            DistanceKm = race.DistanceKm,
            Points = points.ToImmutable(),
            AscentM = Math.Round(steps.Where(s => s > 0).Sum()),
            DescentM = -Math.Round(steps.Where(s => s < 0).Sum()),
            Name = race.Name,
        };

        decimal Height(decimal km)
        {
            var at = 2 * Math.PI * ((double)km + shiftKm) / lengthKm;
            return Math.Round(
                (decimal)(middleM + swingM * Math.Sin(at) + swingM / 3 * Math.Sin(2.7 * at)),
                1
            );
        }
    }

    private static IEnumerable<AidStation> StationsOf(DemoRace race)
    {
        var every = IsLong(race) ? 8m : 5m;
        for (var km = every; km < race.DistanceKm; km += every)
            yield return IsLong(race)
                ? new AidStation(km, [Product.WaterId, "drink", "banana", "potato"], 200)
                : new AidStation(km, [Product.WaterId, "drink"]);
    }

    private static ImmutableArray<Product> Trail { get; } =
    [
        .. CourseProducts.Standard.Where(p =>
            p.Id
                is Product.WaterId
                    or "drink"
                    or "gel"
                    or "gel-isotonic"
                    or "bottle"
                    or "banana"
                    or "potato"
        ),
    ];

    private CourseChoices ChoicesOf(Desk desk, DemoClient client, CourseChoices choices) =>
        choices with
        {
            Overrides =
                client.Plan == DemoPlan.Issued
                    ?
                    [
                        Own(desk, CourseTargetKeys.Tolerated, 60),
                        Own(desk, CourseTargetKeys.CleanTrials, 2),
                    ]
                    : [],
            SweatLPerHour =
                client.Plan == DemoPlan.Issued && client.SweatTests.IsEmpty
                    ? Math.Round(0.014m * client.MassKg, 1)
                    : choices.SweatLPerHour,
        };

    private TargetOverride Own(Desk desk, string key, decimal value) =>
        new(
            key,
            value,
            Computed: null,
            desk.Name,
            calendar.Now,
            "Two long runs in spring at 60 g/h, before rehearsals were kept here: quiet stomach."
        );
}
