using NodaTime;
using Practice.Domain.Caseload;
using Practice.Domain.Races;
using Practice.Service.Desks;
using Practice.Store.Portal;
using Practice.Store.Races;

namespace Practice.Service.Portal;

/// <summary>A link just given. Its address is known now and never again.</summary>
/// <param name="Link">What is on file of it.</param>
/// <param name="Path">The address below the root of the site, such as <c>/p/...</c>; it lets whoever has it in.</param>
public sealed record GivenLink(PhoneLink Link, string Path)
{
    /// <summary>Makes a link to the pages of a race; it opens nothing before it is on file.</summary>
    internal static GivenLink New(Desk desk, Race race, Instant now)
    {
        var secret = LinkSecret.New();
        var link = PhoneLink.Give(
            desk.PracticeId,
            race.ClientId,
            race.Id,
            race.ZonedStart.ToInstant(),
            LinkSecret.Fingerprint(secret)!,
            desk.Name,
            now
        );
        return new(link, PhonePaths.Home(secret));
    }
}

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
        var given = GivenLink.New(desk, race, calendar.Now);
        await links.Add(given.Link, desk.Note("phone-link-given", raceId, calendar.Now), cancel);
        return given;
    }
}
