using System.Collections.Immutable;
using Practice.Domain.Caseload;
using Practice.Service.Desks;
using Practice.Store.Portal;

namespace Practice.Service.Portal;

/// <summary>The links of a race that still open its pages, newest first.</summary>
public sealed class LinksOfRace(PhoneLinkStore links, PracticeCalendar calendar)
{
    public async Task<ImmutableArray<PhoneLink>> Run(
        Desk desk,
        Guid raceId,
        CancellationToken cancel
    ) =>
        [
            .. (await links.OfRace(desk.PracticeId, raceId, cancel)).Where(l =>
                l.IsOpenAt(calendar.Now)
            ),
        ];
}
