using System.Collections.Immutable;
using NodaTime;
using Practice.Domain.Races;
using Practice.Domain.Rehearsals;
using Practice.Service.Desks;
using Practice.Store.Rehearsals;

namespace Practice.Service.Rehearsals;

/// <summary>Makes the calendar in which the rehearsals of a race are placed.</summary>
public sealed class RehearsalCalendars(
    RehearsalStore rehearsals,
    BackgroundStore backgrounds,
    PracticeCalendar calendar
)
{
    internal async Task<RehearsalBackground> Background(
        Desk desk,
        Guid clientId,
        CancellationToken cancel
    ) =>
        (await backgrounds.Of(desk.PracticeId, clientId, cancel))?.Value
        ?? RehearsalBackground.Of(desk.PracticeId, clientId);

    /// <summary>The calendar as one rehearsal sees it: the others stand in it.</summary>
    internal async Task<RehearsalCalendar> Without(
        Desk desk,
        Race race,
        Guid? rehearsalId,
        CancellationToken cancel
    ) =>
        Of(
            race,
            await Background(desk, race.ClientId, cancel),
            (await rehearsals.OfRace(desk.PracticeId, race.Id, cancel)).Where(r =>
                r.Id != rehearsalId
            )
        );

    internal RehearsalCalendar Of(
        Race race,
        RehearsalBackground background,
        IEnumerable<Rehearsal> standing
    ) =>
        new()
        {
            Race = race.Day,
            Today = calendar.Today,
            LongRuns = background.LongRuns,
            Blocked = background.Blocked,
            Standing =
            [
                .. standing
                    .Where(r => r.Status != RehearsalStatus.Cancelled)
                    .Select(r => Place(r.Details)),
            ],
        };

    internal static RehearsalPlace Place(RehearsalDetails details) =>
        new(
            details.Kind,
            details.RunOn,
            Period.DaysBetween(details.Part.FirstEatenOn(details.RunOn), details.RunOn)
        );
}
