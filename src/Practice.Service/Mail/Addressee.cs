using Practice.Domain.Clients;
using Practice.Domain.Practices;
using Practice.Domain.Races;
using Practice.Domain.Rehearsals;
using Practice.Handouts.Content;
using Practice.Service.Desks;
using Practice.Service.Races;
using Practice.Store.Plans;
using Practice.Store.Practices;

namespace Practice.Service.Mail;

/// <summary>The client a letter goes to, and how it must speak to her.</summary>
/// <param name="Practice">Who writes.</param>
/// <param name="Client">Who reads.</param>
/// <param name="Race">The race it is about.</param>
/// <param name="IsNumberFree">Whether no number with a unit may stand in it.</param>
/// <param name="MayRehearse">False while a warning sign stands: nothing is rehearsed before a doctor has said so.</param>
internal sealed record Addressee(
    PracticeProfile Practice,
    Client Client,
    Race Race,
    bool IsNumberFree,
    bool MayRehearse
)
{
    public string GivenName => Client.GivenName;

    public string RaceName => IsNumberFree ? WithoutNumbers.Name(Race.Name) : Race.Name;

    /// <summary>Where to write to without having been asked by hand; null where there is no address or no consent.</summary>
    public string? StandingAddress => Client.StandingConsent is null ? null : Client.Email;

    /// <summary>The practice's own words, one paragraph a line.</summary>
    public IEnumerable<string> Words(Func<StandardTexts, string> which) =>
        which(Practice.Defaults.Texts.Filled())
            .Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)
            .Select(line => IsNumberFree ? WithoutNumbers.Sentences(line) : line)
            .Where(line => line.Length > 0);
}

/// <summary>Finds out to whom a letter about a race goes.</summary>
public sealed class Addressees(RaceCases cases, PlanStore plans, PracticeStore practices)
{
    /// <returns>The addressee; null when the practice has no such race.</returns>
    internal async Task<Addressee?> OfRace(Desk desk, Guid raceId, CancellationToken cancel) =>
        await cases.Open(desk, raceId, cancel) is { } raceCase
        && await practices.Find(desk.PracticeId, cancel) is { Value: var practice }
            ? new(
                practice,
                raceCase.Client,
                raceCase.Race.Value,
                raceCase.Screening.Adjustments.NumberFree
                    || await plans.Latest(desk.PracticeId, raceId, cancel)
                        is { Value.Plan.NumberFree: true },
                raceCase.StandingHolds.All(h => h.Key != WarningSigns.HoldKey)
            )
            : null;
}
