using NodaTime;
using Practice.Domain.Foods;
using Practice.Domain.Rehearsals;
using Practice.Service.Rehearsals;
using Practice.Web.Parts;
using Practice.Web.Parts.Plots;

namespace Practice.Web.Features.Rehearsals;

/// <summary>Rehearsals in words.</summary>
internal static class RehearsalWords
{
    public static string Name(RehearsalKind kind) =>
        kind == RehearsalKind.Full ? "Full rehearsal" : "Partial rehearsal";

    public static string Address(Guid rehearsalId) => $"/rehearsals/{rehearsalId}";

    public static string Name(TrialVerdict verdict) =>
        verdict switch
        {
            TrialVerdict.Pass => "Pass",
            TrialVerdict.Adapt => "Adapt",
            _ => "Fail",
        };

    public static string Meaning(TrialVerdict verdict) =>
        verdict switch
        {
            TrialVerdict.Pass => "it sat well",
            TrialVerdict.Adapt => "some trouble: change one thing",
            _ => "too much trouble to race on",
        };

    public static string Name(Compliance compliance) =>
        compliance switch
        {
            Compliance.Met => "Loaded as planned",
            Compliance.Partly => "Partly loaded",
            _ => "Not loaded: the trial says little of the plan",
        };

    public static string Name(SuspectLabel label) =>
        label switch
        {
            SuspectLabel.Likely => "Likely",
            SuspectLabel.Suspect => "Suspect",
            SuspectLabel.Possible => "Possible",
            SuspectLabel.Cleared => "Cleared",
            _ => "Unknown",
        };

    public static string Name(BlockedBy by) =>
        by switch
        {
            BlockedBy.HardRace => "Hard race",
            BlockedBy.Other => "Something else",
            _ => Say.Words(by),
        };

    public static string Name(SymptomMoment moment) =>
        moment switch
        {
            SymptomMoment.Before => "Before the run",
            SymptomMoment.During => "On the run",
            SymptomMoment.End => "At its end",
            SymptomMoment.TwoHoursAfter => "Two hours after",
            _ => "The day after",
        };

    /// <summary>Where a rehearsal stands, in words.</summary>
    public static string Standing(Rehearsal rehearsal) =>
        rehearsal switch
        {
            { Status: RehearsalStatus.Booked } => "booked",
            { Status: RehearsalStatus.FedBack } => "to be reviewed",
            { Decision: { } decision } => Name(decision.Verdict).ToLowerInvariant(),
            _ => "cancelled",
        };

    /// <summary>A rehearsal as it stands on the race line.</summary>
    public static RaceLineRehearsal OnTheLine(PlacedRehearsal placed)
    {
        var rehearsal = placed.Rehearsal;
        return new(
            rehearsal.Id,
            Name(rehearsal.Details.Kind),
            Standing(rehearsal),
            State(placed),
            rehearsal.Details.Part.FirstEatenOn(rehearsal.RunOn),
            rehearsal.RunOn,
            rehearsal.Status == RehearsalStatus.Booked
        );
    }

    private static string State(PlacedRehearsal placed) =>
        placed.Rehearsal switch
        {
            { Status: RehearsalStatus.FedBack } => "told",
            { Decision: { } decision } => Name(decision.Verdict).ToLowerInvariant(),
            _ => placed.Notes.IsEmpty ? "booked" : "warned",
        };

    /// <summary>Why a booking did not come about; empty when it did.</summary>
    public static string Refusal(BookOutcome outcome, LocalDate runOn) =>
        outcome switch
        {
            NoPlaceThere none =>
                $"{Say.Day(runOn)} is blocked. {string.Join(" ", none.Why.Where(n => n.Blocks).Select(n => n.Text))}",
            RehearsingHeld held => $"{held.Hold.Title}. {held.Hold.Reason}",
            NothingToRehearse nothing => nothing.Why,
            BookedElsewhere =>
                "Somebody else changed this rehearsal meanwhile. What you see now is how it stands.",
            _ => "",
        };
}
