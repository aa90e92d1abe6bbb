using NodaTime;
using Practice.Domain.Physiology;
using Practice.Domain.Races;

namespace Practice.Domain.Course;

/// <summary>
/// When each place of the course is passed. At an even effort the metabolic power is the same throughout, so that time
/// follows the cost of each stretch (Minetti 2002); the whole takes the planned time either way. Advice, no promise.
/// Checks K01 to K05, K08.
/// </summary>
public sealed class PaceLine
{
    private readonly double[] _km;
    private readonly double[] _minutes;

    private PaceLine(double[] km, double[] minutes) => (_km, _minutes) = (km, minutes);

    /// <summary>The line of a case.</summary>
    public static PaceLine Of(CourseCase course, Pacing pacing)
    {
        ArgumentNullException.ThrowIfNull(course);
        if (course.Discipline == Discipline.Triathlon && course.Choices.Legs is { } legs)
            return OfLegs(course, legs);
        return
            pacing == Pacing.EvenEffort
            && course.Profile.HasElevation
            && CostOf(course.Discipline) is { } cost
            ? OfEffort(course.Profile, course.Finish, cost)
            : OfPace(course.Profile.DistanceKm, course.Finish);
    }

    /// <summary>Whether an even effort can be told from an even pace. Not on a bike: no cost of climbing there is sourced.</summary>
    public static bool KnowsEffort(CourseCase course)
    {
        ArgumentNullException.ThrowIfNull(course);
        return course.Profile.HasElevation && CostOf(course.Discipline) is not null;
    }

    /// <summary>Distance on the level that costs as much as the course, km; its length where slopes are not known.</summary>
    public static decimal FlatEquivalentKm(CourseProfile profile, Discipline discipline)
    {
        ArgumentNullException.ThrowIfNull(profile);
        return profile.HasElevation && CostOf(discipline) is { } cost
            ? (decimal)Stretches(profile).Sum(s => s.Km * cost(s.Gradient))
            : profile.DistanceKm;
    }

    /// <summary>When a place is passed, since the start.</summary>
    /// <param name="km">Place, km; outside the course its nearest end counts.</param>
    public Duration At(decimal km) => Duration.FromMinutes(MinutesAt((double)km));

    /// <summary>Which place is reached after a time, km; the finish after it.</summary>
    public decimal KmAt(Duration elapsed) => (decimal)Between(_minutes, _km, elapsed.TotalMinutes);

    internal double MinutesAt(double km) => Between(_km, _minutes, km);

    private static PaceLine OfPace(decimal km, Duration finish) =>
        new([0, (double)km], [0, finish.TotalMinutes]);

    private static PaceLine OfEffort(
        CourseProfile profile,
        Duration finish,
        Func<double, double> cost
    )
    {
        var stretches = Stretches(profile).ToList();
        var all = stretches.Sum(s => s.Km * cost(s.Gradient));
        var (km, minutes) = (new double[stretches.Count + 1], new double[stretches.Count + 1]);
        for (var i = 0; i < stretches.Count; i++)
        {
            km[i + 1] = km[i] + stretches[i].Km;
            minutes[i + 1] =
                minutes[i]
                + finish.TotalMinutes * stretches[i].Km * cost(stretches[i].Gradient) / all;
        }
        return new PaceLine(km, minutes);
    }

    private static PaceLine OfLegs(CourseCase course, TriathlonLegs legs)
    {
        var half = legs.Transitions.TotalMinutes / 2;
        var bikeFrom = (double)legs.SwimKm;
        var runFrom = bikeFrom + (double)legs.BikeKm;
        var swum = legs.Swim.TotalMinutes;
        var ridden = swum + half + legs.Bike.TotalMinutes;
        return new PaceLine(
            [0, bikeFrom, bikeFrom, runFrom, runFrom, (double)course.Profile.DistanceKm],
            [0, swum, swum + half, ridden, ridden + half, course.Finish.TotalMinutes]
        );
    }

    private static Func<double, double>? CostOf(Discipline discipline) =>
        discipline switch
        {
            Discipline.RoadRunning or Discipline.TrailRunning => g => GradientCost.RunningRatio(g),
            Discipline.Walking => GradientCost.WalkingRatio,
            _ => null,
        };

    internal static IEnumerable<(double Km, double Gradient)> Stretches(CourseProfile profile)
    {
        for (var i = 1; i < profile.Points.Length; i++)
        {
            var (from, to) = (profile.Points[i - 1], profile.Points[i]);
            var km = (double)(to.Km - from.Km);
            if (km > 0)
                yield return (
                    km,
                    (double)((to.ElevationM ?? 0) - (from.ElevationM ?? 0)) / (1000 * km)
                );
        }
    }

    private static double Between(double[] from, double[] to, double at)
    {
        var i = Array.BinarySearch(from, at);
        if (i >= 0)
        {
            // a change of legs stands twice at one place: what comes after it counts
            while (i + 1 < from.Length && from[i + 1] <= at)
                i++;
            return to[i];
        }
        i = ~i;
        if (i == 0)
            return to[0];
        if (i == from.Length)
            return to[^1];
        return to[i - 1] + (to[i] - to[i - 1]) * (at - from[i - 1]) / (from[i] - from[i - 1]);
    }
}
