using Practice.Domain.Caseload;
using Practice.Service.Desks;
using Practice.Store.Portal;
using Practice.Store.Races;

namespace Practice.Service.Portal;

/// <summary>A link just given. Its address is known now and never again.</summary>
/// <param name="Link">What is on file of it.</param>
/// <param name="Path">The address below the root of the site, such as <c>/p/...</c>; it lets whoever has it in.</param>
public sealed record GivenLink(PhoneLink Link, string Path);

/// <summary>
/// Gives a client a private link to the phone pages of a race. Assistants may. Earlier links go on working, so that a
/// second paper does not lock the phone out.
/// </summary>
public sealed class GiveLink(PhoneLinkStore links, RaceStore races, PracticeCalendar calendar)
{
    /// <returns>The link with its address; null when the practice has no such race.</returns>
    public async Task<GivenLink?> Run(Desk desk, Guid raceId, CancellationToken cancel)
    {
        if (await races.Find(desk.PracticeId, raceId, cancel) is not { Value: var race })
            return null;
        var secret = LinkSecret.New();
        var link = PhoneLink.Give(
            desk.PracticeId,
            race.ClientId,
            raceId,
            race.ZonedStart.ToInstant(),
            LinkSecret.Fingerprint(secret)!,
            desk.Name,
            calendar.Now
        );
        await links.Add(link, desk.Note("phone-link-given", raceId, calendar.Now), cancel);
        return new GivenLink(link, PhonePaths.Home(secret));
    }
}
