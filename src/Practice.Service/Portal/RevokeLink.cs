using Practice.Domain.Caseload;
using Practice.Service.Desks;
using Practice.Store.Portal;

namespace Practice.Service.Portal;

/// <summary>Takes a link back: from now on it opens nothing. Assistants may.</summary>
public sealed class RevokeLink(PhoneLinkStore links, PracticeCalendar calendar)
{
    /// <returns>Whether the link opens nothing any more; false when the practice has no such link.</returns>
    public async Task<bool> Run(Desk desk, Guid linkId, CancellationToken cancel)
    {
        // an opening counted meanwhile is no reason not to take it back
        while (await links.Find(desk.PracticeId, linkId, cancel) is { } link)
        {
            if (link.Value.RevokedAt is not null)
                return true;
            link.Value.Revoke(calendar.Now);
            var note = desk.Note("phone-link-revoked", link.Value.RaceId, calendar.Now);
            if (await links.Save(link, note, cancel) is Saved<PhoneLink>)
                return true;
        }
        return false;
    }
}
