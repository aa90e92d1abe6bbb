using System.Collections.Immutable;
using NodaTime;
using Practice.Domain.Quantities;

namespace Practice.Domain.Course;

/// <summary>Products the client must not have, and caffeine beyond its limits: nobody issues that.</summary>
internal static class AboutSafety
{
    public static IEnumerable<CourseWarning> Of(CourseCase course, ImmutableArray<CourseStep> steps)
    {
        foreach (var product in steps.Select(s => s.ProductId).Distinct())
            if (course.Sheet.Find(product) is not { } known)
                yield return new(
                    CourseRule.Product,
                    WarningWeight.Stop,
                    $"{steps.First(s => s.ProductId == product).Name} is no product of this course any more."
                );
            else if (EligibleProducts.WhyNot(known, course) is { } reason)
                yield return new(
                    CourseRule.Product,
                    WarningWeight.Stop,
                    $"{known.Name}: {reason}."
                );
        var caffeine = steps.Sum(s => s.CaffeineMg);
        var most = CaffeineRules.OnCourseMg(course);
        if (caffeine > most)
            yield return new(
                CourseRule.Caffeine,
                WarningWeight.Stop,
                $"Caffeine on the course is {Mg(caffeine)}; at most {Mg(most)} after what is taken before the start."
            );
        var atOnce = CaffeineRules.AtOnceMg(course);
        foreach (var span in Rolling.Of(steps, Duration.FromHours(1)))
            if (span.Totals.CaffeineMg > atOnce && caffeine <= most)
                yield return new(
                    CourseRule.Caffeine,
                    WarningWeight.Stop,
                    $"Caffeine within an hour is {Mg(span.Totals.CaffeineMg)}; at most {Mg(atOnce)} at once.",
                    span.From
                );
        if (LastOfSwim(course) is { } swum)
            foreach (var step in steps.Where(s => s.Elapsed < swum))
                yield return new(
                    CourseRule.Interval,
                    WarningWeight.Stop,
                    $"{step.Name} at {CourseClock.Words(step.Elapsed)}: nothing is taken in the swim.",
                    step.Elapsed
                );
    }

    private static Duration? LastOfSwim(CourseCase course) =>
        course is { Discipline: Races.Discipline.Triathlon, Choices.Legs: { } legs }
            ? legs.Swim
            : null;

    private static string Mg(decimal mg) => $"{Rounding.Shown(mg, 0)} mg";
}
