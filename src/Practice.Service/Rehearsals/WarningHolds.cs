using Practice.Domain.Rehearsals;
using Practice.Domain.Screening;
using Practice.Service.Desks;
using Practice.Store.Rehearsals;

namespace Practice.Service.Rehearsals;

/// <summary>Holds that warning signs in rehearsals raise, beside those of screening.</summary>
public sealed class WarningHolds(RehearsalStore rehearsals, PracticeCalendar calendar)
{
    /// <summary>The hold that stands today; null without one.</summary>
    internal async Task<Hold?> Of(
        Desk desk,
        Guid clientId,
        ScreeningRecord screening,
        CancellationToken cancel
    ) =>
        WarningSigns.Standing(
            await rehearsals.WithWarningSigns(desk.PracticeId, [clientId], cancel),
            screening.Clearances,
            calendar.Today
        );

    /// <summary>The holds that stand today, by client.</summary>
    internal async Task<Func<Guid, Hold?>> OfSeveral(
        Desk desk,
        IReadOnlyCollection<Guid> clientIds,
        Func<Guid, ScreeningRecord> screening,
        CancellationToken cancel
    )
    {
        var found = (
            await rehearsals.WithWarningSigns(desk.PracticeId, clientIds, cancel)
        ).ToLookup(r => r.ClientId);
        return clientId =>
            WarningSigns.Standing(found[clientId], screening(clientId).Clearances, calendar.Today);
    }
}
