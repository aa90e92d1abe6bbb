using Practice.Domain.Caseload;
using Practice.Domain.Races;
using Practice.Service.Desks;
using Practice.Store.Races;

namespace Practice.Service.Races;

/// <summary>Corrects what is known of a race.</summary>
public sealed class CorrectRace(RaceStore races, PracticeCalendar calendar)
{
    public Task<SaveOutcome<Race>> Run(
        Desk desk,
        OnFile<Race> race,
        RaceDetails details,
        CancellationToken cancel
    )
    {
        race.Value.Correct(details);
        return races.Save(race, desk.Note("race-corrected", race.Value.Id, calendar.Now), cancel);
    }
}
