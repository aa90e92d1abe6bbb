using System.Collections.Immutable;
using NodaTime;
using Practice.Domain.Evidence;

namespace Practice.Domain.Rehearsals;

/// <summary>A rehearsal that should follow.</summary>
/// <param name="Kind">How much is tried.</param>
/// <param name="NotBefore">The earliest day of its run: a week after the last, with its loading days still to come.</param>
public sealed record NextRehearsal(RehearsalKind Kind, LocalDate NotBefore);

/// <summary>
/// What might be changed after a rehearsal. One change at a time: with two, the next trial can not tell which of them
/// helped. The practitioner decides.
/// </summary>
/// <param name="Key">Stable key, such as <c>step-back</c>.</param>
/// <param name="Change">What changes in the plan; null when nothing does.</param>
/// <param name="Next">The rehearsal that should follow; null when none has to, or no time is left.</param>
/// <param name="Title">The change in a few words.</param>
/// <param name="Reason">Why it is proposed.</param>
/// <param name="References">Where the rule comes from.</param>
public sealed record Proposal(
    string Key,
    PlanChange? Change,
    NextRehearsal? Next,
    string Title,
    string Reason,
    ImmutableArray<Source> References
);
