using Practice.Domain.Races;
using Practice.Service.Desks;
using Practice.Store.Races;

namespace Practice.Service.Races;

/// <summary>Enters a race for a client.</summary>
public sealed class EnterRace(RaceStore races, PracticeCalendar calendar)
{
    /// <returns>Key of the new race.</returns>
    public async Task<Guid> Run(
        Desk desk,
        Guid clientId,
        RaceDetails details,
        CancellationToken cancel
    )
    {
        var race = Race.Enter(desk.PracticeId, clientId, details);
        await races.Add(race, desk.Note("race-entered", race.Id, calendar.Now), cancel);
        return race.Id;
    }
}
