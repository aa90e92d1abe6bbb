using System.Text;
using Practice.Handouts.Calendar;
using Practice.Service.Desks;
using Practice.Store.Audit;
using Practice.Store.Plans;

namespace Practice.Service.Plans;

/// <summary>Gives a plan version as a calendar file.</summary>
public sealed class PlanAsCalendar(PlanStore plans, AuditLog audit, PracticeCalendar calendar)
{
    /// <returns>The file; null when the practice has no such version.</returns>
    public async Task<byte[]?> Run(Desk desk, Guid versionId, CancellationToken cancel)
    {
        if (await plans.Find(desk.PracticeId, versionId, cancel) is not { Value: var version })
            return null;
        await audit.Note(desk.Note("plan-calendar", versionId, calendar.Now), cancel);
        return Encoding.UTF8.GetBytes(
            PlanCalendar.Of(version.Plan, version.RaceId, version.EditedAt)
        );
    }
}
