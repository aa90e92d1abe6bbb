using System.Collections.Immutable;
using Practice.Domain.Course;
using Practice.Domain.Quantities;

namespace Practice.Planner.Course;

/// <summary>
/// Why carbohydrate or drinking stay behind their aim: each limit is left out once, and what that would bring is told,
/// most first. What brings nothing stands in nobody's way.
/// </summary>
internal static class CourseExplanation
{
    private const decimal EnoughShare = 0.95m;
    private const decimal WorthTellingG = 3;
    private static readonly CourseEffort Quick = new(1000, 100_000);

    public static ImmutableArray<CourseConflict> Of(CourseCase course, CancellationToken cancel)
    {
        if (CourseTargets.For(course).Carbohydrate.Aim is not { } aim)
            return [];
        var now = Rate(course, CourseRelaxation.None, cancel);
        if (now >= EnoughShare * aim)
            return [];
        var causes = Enum.GetValues<CourseRelaxation>()
            .Where(r => r != CourseRelaxation.None)
            .Select(r => (Limit: r, Rate: Rate(course, r, cancel)))
            .Where(c => c.Rate - now >= WorthTellingG)
            .OrderByDescending(c => c.Rate)
            .Select(c => new CourseConflict(RuleOf(c.Limit), Words(c.Limit, now, c.Rate, aim)))
            .ToImmutableArray();
        return causes.IsEmpty ? [Nothing(course, now, aim)] : causes;
    }

    private static decimal Rate(
        CourseCase course,
        CourseRelaxation relaxed,
        CancellationToken cancel
    )
    {
        var model = new CourseModel(course, relaxed);
        var steps = new CourseSearch(model, null).Run(Quick, cancel).Steps;
        return FeedingRate.Of(course, steps.Sum(s => s.CarbohydrateG));
    }

    private static CourseConflict Nothing(CourseCase course, decimal now, decimal aim) =>
        course.Sheet.Stations.IsEmpty && EligibleProducts.For(course).Allowed.All(p => !p.IsCarried)
            ? new CourseConflict(
                CourseRule.Supply,
                "There is nothing to take: enter aid stations, or products the client carries."
            )
            : new CourseConflict(
                CourseRule.Supply,
                $"{G(now)} g an hour is what stations and products allow of the {G(aim)} g aimed at. "
                    + "More products carried, or stations that hand out more, would help."
            );

    private static CourseRule RuleOf(CourseRelaxation limit) =>
        limit switch
        {
            CourseRelaxation.Carry => CourseRule.Supply,
            CourseRelaxation.WaterWithFood => CourseRule.WaterWithFood,
            CourseRelaxation.Sugars => CourseRule.Glucose,
            CourseRelaxation.Fluid => CourseRule.Fluid,
            _ => CourseRule.DrinkStrength,
        };

    private static string Words(CourseRelaxation limit, decimal now, decimal without, decimal aim)
    {
        var gain = $"{G(without)} g an hour instead of {G(now)} g; the aim is {G(aim)} g.";
        return limit switch
        {
            CourseRelaxation.Carry => $"Carrying more would bring {gain}",
            CourseRelaxation.WaterWithFood =>
                $"Gels want water and stations are few: products that need none, or water of one's own, would bring {gain}",
            CourseRelaxation.Sugars =>
                $"The ceilings of glucose and fructose stand in the way: products with both sugars would help. Without ceilings it would be {gain}",
            CourseRelaxation.Fluid =>
                $"The drinking ceiling keeps drinks and gels down: more solid products would help. Without it there would be {gain}",
            _ =>
                $"Drink and food would be too strong: more water with them would help. Were strength no matter, there would be {gain}",
        };
    }

    private static string G(decimal grams) => Rounding.Shown(grams, 0);
}
