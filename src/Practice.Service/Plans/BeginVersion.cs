using Practice.Domain.Caseload;
using Practice.Domain.Plans;
using Practice.Service.Desks;
using Practice.Store.Plans;

namespace Practice.Service.Plans;

/// <summary>Begins a new draft from a version that can no longer be edited.</summary>
public sealed class BeginVersion(PlanStore plans, PracticeCalendar calendar)
{
    /// <returns>Key of the draft; the open draft of the race when there is one already; null for no such version.</returns>
    public async Task<Guid?> Run(Desk desk, Guid versionId, string reason, CancellationToken cancel)
    {
        if (await plans.Find(desk.PracticeId, versionId, cancel) is not { } from)
            return null;
        var latest = await plans.Latest(desk.PracticeId, from.Value.RaceId, cancel);
        if (latest is { Value.Status: PlanStatus.Draft })
            return latest.Value.Id;
        var draft = PlanVersion.Draft(
            desk.PracticeId,
            from.Value.RaceId,
            (latest?.Value.Number ?? 0) + 1,
            from.Value.Plan,
            reason,
            calendar.Now
        );
        var filed = await plans.Add(draft, desk.Note("plan-begun", draft.Id, calendar.Now), cancel);
        // somebody was quicker: theirs is the open draft
        return filed is null
            ? (await plans.Latest(desk.PracticeId, from.Value.RaceId, cancel))?.Value.Id
            : draft.Id;
    }
}
