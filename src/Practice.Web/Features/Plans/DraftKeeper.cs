using Practice.Domain.Caseload;
using Practice.Domain.Plans;
using Practice.Service.Desks;
using Practice.Service.Plans;
using Practice.Web.Parts.Saving;

namespace Practice.Web.Features.Plans;

/// <summary>A draft under the hand: what came before can be had back, and what is done is saved a moment later.</summary>
internal sealed class DraftKeeper
{
    private readonly PlanFile _file;

    public DraftKeeper(SaveDraft save, PracticeCalendar calendar, Desk desk, PlanFile file)
    {
        _file = file;
        History = PlanHistory.Of(file.Version.Value.Plan);
        Saving = new(
            file.Version,
            version => save.Run(desk, version, Plan, CancellationToken.None),
            () => calendar.TimeNow
        );
    }

    /// <summary>The plan's file with the version as it stands.</summary>
    public PlanFile File => _file with { Version = Saving.OnFile };

    public PlanHistory History { get; private set; }

    public Autosave<PlanVersion> Saving { get; }

    public RaceWeekPlan Plan => History.Present;

    public bool IsDraft => Saving.OnFile.Value.Status == PlanStatus.Draft;

    public Task Edit(Func<RaceWeekPlan, RaceWeekPlan> edit, CancellationToken leaving) =>
        Go(History.Then(edit(Plan)), leaving);

    public Task Go(PlanHistory next, CancellationToken leaving)
    {
        History = next;
        return Saving.Soon(leaving);
    }

    /// <summary>Takes theirs; what was here is one step back.</summary>
    public Task TakeTheirs(CancellationToken leaving) =>
        Go(History.Then(Saving.TakeTheirs().Plan), leaving);

    /// <summary>Lets a task make another plan of the draft, and shows what it made.</summary>
    public async Task Run(Func<OnFile<PlanVersion>, Task<SaveOutcome<PlanVersion>>> task)
    {
        await Saving.Run(task);
        if (!ReferenceEquals(Saving.OnFile.Value.Plan, Plan))
            History = History.Then(Saving.OnFile.Value.Plan);
    }
}
