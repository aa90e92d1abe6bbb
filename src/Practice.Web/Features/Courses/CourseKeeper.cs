using System.Collections.Immutable;
using NodaTime;
using Practice.Domain.Caseload;
using Practice.Domain.Course;
using Practice.Service.Courses;
using Practice.Service.Desks;
using Practice.Web.Parts.Notices;

namespace Practice.Web.Features.Courses;

/// <summary>A course under the hand: every change is read at once, can be had back, and is saved a moment later.</summary>
internal sealed class CourseKeeper
{
    private static readonly TimeSpan Pause = TimeSpan.FromMilliseconds(700);

    private readonly SaveCourse _saving;
    private readonly PracticeCalendar _calendar;
    private readonly Desk _desk;
    private ImmutableStack<CourseSheet> _before = [];
    private ImmutableStack<CourseSheet> _after = [];
    private OnFile<RaceCourse> _course;
    private CancellationTokenSource? _pause;

    public CourseKeeper(
        SaveCourse saving,
        PracticeCalendar calendar,
        Desk desk,
        CourseFile file,
        OnFile<RaceCourse> course
    )
    {
        (_saving, _calendar, _desk, File, _course) = (saving, calendar, desk, file, course);
        Sheet = course.Value.Sheet;
        Plan = file.Read(Sheet);
    }

    public CourseFile File { get; }

    public CourseSheet Sheet { get; private set; }

    /// <summary>The sheet as it reads now.</summary>
    public CoursePlan Plan { get; private set; }

    public SaveStanding Standing { get; private set; } = SaveStanding.Saved;

    public LocalTime? SavedAt { get; private set; }

    /// <summary>What somebody else saved meanwhile; null when nobody did.</summary>
    public OnFile<RaceCourse>? Theirs { get; private set; }

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

    public Task TakeTheirs(CancellationToken leaving)
    {
        _course = Theirs!;
        Theirs = null;
        return Edit(_ => _course.Value.Sheet, leaving);
    }

    /// <summary>Shows a schedule that is still getting better, without keeping it.</summary>
    public void Preview(ImmutableArray<CourseStep> steps) =>
        Plan = File.Read(Sheet with { Steps = steps });

    public async Task Save()
    {
        Standing = SaveStanding.Saving;
        try
        {
            switch (await _saving.Run(_desk, _course, Sheet, CancellationToken.None))
            {
                case Saved<RaceCourse> { Now: var now }:
                    _course = now;
                    (Standing, SavedAt) = (SaveStanding.Saved, _calendar.TimeNow);
                    break;
                case Conflict<RaceCourse> { Theirs: var there }:
                    (Standing, Theirs) = (SaveStanding.NotSaved, there);
                    break;
            }
        }
        catch (Exception e) when (e is System.Data.Common.DbException or TimeoutException)
        {
            Standing = SaveStanding.NotSaved;
        }
    }

    /// <summary>Saves when the hand has rested for a moment: one save for a run of changes.</summary>
    private async Task Show(CourseSheet sheet, CancellationToken leaving)
    {
        Sheet = sheet;
        Plan = File.Read(sheet);
        Standing = SaveStanding.Saving;
        if (_pause is not null)
            await _pause.CancelAsync();
        _pause = CancellationTokenSource.CreateLinkedTokenSource(leaving);
        var mine = _pause;
        try
        {
            await Task.Delay(Pause, mine.Token);
        }
        catch (OperationCanceledException) when (!leaving.IsCancellationRequested)
        {
            return;
        }
        catch (OperationCanceledException)
        {
            // left within the moment: what was done must not be lost
        }
        await Save();
    }
}
