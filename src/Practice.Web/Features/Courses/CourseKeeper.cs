using System.Collections.Immutable;
using Practice.Domain.Caseload;
using Practice.Domain.Course;
using Practice.Service.Courses;
using Practice.Service.Desks;
using Practice.Web.Parts.Saving;

namespace Practice.Web.Features.Courses;

/// <summary>A course under the hand: every change is read at once, can be had back, and is saved a moment later.</summary>
internal sealed class CourseKeeper
{
    private ImmutableStack<CourseSheet> _before = [];
    private ImmutableStack<CourseSheet> _after = [];

    public CourseKeeper(
        SaveCourse save,
        PracticeCalendar calendar,
        Desk desk,
        CourseFile file,
        OnFile<RaceCourse> course
    )
    {
        (File, Sheet) = (file, course.Value.Sheet);
        Plan = file.Read(Sheet);
        Saving = new(
            course,
            onFile => save.Run(desk, onFile, Sheet, CancellationToken.None),
            () => calendar.TimeNow
        );
    }

    public CourseFile File { get; }

    public CourseSheet Sheet { get; private set; }

    /// <summary>The sheet as it reads now.</summary>
    public CoursePlan Plan { get; private set; }

    public Autosave<RaceCourse> Saving { get; }

    public bool CanUndo => !_before.IsEmpty;

    public bool CanRedo => !_after.IsEmpty;

    public Task Edit(Func<CourseSheet, CourseSheet> edit, CancellationToken leaving)
    {
        var next = edit(Sheet);
        if (ReferenceEquals(next, Sheet))
            return Task.CompletedTask;
        (_before, _after) = (_before.Push(Sheet), []);
        return Show(next, leaving);
    }

    public Task Undo(CancellationToken leaving)
    {
        _after = _after.Push(Sheet);
        _before = _before.Pop(out var sheet);
        return Show(sheet, leaving);
    }

    public Task Redo(CancellationToken leaving)
    {
        _before = _before.Push(Sheet);
        _after = _after.Pop(out var sheet);
        return Show(sheet, leaving);
    }

    /// <summary>Takes theirs; what was here is one step back.</summary>
    public Task TakeTheirs(CancellationToken leaving)
    {
        var there = Saving.TakeTheirs().Sheet;
        return Edit(_ => there, leaving);
    }

    /// <summary>Shows a schedule that is still getting better, without keeping it.</summary>
    public void Preview(ImmutableArray<CourseStep> steps) =>
        Plan = File.Read(Sheet with { Steps = steps });

    private Task Show(CourseSheet sheet, CancellationToken leaving)
    {
        Sheet = sheet;
        Plan = File.Read(sheet);
        return Saving.Soon(leaving);
    }
}
