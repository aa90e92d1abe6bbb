using Practice.Domain.Caseload;
using Practice.Domain.Practices;
using Practice.Domain.Rehearsals;
using Practice.Service.Desks;
using Practice.Store.Portal;
using Practice.Store.Rehearsals;

namespace Practice.Service.Portal;

/// <summary>
/// Lets in whoever has the secret of an open link. A link that never was, one that ran out and one that was taken back
/// get the same answer.
/// </summary>
public sealed class LinkDoor(
    PhoneLinkStore links,
    RehearsalStore rehearsals,
    PracticeCalendar calendar
)
{
    internal async Task<PhoneLink?> Open(string secret, CancellationToken cancel) =>
        LinkSecret.Fingerprint(secret) is { } fingerprint
        && await links.AtTheDoor(fingerprint, cancel) is { } link
        && link.IsOpenAt(calendar.Now)
            ? link
            : null;

    /// <summary>A rehearsal that the link serves; null for any other, and for one that was cancelled.</summary>
    internal async Task<OnFile<Rehearsal>?> Rehearsal(
        PhoneLink link,
        Guid rehearsalId,
        CancellationToken cancel
    ) =>
        await rehearsals.Find(link.PracticeId, rehearsalId, cancel) is { } found
        && found.Value.RaceId == link.RaceId
        && found.Value.Status != RehearsalStatus.Cancelled
            ? found
            : null;

    internal AuditEntry Note(PhoneLink link, string what, Guid about) =>
        Desk(link).Note(what, about, calendar.Now);

    /// <summary>Reads what the link serves. Nobody of the practice acts, so nothing but reading is done with it.</summary>
    internal static Desk Desk(PhoneLink link) =>
        new(link.PracticeId, Guid.Empty, "The client, by phone", StaffRole.Assistant);
}
