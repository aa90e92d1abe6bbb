namespace Practice.Domain.Course;

/// <summary>Where what is taken comes from, in words.</summary>
public static class StepSource
{
    /// <summary><c>carried</c>, the name of a station, or <c>at the station</c> where it is called by its place only.</summary>
    public static string Words(CourseStep step)
    {
        ArgumentNullException.ThrowIfNull(step);
        return step.Station is not { } station ? "carried"
            : station == CourseClock.Place(step.Km) ? "at the station"
            : station;
    }
}
