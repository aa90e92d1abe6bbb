using System.Collections.Immutable;
using Practice.Domain.Practices;
using Practice.Service.Desks;
using Practice.Store.Accounts;
using Practice.Store.Clients;
using Practice.Store.Practices;

namespace Practice.Service.Team;

/// <summary>The team, as its page shows it.</summary>
/// <param name="Members">Everybody, by name.</param>
/// <param name="Caseloads">Clients in each member's caseload; under the empty key those in nobody's.</param>
/// <param name="Invitations">Seats offered that still stand; for the owner only.</param>
public sealed record TeamFile(
    ImmutableArray<TeamMember> Members,
    ImmutableDictionary<Guid, int> Caseloads,
    ImmutableArray<Invitation> Invitations
);

/// <summary>Opens the team. Everybody sees who works here; seats on offer are the owner's.</summary>
public sealed class OpenTeam(
    PracticeStore practices,
    InvitationStore invitations,
    ClientStore clients,
    PracticeCalendar calendar
)
{
    public async Task<TeamFile> Run(Desk desk, CancellationToken cancel) =>
        new(
            await practices.Team(desk.PracticeId, cancel),
            await clients.Caseloads(desk.PracticeId, cancel),
            desk.MayRunPractice
                ? await invitations.Standing(desk.PracticeId, calendar.Now, cancel)
                : []
        );
}
