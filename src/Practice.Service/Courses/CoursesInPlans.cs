using Practice.Domain.Course;
using Practice.Domain.Targets;
using Practice.Service.Desks;
using Practice.Service.Races;
using Practice.Store.Courses;

namespace Practice.Service.Courses;

/// <summary>The course plan that a plan version carries, read as screening stands today.</summary>
public sealed class CoursesInPlans(CourseStore courses, GutsRehearsed guts)
{
    /// <summary>The race's course plan; null when none was planned.</summary>
    internal async Task<CoursePlan?> Of(Desk desk, RaceCase raceCase, CancellationToken cancel) =>
        await courses.Find(desk.PracticeId, raceCase.Race.Value.Id, cancel)
            is { Value.Sheet: { Steps.IsEmpty: false } sheet }
            ? await Read(desk, raceCase, sheet, cancel)
            : null;

    /// <summary>A version's own steps, read again: what is carried by now may not be given any more.</summary>
    internal async Task<CoursePlan> Again(
        Desk desk,
        RaceCase raceCase,
        CoursePlan plan,
        CancellationToken cancel
    ) =>
        await courses.Find(desk.PracticeId, raceCase.Race.Value.Id, cancel)
            is { Value.Sheet: var sheet }
            ? await Read(
                desk,
                raceCase,
                sheet with
                {
                    Profile = plan.Profile,
                    Stations = plan.Stations,
                    Steps = plan.Steps,
                    Choices = sheet.Choices with { Finish = plan.Finish, Pacing = plan.Pacing },
                },
                cancel
            )
            : plan;

    private async Task<CoursePlan> Read(
        Desk desk,
        RaceCase raceCase,
        CourseSheet sheet,
        CancellationToken cancel
    ) =>
        CourseReading.Of(
            CourseCase.Of(
                raceCase.Client,
                raceCase.Race.Value,
                raceCase.Screening.Adjustments,
                raceCase.Targets(new LoadingChoices()).ExpectedFinish,
                sheet,
                await guts.Of(desk, raceCase.Client.Id, cancel),
                raceCase.Today
            )
        );
}
