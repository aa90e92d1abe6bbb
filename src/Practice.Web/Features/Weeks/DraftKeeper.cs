using NodaTime;
using Practice.Domain.Caseload;
using Practice.Domain.Plans;
using Practice.Service.Desks;
using Practice.Service.Plans;
using Practice.Web.Parts.Notices;

namespace Practice.Web.Features.Weeks;

/// <summary>A draft under the hand: what came before can be had back, and what is done is saved a moment later.</summary>
internal sealed class DraftKeeper(
    SaveDraft saving,
    PracticeCalendar calendar,
    Desk desk,
    PlanFile file
)
{
    private static readonly TimeSpan Pause = TimeSpan.FromMilliseconds(700);
    private CancellationTokenSource? pause;

    public PlanFile File { get; private set; } = file;

    public PlanHistory History { get; private set; } = PlanHistory.Of(file.Version.Value.Plan);

    public RaceWeekPlan Plan => History.Present;

    public bool IsDraft => File.Version.Value.Status == PlanStatus.Draft;

    public SaveStanding Standing { get; private set; } = SaveStanding.Saved;

    public LocalTime? SavedAt { get; private set; }

    /// <summary>What somebody else saved meanwhile; null when nobody did.</summary>
    public OnFile<PlanVersion>? Theirs { get; private set; }

    /// <summary>Takes an edit; saved when the hand has rested for a moment: one save for a run of clicks.</summary>
    public Task Edit(Func<RaceWeekPlan, RaceWeekPlan> edit, CancellationToken leaving) =>
        Go(History.Then(edit(Plan)), leaving);

    public async Task Go(PlanHistory next, CancellationToken leaving)
    {
        History = next;
        Standing = SaveStanding.Saving;
        if (pause is not null)
            await pause.CancelAsync();
        pause = CancellationTokenSource.CreateLinkedTokenSource(leaving);
        var mine = pause;
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

    public Task TakeTheirs(CancellationToken leaving)
    {
        var there = Theirs!;
        File = File with { Version = there };
        Theirs = null;
        return Go(History.Then(there.Value.Plan), leaving);
    }

    public async Task Save()
    {
        Standing = SaveStanding.Saving;
        try
        {
            Take(await saving.Run(desk, File.Version, Plan, CancellationToken.None));
        }
        catch (Exception e) when (e is System.Data.Common.DbException or TimeoutException)
        {
            Standing = SaveStanding.NotSaved;
        }
    }

    /// <summary>Takes what a task made of the draft on file.</summary>
    public void Take(SaveOutcome<PlanVersion> outcome)
    {
        switch (outcome)
        {
            case Saved<PlanVersion> { Now: var now }:
                File = File with { Version = now };
                if (!ReferenceEquals(now.Value.Plan, Plan))
                    History = History.Then(now.Value.Plan);
                (Standing, SavedAt) = (SaveStanding.Saved, calendar.TimeNow);
                break;
            case Conflict<PlanVersion> { Theirs: var there }:
                (Standing, Theirs) = (SaveStanding.NotSaved, there);
                break;
        }
    }
}
