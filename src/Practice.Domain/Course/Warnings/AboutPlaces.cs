using System.Collections.Immutable;
using NodaTime;

namespace Practice.Domain.Course;

/// <summary>Whether each thing can be had where it is planned, with its water, and at a sensible time.</summary>
internal static class AboutPlaces
{
    // a cup in hand lasts this far past the station, and a gel is opened this far before it
    private static readonly Duration WithinReach = Duration.FromMinutes(6);

    public static IEnumerable<CourseWarning> Of(
        CourseCase course,
        ImmutableArray<CourseStep> steps
    ) =>
        Supply(course, steps)
            .Concat(Water(course, steps))
            .Concat(Early(steps))
            .Concat(Late(course, steps))
            .Concat(Gaps(course, steps));

    private static IEnumerable<CourseWarning> Supply(
        CourseCase course,
        ImmutableArray<CourseStep> steps
    )
    {
        foreach (var step in steps.Where(s => s.Station is not null))
            if (!course.Sheet.Stations.Any(a => a.Km == step.Km && a.Has(step.ProductId)))
                yield return new(
                    CourseRule.Supply,
                    WarningWeight.Watch,
                    $"{step.Name} at {CourseClock.Place(step.Km)}: no station hands it out there.",
                    step.Elapsed
                );
        foreach (var group in steps.Where(s => s.IsCarried).GroupBy(s => s.ProductId))
            if (course.Sheet.Find(group.Key) is { } product)
            {
                var most = CarriedAtOnce(product, group, course.Sheet.Stations);
                if (most > product.CarryLimit)
                    yield return new(
                        CourseRule.Supply,
                        WarningWeight.Watch,
                        $"{product.Name}: {most} are needed at once and {product.CarryLimit} can be carried."
                    );
            }
    }

    private static int CarriedAtOnce(
        Product product,
        IEnumerable<CourseStep> steps,
        ImmutableArray<AidStation> stations
    )
    {
        if (!product.RefillsAtStations)
            return steps.Sum(s => s.Count);
        var refills = stations.Where(s => s.Has(product.Id)).Select(s => s.Km).ToList();
        return steps.GroupBy(s => refills.Count(km => km <= s.Km)).Max(g => g.Sum(s => s.Count));
    }

    private static IEnumerable<CourseWarning> Water(
        CourseCase course,
        ImmutableArray<CourseStep> steps
    )
    {
        foreach (var step in steps)
        {
            var need = step.Count * (course.Sheet.Find(step.ProductId)?.WaterNeedMl ?? 0);
            if (need == 0)
                continue;
            var near = steps
                .Where(s =>
                    s.ProductId == Product.WaterId
                    && s.Elapsed >= step.Elapsed - WithinReach
                    && s.Elapsed <= step.Elapsed + WithinReach
                )
                .Sum(s => s.Ml);
            if (near < need)
                yield return new(
                    CourseRule.WaterWithFood,
                    WarningWeight.Watch,
                    $"{step.Name} at {CourseClock.Place(step.Km)} wants {need:0} ml of water with it; {near:0} ml are near.",
                    step.Elapsed
                );
        }
    }

    private static IEnumerable<CourseWarning> Early(ImmutableArray<CourseStep> steps) =>
        steps
            .Where(s => s.CarbohydrateG > 0 && s.Km < FeedTimes.FirstKm)
            .Take(1)
            .Select(s => new CourseWarning(
                CourseRule.Interval,
                WarningWeight.Note,
                $"{s.Name} at {CourseClock.Place(s.Km)}: nothing in the first 3 km.",
                s.Elapsed
            ));

    private static IEnumerable<CourseWarning> Late(
        CourseCase course,
        ImmutableArray<CourseStep> steps
    ) =>
        steps
            .Where(s =>
                s.CarbohydrateG > 0 && s.Elapsed > course.Finish - FeedTimes.LastBeforeFinish
            )
            .Take(1)
            .Select(s => new CourseWarning(
                CourseRule.Interval,
                WarningWeight.Note,
                $"{s.Name} at {CourseClock.Words(s.Elapsed)}: the last feed is 15 min before the finish or earlier.",
                s.Elapsed
            ));

    private static IEnumerable<CourseWarning> Gaps(
        CourseCase course,
        ImmutableArray<CourseStep> steps
    )
    {
        var feeds = steps.Where(s => s.CarbohydrateG > 0).Select(s => s.Elapsed).ToList();
        if (feeds.Count == 0)
            yield break;
        var gaps = feeds
            .Append(course.Finish - FeedTimes.LastBeforeFinish)
            .Zip(feeds.Prepend(SwimEnd(course)), (to, from) => (From: from, Gap: to - from))
            .Where(g => g.Gap > FeedTimes.LongestGap)
            .ToList();
        if (gaps.Count == 0)
            yield break;
        var worst = gaps.MaxBy(g => g.Gap);
        yield return new(
            CourseRule.Interval,
            WarningWeight.Note,
            $"{worst.Gap.TotalMinutes:0} min without carbohydrate from {CourseClock.Words(worst.From)}"
                + (gaps.Count > 1 ? $", and {gaps.Count - 1} more gaps above 30 min." : "."),
            worst.From
        );
    }

    private static Duration SwimEnd(CourseCase course) =>
        (course.Discipline == Races.Discipline.Triathlon ? course.Choices.Legs?.Swim : null)
        ?? Duration.Zero;
}
