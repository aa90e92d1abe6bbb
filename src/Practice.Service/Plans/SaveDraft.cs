using Practice.Domain.Caseload;
using Practice.Domain.Plans;
using Practice.Service.Desks;
using Practice.Store.Plans;

namespace Practice.Service.Plans;

/// <summary>Keeps what was edited on the workbench.</summary>
public sealed class SaveDraft(PlanStore plans, PracticeCalendar calendar)
{
    /// <param name="desk">Who acts.</param>
    /// <param name="version">The draft as it was read or last saved; nobody's later edit is overwritten.</param>
    /// <param name="plan">The plan as edited.</param>
    /// <param name="cancel">Cancels.</param>
    /// <exception cref="InvalidOperationException">The version is issued or withdrawn.</exception>
    public Task<SaveOutcome<PlanVersion>> Run(
        Desk desk,
        OnFile<PlanVersion> version,
        RaceWeekPlan plan,
        CancellationToken cancel
    )
    {
        version.Value.Edit(plan, calendar.Now);
        return plans.Save(
            version,
            desk.Note("plan-edited", version.Value.Id, calendar.Now),
            cancel
        );
    }
}
