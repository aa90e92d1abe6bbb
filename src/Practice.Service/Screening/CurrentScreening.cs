using Practice.Domain.Screening;
using Practice.Service.Desks;
using Practice.Store.Screening;

namespace Practice.Service.Screening;

/// <summary>A client's screening, or one without an answer, which holds everything back.</summary>
public sealed class CurrentScreening(ScreeningStore screenings, PracticeCalendar calendar)
{
    internal async Task<ScreeningRecord> Of(Desk desk, Guid clientId, CancellationToken cancel) =>
        (await screenings.Of(desk.PracticeId, clientId, cancel))?.Value
        ?? Unanswered(desk, clientId);

    internal async Task<Func<Guid, ScreeningRecord>> OfSeveral(
        Desk desk,
        IReadOnlyCollection<Guid> clientIds,
        CancellationToken cancel
    )
    {
        var found = await screenings.OfSeveral(desk.PracticeId, clientIds, cancel);
        return clientId => found.GetValueOrDefault(clientId) ?? Unanswered(desk, clientId);
    }

    private ScreeningRecord Unanswered(Desk desk, Guid clientId) =>
        ScreeningRecord.Take(desk.PracticeId, clientId, ScreeningAnswers.None, calendar.Today);
}
