using System.Collections.Immutable;

namespace Practice.Domain.Course;

/// <summary>What a client reads beside the steps, in words without numbers with units.</summary>
internal static class CourseAdvice
{
    public static ImmutableArray<string> Of(CourseCase course, ImmutableArray<CourseStep> steps)
    {
        var advice = ImmutableArray.CreateBuilder<string>();
        advice.Add(
            course.Adjustments.ThirstOnly
                ? "Drink when you are thirsty and stop when you are not. The drinks written here are an offer, not a duty."
                : "Drink to thirst, about what is written here, and never more than you sweat. Stop when you feel bloated."
        );
        if (course.IsAtRiskOfLowSodium)
            advice.Add(
                "Drinking too much is more dangerous than drinking too little. Salt does not protect against it."
            );
        if (steps.Any(s => course.Sheet.Find(s.ProductId)?.WaterNeedMl > 0))
            advice.Add("Open a gel or a bar just before the station and take it with water.");
        advice.Add("Take nothing that you have not tried in training.");
        if (CourseHeat.IsHot(course.Choices))
            advice.Add(
                "It will be hot: forget the pace, run by feeling, cool yourself, and stop if you feel unwell."
            );
        return advice.ToImmutable();
    }
}
