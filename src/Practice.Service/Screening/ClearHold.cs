using System.Collections.Immutable;
using Practice.Domain.Caseload;
using Practice.Domain.Rehearsals;
using Practice.Domain.Screening;
using Practice.Service.Audit;
using Practice.Service.Desks;
using Practice.Service.Rehearsals;
using Practice.Store.Clients;
using Practice.Store.Screening;

namespace Practice.Service.Screening;

/// <summary>What became of a clearance.</summary>
public abstract record ClearOutcome;

/// <summary>It is on file.</summary>
public sealed record Cleared : ClearOutcome;

/// <summary>The person may not lift holds.</summary>
public sealed record ClearanceNotAllowed : ClearOutcome;

/// <summary>It does not lift that hold.</summary>
/// <param name="Why">What is missing.</param>
public sealed record ClearanceRefused(string Why) : ClearOutcome;

/// <summary>Records a professional's word that lifts a hold.</summary>
public sealed class ClearHold(
    ScreeningStore screenings,
    ClientStore clients,
    WarningHolds warnings,
    PracticeCalendar calendar
)
{
    public async Task<ClearOutcome> Run(
        Desk desk,
        Guid clientId,
        Clearance clearance,
        CancellationToken cancel
    )
    {
        if (!desk.MayDecide)
            return new ClearanceNotAllowed();
        if (
            await screenings.Of(desk.PracticeId, clientId, cancel) is not { } onFile
            || await clients.Find(desk.PracticeId, clientId, cancel) is not { } client
        )
            return new ClearanceRefused("Answer the health questions first.");
        var warning = await warnings.Of(desk, clientId, onFile.Value, cancel);
        var holds = onFile.Value.Outcome(client.Value, calendar.Today).Holds;
        if (warning is not null)
            holds = holds.Add(warning);
        if (holds.FirstOrDefault(h => h.Key == clearance.HoldKey) is not { } hold)
            return new ClearanceRefused("There is no such hold any more.");
        if (
            string.IsNullOrWhiteSpace(clearance.By)
            || string.IsNullOrWhiteSpace(clearance.WhatWasSaid)
        )
            return new ClearanceRefused("Say who cleared it and what was said.");
        if (!hold.IsLiftedBy(clearance, calendar.Today))
            return new ClearanceRefused(WhatIsMissing(hold));
        onFile.Value.Clear(clearance);
        if (
            hold.Key == WarningSigns.HoldKey
            && await warnings.Of(desk, clientId, onFile.Value, cancel) is not null
        )
            return new ClearanceRefused(
                "It is older than what the client told. The sign itself must be cleared."
            );
        var note = desk.Note("hold-cleared", clientId, calendar.Now)
            .With(clientId, ImmutableDictionary<string, string>.Empty, HealthFacts.Of(clearance));
        return await screenings.Save(onFile, note, cancel) is Saved<ScreeningRecord>
            ? new Cleared()
            : new ClearanceRefused(
                "Somebody changed the screening meanwhile. Look again and repeat."
            );
    }

    private static string WhatIsMissing(Hold hold) =>
        hold.LiftedBy switch
        {
            LiftedBy.Professional =>
                "Name the professional and the profession, and dates that include today.",
            LiftedBy.Practitioner => "Give dates that include today.",
            _ => "Only the missing answers lift this one.",
        };
}
