using Practice.Domain.Physiology;

namespace Practice.Domain.Course;

/// <summary>What the heat of the day changes on the course: the flags of road races, and when a sweat test is stale.</summary>
internal static class CourseHeat
{
    public static HeatColour? ColourOf(CourseChoices choices) =>
        choices.RaceHeatC is { } heat ? HeatColours.Of((double)heat) : null;

    public static bool IsHot(CourseChoices choices) =>
        ColourOf(choices) is HeatColour.Red or HeatColour.Black;

    /// <summary>Whether a sweat test was made in other heat than the race will have: nothing converts it.</summary>
    public static bool IsSweatTestStale(CourseChoices choices) =>
        choices.SweatLPerHour is not null
        && choices.SweatTestHeatC is { } test
        && choices.RaceHeatC is { } race
        && (double)Math.Abs(race - test) > SweatRate.LargestHeatDifference;
}
