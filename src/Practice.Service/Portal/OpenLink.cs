using System.Collections.Immutable;
using Practice.Domain.Caseload;
using Practice.Domain.Plans;
using Practice.Domain.Practices;
using Practice.Domain.Rehearsals;
using Practice.Handouts.Content;
using Practice.Service.Desks;
using Practice.Service.Races;
using Practice.Store.Plans;
using Practice.Store.Portal;
using Practice.Store.Practices;
using Practice.Store.Rehearsals;

namespace Practice.Service.Portal;

/// <summary>Opens the phone pages of a race for whoever holds a link to them. Every opening is counted.</summary>
public sealed class OpenLink(
    LinkDoor door,
    RaceCases cases,
    PracticeStore practices,
    PlanStore plans,
    RehearsalStore rehearsals,
    PhoneLinkStore links,
    PracticeCalendar calendar
)
{
    /// <param name="secret">The link's secret.</param>
    /// <param name="isOpening">Whether somebody looks: a phone that keeps a page for later does not count.</param>
    /// <param name="cancel">Cancels.</param>
    /// <returns>What the link opens; null when it opens nothing, whatever the reason.</returns>
    public async Task<PhoneFile?> Run(string secret, bool isOpening, CancellationToken cancel) =>
        await door.Open(secret, cancel) is { } link
            ? await Read(link, isOpening, isNumberFree: false, cancel)
            : null;

    /// <summary>Opens one rehearsal of the race.</summary>
    /// <returns>The rehearsal; null when the link opens nothing or serves no such rehearsal.</returns>
    public async Task<PhoneRehearsal?> Rehearsal(
        string secret,
        Guid rehearsalId,
        bool isOpening,
        CancellationToken cancel
    )
    {
        if (
            await door.Open(secret, cancel) is not { } link
            || await door.Rehearsal(link, rehearsalId, cancel) is not { Value: var rehearsal }
        )
            return null;
        return await Read(link, isOpening, rehearsal.Plan.NumberFree, cancel) is { } phone
            ? Open(phone, rehearsal)
            : null;
    }

    /// <summary>The practice behind a link, for its logo; null when the link opens nothing.</summary>
    public async Task<PracticeProfile?> Practice(string secret, CancellationToken cancel) =>
        await door.Open(secret, cancel) is { } link
            ? (await practices.Find(link.PracticeId, cancel))?.Value
            : null;

    private async Task<PhoneFile?> Read(
        PhoneLink link,
        bool isOpening,
        bool isNumberFree,
        CancellationToken cancel
    )
    {
        if (
            await cases.Open(LinkDoor.Desk(link), link.RaceId, cancel) is not { } raceCase
            || await practices.Find(link.PracticeId, cancel) is not { Value: var practice }
        )
            return null;
        if (isOpening)
            await links.Count(
                link,
                calendar.Now,
                door.Note(link, "phone-link-first-used", link.RaceId),
                cancel
            );
        var issued = await plans.Issued(link.PracticeId, link.RaceId, cancel);
        var adjustments = raceCase.Screening.Adjustments;
        isNumberFree |= adjustments.NumberFree || issued is { Plan.NumberFree: true };
        var race = raceCase.Race.Value;
        return new PhoneFile
        {
            Practice = practice,
            GivenName = raceCase.Client.GivenName,
            Units = raceCase.Client.Units,
            RaceId = race.Id,
            RaceName = isNumberFree ? WithoutNumbers.Name(race.Name) : race.Name,
            RaceStart = race.Start,
            Today = calendar.Now.InZone(race.ZonedStart.Zone).Date,
            Plan = issued is null
                ? null
                : new(issued.Id, For(issued.Plan, isNumberFree), issued.EditedAt),
            Rehearsals = await Standing(link, cancel),
            IsNumberFree = isNumberFree,
            MayWeigh = !isNumberFree && !adjustments.NoWeighing,
        };
    }

    private async Task<ImmutableArray<Rehearsal>> Standing(
        PhoneLink link,
        CancellationToken cancel
    ) =>
        [
            .. (await rehearsals.OfRace(link.PracticeId, link.RaceId, cancel)).Where(r =>
                r.Status != RehearsalStatus.Cancelled
            ),
        ];

    private static PhoneRehearsal Open(PhoneFile phone, Rehearsal rehearsal)
    {
        var sittings = rehearsal.Sittings();
        return phone.IsNumberFree
            ? new(phone, rehearsal, InWords(rehearsal.Details), [.. sittings.Select(InWords)])
            : new(phone, rehearsal, rehearsal.Details, sittings);
    }

    private static RehearsedSitting InWords(RehearsedSitting sitting) =>
        sitting with
        {
            Portions =
            [
                .. sitting.Portions.Select(p => p with { Name = WithoutNumbers.Name(p.Name) }),
            ],
        };

    private static RaceWeekPlan For(RaceWeekPlan plan, bool isNumberFree) =>
        isNumberFree ? WithoutNumbers.Of(plan) with { NumberFree = true } : plan;

    private static RehearsalDetails InWords(RehearsalDetails details) =>
        details with
        {
            Breakfast = details.Breakfast is { } breakfast
                ? breakfast with
                {
                    What = WithoutNumbers.Sentences(breakfast.What),
                }
                : null,
            RunFuel = details.RunFuel is { } fuel
                ? fuel with
                {
                    What = WithoutNumbers.Sentences(fuel.What),
                }
                : null,
            Reason = WithoutNumbers.Sentences(details.Reason),
        };
}
