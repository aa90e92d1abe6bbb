using Practice.Domain.Caseload;
using Practice.Domain.Course;
using Practice.Service.Desks;
using Practice.Store.Courses;

namespace Practice.Service.Courses;

/// <summary>Begins the course of a race, from a file or from distance and climb.</summary>
public sealed class BeginCourse(CourseStore courses, PracticeCalendar calendar)
{
    /// <returns>The course on file; somebody else's when it was begun meanwhile.</returns>
    public async Task<OnFile<RaceCourse>> Run(
        Desk desk,
        CourseFile file,
        CourseProfile profile,
        CancellationToken cancel
    )
    {
        ArgumentNullException.ThrowIfNull(file);
        if (await courses.Find(desk.PracticeId, file.Race.Id, cancel) is { } theirs)
            return theirs;
        var course = RaceCourse.Begin(
            desk.PracticeId,
            file.Race.Id,
            file.NewSheet(profile),
            calendar.Now
        );
        return await courses.Add(
            course,
            desk.Note("course-begun", file.Race.Id, calendar.Now),
            cancel
        );
    }
}
