using Practice.Domain.Caseload;
using Practice.Domain.Clients;
using Practice.Service.Desks;
using Practice.Store.Clients;
using Practice.Store.Practices;

namespace Practice.Service.Team;

/// <summary>Puts one client into a member's caseload.</summary>
public sealed class AssignClient(
    ClientStore clients,
    PracticeStore practices,
    PracticeCalendar calendar
)
{
    /// <param name="desk">Who acts.</param>
    /// <param name="clientId">Which client.</param>
    /// <param name="accountId">Whose caseload; null for nobody's.</param>
    /// <param name="cancel">Cancels.</param>
    /// <returns>Whether it is on file: there is such a client, and such a member at work.</returns>
    public async Task<bool> Run(Desk desk, Guid clientId, Guid? accountId, CancellationToken cancel)
    {
        NotAllowedException.Unless(desk.MayDecide);
        if (
            await practices.NameAtWork(desk, accountId, cancel) is not { } name
            || await clients.Find(desk.PracticeId, clientId, cancel) is not { } client
        )
            return false;
        client.Value.Assign(accountId);
        var note = desk.Note("client-assigned", clientId, calendar.Now, name);
        return await clients.Save(client, note, cancel) is Saved<Client>;
    }
}

/// <summary>Hands a whole caseload over to another member.</summary>
public sealed class HandOverCaseload(
    ClientStore clients,
    PracticeStore practices,
    PracticeCalendar calendar
)
{
    /// <param name="desk">Who acts.</param>
    /// <param name="from">Whose caseload; null for the clients in nobody's.</param>
    /// <param name="to">Who takes it; null for nobody.</param>
    /// <param name="cancel">Cancels.</param>
    /// <returns>How many clients changed hands.</returns>
    public async Task<int> Run(Desk desk, Guid? from, Guid? to, CancellationToken cancel)
    {
        NotAllowedException.Unless(desk.MayDecide);
        if (from == to || await practices.NameAtWork(desk, to, cancel) is not { } name)
            return 0;
        var note = desk.Note("caseload-handed-over", from, calendar.Now, name);
        return await clients.HandOver(from, to, note, cancel);
    }
}

file static class Membership
{
    /// <returns>The member's name; "nobody" for none; null when there is no such member at work.</returns>
    public static async Task<string?> NameAtWork(
        this PracticeStore practices,
        Desk desk,
        Guid? accountId,
        CancellationToken cancel
    ) =>
        accountId is null
            ? "nobody"
            : (await practices.Team(desk.PracticeId, cancel))
                .FirstOrDefault(m => m.AccountId == accountId && m.IsActive)
                ?.Name;
}
