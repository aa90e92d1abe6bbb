using System.Collections.Immutable;
using Practice.Domain.Evidence;
using Practice.Domain.Physiology;
using Practice.Domain.Targets;

namespace Practice.Domain.Course;

/// <summary>Drinking an hour: to thirst, about the aim, never more than the ceiling, and never more than is sweated.</summary>
internal static class CourseFluidTarget
{
    private const decimal UsualLow = 0.4m;
    private const decimal UsualHigh = 0.8m;
    private const decimal AtRiskHigh = 0.5m;

    public static Target Of(CourseCase course) =>
        course.Choices.SweatLPerHour is { } sweat ? Measured(course, sweat) : Unmeasured(course);

    /// <summary>Sweated over the race, L; null without a test.</summary>
    public static decimal? SweatedL(CourseCase course) =>
        course.Choices.SweatLPerHour * course.Hours;

    private static Target Measured(CourseCase course, decimal sweat)
    {
        var window = DrinkingWindow.Of((double)course.MassKg, (double)sweat, (double)course.Hours);
        var toThirst = course.Adjustments.ThirstOnly;
        return Target(
            course,
            toThirst ? null : (decimal)window.AimLPerHour,
            toThirst ? null : (decimal)Math.Min(window.FloorLPerHour, window.CeilingLPerHour),
            (decimal)window.CeilingLPerHour,
            new Basis(
                "floor: sweat less 2 % of body mass; ceiling: sweat rate, at most 1 L/h; aim: 0.7 of the sweat rate between",
                [
                    BasisInput.Of("Body mass", course.MassKg, "kg", 1),
                    BasisInput.Of("Sweat rate", sweat, "L/h", 2),
                    BasisInput.Of("Time planned", course.Hours, "h", 2),
                ],
                [Sources.Sawka2007, Sources.DrinkingWindowRule, Sources.HewButler2015],
                Note(course, window.IsTooNarrow)
            )
        );
    }

    private static Target Unmeasured(CourseCase course)
    {
        var toThirst = course.Adjustments.ThirstOnly;
        return Target(
            course,
            toThirst ? null : UsualLow,
            null,
            course.IsAtRiskOfLowSodium || toThirst ? AtRiskHigh : UsualHigh,
            new Basis(
                "no sweat test: the low end of the usual range, hardly above it for those at risk of low sodium",
                [BasisInput.Of("Time planned", course.Hours, "h", 2)],
                [Sources.StartingRange, Sources.DrinkingWindowRule, Sources.HewButler2015],
                Note(course, tooNarrow: false)
            )
        );
    }

    // to thirst there is no aim, and no own value makes one
    private static Target Target(
        CourseCase course,
        decimal? aim,
        decimal? low,
        decimal high,
        Basis basis
    )
    {
        var own = aim is null ? null : course.OverrideOf(CourseTargetKeys.Fluid, aim);
        return new()
        {
            Key = CourseTargetKeys.Fluid,
            Name = "Drinking",
            Aim = own is null ? aim : Math.Min(own.Value, high),
            Override = own,
            Low = low,
            High = high,
            Unit = "L/h",
            Decimals = 2,
            Basis = basis,
        };
    }

    private static string Note(CourseCase course, bool tooNarrow)
    {
        var notes = ImmutableArray.CreateBuilder<string>();
        notes.Add(
            course.Adjustments.ThirstOnly
                ? "Screening: drink to thirst only; what is planned with gels is an offer, not a duty."
                : "Drink to thirst; about the aim; never more than the ceiling."
        );
        if (tooNarrow)
            notes.Add(
                "More is sweated than can be drunk: the loss will pass 2 % of body mass. Slow down or cool."
            );
        if (course.Choices.SweatLPerHour is null)
            notes.Add(
                course.Adjustments.NoWeighing
                    ? "No weighing for this client: thirst and urine guide."
                    : "A sweat test would replace this."
            );
        if (CourseHeat.IsSweatTestStale(course.Choices))
            notes.Add("The sweat test was made in other heat and is stale.");
        return string.Join(' ', notes);
    }
}
