using Practice.Domain.Plans;
using Practice.Service.Desks;
using Practice.Store.Plans;

namespace Practice.Service.Plans;

/// <summary>Takes an issued version back.</summary>
public sealed class WithdrawPlan(PlanStore plans, PracticeCalendar calendar)
{
    /// <returns>Whether it was withdrawn: only an issued version can be.</returns>
    public async Task<bool> Run(Desk desk, Guid versionId, string reason, CancellationToken cancel)
    {
        NotAllowedException.Unless(desk.MayDecide);
        if (
            await plans.Find(desk.PracticeId, versionId, cancel)
            is not { Value.Status: PlanStatus.Issued } version
        )
            return false;
        version.Value.Withdraw(reason);
        var note = desk.Note("plan-withdrawn", versionId, calendar.Now);
        return await plans.Withdraw(version, note, cancel);
    }
}
