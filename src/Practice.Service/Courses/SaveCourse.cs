using Practice.Domain.Caseload;
using Practice.Domain.Course;
using Practice.Service.Desks;
using Practice.Store.Courses;

namespace Practice.Service.Courses;

/// <summary>Keeps what was worked on the course.</summary>
public sealed class SaveCourse(CourseStore courses, PracticeCalendar calendar)
{
    /// <param name="desk">Who acts.</param>
    /// <param name="course">The course as it was read or last saved; nobody's later work is overwritten.</param>
    /// <param name="sheet">The sheet as worked on.</param>
    /// <param name="cancel">Cancels.</param>
    public Task<SaveOutcome<RaceCourse>> Run(
        Desk desk,
        OnFile<RaceCourse> course,
        CourseSheet sheet,
        CancellationToken cancel
    )
    {
        ArgumentNullException.ThrowIfNull(course);
        course.Value.Edit(sheet, calendar.Now);
        return courses.Save(
            course,
            desk.Note("course-edited", course.Value.RaceId, calendar.Now),
            cancel
        );
    }
}
