using NodaTime;

namespace Practice.Domain.Course;

/// <summary>The course of one race, as the practitioner works on it; there is one a race.</summary>
public sealed class RaceCourse
{
    private RaceCourse() { }

    /// <summary>The practice that owns the record.</summary>
    public Guid PracticeId { get; private set; }

    /// <summary>The race; also the key.</summary>
    public Guid RaceId { get; private set; }

    /// <summary>What is known and decided.</summary>
    public CourseSheet Sheet { get; private set; } = null!;

    /// <summary>When it was last changed.</summary>
    public Instant EditedAt { get; private set; }

    /// <summary>Begins the course of a race.</summary>
    public static RaceCourse Begin(Guid practiceId, Guid raceId, CourseSheet sheet, Instant now) =>
        new()
        {
            PracticeId = practiceId,
            RaceId = raceId,
            Sheet = sheet,
            EditedAt = now,
        };

    /// <summary>Takes the sheet as it was worked on.</summary>
    public void Edit(CourseSheet sheet, Instant now) => (Sheet, EditedAt) = (sheet, now);
}
