using NodaTime;

namespace Practice.Domain.Course;

/// <summary>How the client means to run.</summary>
public enum Pacing
{
    /// <summary>The same speed throughout.</summary>
    EvenPace,

    /// <summary>The same effort throughout: slower uphill, faster downhill.</summary>
    EvenEffort,
}

/// <summary>When a place is passed, side by side for both ways of pacing.</summary>
/// <param name="Km">Place, km from the start.</param>
/// <param name="EvenPace">Time since the start at an even pace.</param>
/// <param name="EvenEffort">Time since the start at an even effort; the same where heights are not known.</param>
public sealed record CourseSplit(decimal Km, Duration EvenPace, Duration EvenEffort);
