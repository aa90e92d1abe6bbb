using System.Collections.Immutable;
using Practice.Domain.Caseload;
using Practice.Service.Desks;
using Practice.Store.Clients;

namespace Practice.Service.Clients;

/// <summary>Finds clients as the practitioner types.</summary>
public sealed class FindClients(ClientStore clients, PracticeCalendar calendar)
{
    /// <returns>Clients whose name or address has every word; all for no word; by family name.</returns>
    public Task<ImmutableArray<ClientRow>> Run(
        Desk desk,
        string? words,
        CancellationToken cancel
    ) => clients.Search(desk.PracticeId, words ?? "", calendar.Today, cancel);

    /// <returns>The same, of the desk's own caseload only.</returns>
    public Task<ImmutableArray<ClientRow>> Mine(
        Desk desk,
        string? words,
        CancellationToken cancel
    ) =>
        clients.Search(
            desk.PracticeId,
            words ?? "",
            calendar.Today,
            cancel,
            responsibleId: desk.AccountId
        );
}
