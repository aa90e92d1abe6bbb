using Microsoft.EntityFrameworkCore;
using Practice.Domain.Caseload;
using Practice.Domain.Course;
using Practice.Domain.Practices;

namespace Practice.Store.Courses;

/// <summary>The courses of a practice's races.</summary>
public sealed class CourseStore
{
    private readonly IDbContextFactory<PracticeDb> _contexts;

    internal CourseStore(IDbContextFactory<PracticeDb> contexts) => _contexts = contexts;

    /// <summary>The course of a race; null before it is begun.</summary>
    public async Task<OnFile<RaceCourse>?> Find(
        Guid practiceId,
        Guid raceId,
        CancellationToken cancel
    )
    {
        await using var db = _contexts.Open(practiceId);
        return db.OnFileOrNull(
            await db.Courses.SingleOrDefaultAsync(c => c.RaceId == raceId, cancel)
        );
    }

    public Task<OnFile<RaceCourse>> Add(
        RaceCourse course,
        AuditEntry audit,
        CancellationToken cancel
    ) => _contexts.Add(course, audit, cancel);

    public Task<SaveOutcome<RaceCourse>> Save(
        OnFile<RaceCourse> course,
        AuditEntry audit,
        CancellationToken cancel
    ) =>
        _contexts.Save(
            course,
            audit,
            db => db.Courses.Where(c => c.RaceId == course.Value.RaceId),
            cancel
        );
}
