using Practice.Domain.Plans;
using Practice.Domain.Targets;
using Practice.Service.Audit;
using Practice.Service.Desks;
using Practice.Service.Races;
using Practice.Store.Courses;
using Practice.Store.Plans;

namespace Practice.Service.Courses;

/// <summary>Opens the course of a race.</summary>
public sealed class OpenCourse(
    RaceCases cases,
    CourseStore courses,
    GutsRehearsed guts,
    PlanStore plans,
    RecordReads reads
)
{
    /// <returns>The file; null when the practice has no such race.</returns>
    public async Task<CourseFile?> Run(Desk desk, Guid raceId, CancellationToken cancel)
    {
        if (await cases.Open(desk, raceId, cancel) is not { } raceCase)
            return null;
        await reads.Note(desk, raceCase.Client.Id, cancel);
        var versions = await plans.Versions(desk.PracticeId, raceId, cancel);
        return new CourseFile(
            raceCase.Client,
            raceCase.Race.Value,
            await courses.Find(desk.PracticeId, raceId, cancel),
            raceCase.Targets(new LoadingChoices()).ExpectedFinish,
            raceCase.Screening.Adjustments,
            await guts.Of(desk, raceCase.Client.Id, cancel),
            raceCase.StandingHolds,
            versions.FirstOrDefault(v => v.Status == PlanStatus.Draft),
            raceCase.Today
        );
    }
}
