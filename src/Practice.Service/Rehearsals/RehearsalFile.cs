using System.Collections.Immutable;
using NodaTime;
using Practice.Domain.Caseload;
using Practice.Domain.Clients;
using Practice.Domain.Plans;
using Practice.Domain.Races;
using Practice.Domain.Rehearsals;
using Practice.Domain.Screening;

namespace Practice.Service.Rehearsals;

/// <summary>A rehearsal as one page shows it.</summary>
/// <param name="Rehearsal">The rehearsal, with the version it was read at.</param>
/// <param name="Client">Who rehearses.</param>
/// <param name="Race">The race it is for.</param>
/// <param name="Version">The plan version it was booked from; null where it is gone.</param>
/// <param name="Latest">The newest plan version that was not withdrawn; null without.</param>
/// <param name="Notes">What speaks against its place, while it can be moved.</param>
/// <param name="Review">How it reads; null before the client told.</param>
/// <param name="Trials">What all trials of the client say.</param>
/// <param name="Proposals">What might be changed; empty before the client told and after it was decided.</param>
/// <param name="Came">The version that came of the review, beside the one it was made from; null without.</param>
/// <param name="Hold">The hold that a warning sign raised; null when none stands.</param>
/// <param name="MassAllowed">Whether body mass may be asked for.</param>
/// <param name="Today">The day on which all this holds.</param>
public sealed record RehearsalFile(
    OnFile<Rehearsal> Rehearsal,
    Client Client,
    Race Race,
    PlanVersion? Version,
    PlanVersion? Latest,
    ImmutableArray<PlacementNote> Notes,
    RehearsalReview? Review,
    ClientTrials Trials,
    ImmutableArray<Proposal> Proposals,
    PlanCame? Came,
    Hold? Hold,
    bool MassAllowed,
    LocalDate Today
);

/// <summary>The plan version that came of a review.</summary>
/// <param name="Version">The new version.</param>
/// <param name="Diff">How it differs from the one it was made from.</param>
public sealed record PlanCame(PlanVersion Version, PlanDiff Diff);
