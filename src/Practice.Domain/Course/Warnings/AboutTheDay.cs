using Practice.Domain.Physiology;

namespace Practice.Domain.Course;

/// <summary>Heat, and facts that are missing: true before anything is planned.</summary>
internal static class AboutTheDay
{
    public static IEnumerable<CourseWarning> Of(CourseCase course)
    {
        var flag = CourseHeat.ColourOf(course.Choices);
        if (flag == HeatColour.Black)
            yield return new(
                CourseRule.Heat,
                WarningWeight.Stop,
                "Heat stress above 28 °C: no race plan. Such races are cancelled or left."
            );
        else if (flag == HeatColour.Red)
            yield return new(
                CourseRule.Heat,
                WarningWeight.Watch,
                "Heat stress of 23 to 28 °C: at-risk clients do better not to start; no fixed pace; caffeine at most 3 mg/kg."
            );
        else if (flag == HeatColour.Yellow)
            yield return new(
                CourseRule.Heat,
                WarningWeight.Note,
                "Heat stress of 18 to 23 °C: plan a slower time, and look at the sweat test's weather again."
            );
        if (CourseHeat.IsSweatTestStale(course.Choices))
            yield return new(
                CourseRule.MissingFact,
                WarningWeight.Watch,
                "The sweat test was made in heat stress more than 5 °C off: test again, nothing converts it."
            );
        if (course.Choices.SweatLPerHour is null && !course.Adjustments.NoWeighing)
            yield return new(
                CourseRule.MissingFact,
                WarningWeight.Note,
                "Without a sweat test nobody can show that the plan does not gain mass: it keeps to the low end of usual drinking."
            );
        if (course.IsAtRiskOfLowSodium)
            yield return new(
                CourseRule.Fluid,
                WarningWeight.Note,
                "More than 4 h or below 60 kg: drinking too much is the danger. Sodium does not protect against it."
            );
        if (!course.IsAdult)
            yield return new(
                CourseRule.Product,
                WarningWeight.Note,
                "Under 18: ordinary food first, no reliance on products, no caffeine."
            );
        if (course is { Discipline: Races.Discipline.Triathlon, Choices.Legs: null })
            yield return new(
                CourseRule.MissingFact,
                WarningWeight.Watch,
                "Enter the legs: nothing is to be taken in the swim, and its end is not known."
            );
    }
}
