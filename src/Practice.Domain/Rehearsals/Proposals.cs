using System.Collections.Immutable;
using NodaTime;
using Practice.Domain.Evidence;
using Practice.Domain.Plans;
using Practice.Domain.Quantities;
using Practice.Domain.Screening;

namespace Practice.Domain.Rehearsals;

/// <summary>What is known when changes are proposed.</summary>
public sealed record ProposalCase
{
    /// <summary>The rehearsal that was read; where the practitioner's verdict differs, with hers.</summary>
    public required RehearsalReview Latest { get; init; }

    /// <summary>Earlier rehearsals for the same race, in any order.</summary>
    public ImmutableArray<RehearsalReview> Earlier { get; init; } = [];

    /// <summary>The plan to change.</summary>
    public required RaceWeekPlan Plan { get; init; }

    /// <summary>What all trials say about foods.</summary>
    public required SuspectFoods Suspects { get; init; }

    /// <summary>What screening forbids.</summary>
    public Adjustments Adjustments { get; init; } = Adjustments.None;

    /// <summary>Today: what is to be eaten next is bought tomorrow at the earliest.</summary>
    public required LocalDate Today { get; init; }

    /// <summary>The same kind once more; null when no time is left for it.</summary>
    internal NextRehearsal? Again => After(Latest.Details.Kind);

    /// <summary>A rehearsal a week after the last, or as soon as its loading days can be; null in the last ten days.</summary>
    internal NextRehearsal? After(RehearsalKind kind)
    {
        var ready = Today.PlusDays(1 + RehearsalPlace.On(kind, Today).EatingDays);
        var day = LocalDate.Max(ready, Latest.Details.RunOn.PlusDays(RehearsalCalendar.Apart));
        var left = Period.DaysBetween(day, Plan.Header.RaceStart.Date);
        return left < RehearsalCalendar.TooLate ? null : new(kind, day);
    }
}

/// <summary>
/// Proposes changes after a rehearsal, the one to take first. Escalation and stop rules are habits of the trade; how far
/// a step goes is our own rule. Nothing is proposed after a warning sign: that is for a doctor.
/// </summary>
public static class Proposals
{
    /// <summary>The proposals, the one to take first; empty when the plan should stay as it is.</summary>
    public static ImmutableArray<Proposal> For(ProposalCase rehearsed)
    {
        ArgumentNullException.ThrowIfNull(rehearsed);
        var latest = rehearsed.Latest;
        if (!latest.Feedback.WarningSigns.IsEmpty)
            return [];
        return latest.Verdict switch
        {
            TrialVerdict.Pass => [.. AfterAClean(rehearsed)],
            TrialVerdict.Adapt => [.. AfterTrouble(rehearsed)],
            _ => [.. AfterAFail(rehearsed)],
        };
    }

    // a full rehearsal that was eaten and sat well is kept, not improved
    private static IEnumerable<Proposal> AfterAClean(ProposalCase rehearsed)
    {
        var latest = rehearsed.Latest;
        if (latest.Compliance is Compliance.Partly or Compliance.NotLoaded)
            return EasierToEat.For(rehearsed, "It sat well, but not all of it was eaten.");
        return latest.Details.Kind == RehearsalKind.Partial ? GoToFull(rehearsed) : [];
    }

    private static IEnumerable<Proposal> AfterTrouble(ProposalCase rehearsed) =>
        [.. LowerGutOnce(rehearsed), .. FoodChange.For(rehearsed), .. GutRelief.For(rehearsed)];

    private static IEnumerable<Proposal> AfterAFail(ProposalCase rehearsed)
    {
        var food = FoodChange.For(rehearsed).ToList();
        var likely = rehearsed.Suspects.Groups.Any(g => g.Foods[0].Label == SuspectLabel.Likely);
        return
        [
            .. LowerGutOnce(rehearsed),
            .. likely ? food : [],
            .. TargetStep.Back(rehearsed),
            .. likely ? [] : food,
            .. GutRelief.For(rehearsed),
        ];
    }

    private static IEnumerable<Proposal> GoToFull(ProposalCase rehearsed)
    {
        if (rehearsed.After(RehearsalKind.Full) is { } next)
            yield return new(
                "go-to-full",
                null,
                next,
                "Go on to the full rehearsal",
                "The partial rehearsal was eaten and sat well.",
                [Sources.Escalation]
            );
    }

    // lower scores repeat poorly (Gaskell 2019): one such trial alone changes nothing
    private static IEnumerable<Proposal> LowerGutOnce(ProposalCase rehearsed)
    {
        var latest = rehearsed.Latest;
        var stopped = latest.Feedback.Vomited || latest.Feedback.Run is { StoppedByGut: true };
        if (
            rehearsed.Again is { } again
            && !stopped
            && latest.Symptoms.OnlyLowerReaches(Noticed)
            && !rehearsed.Earlier.Any(r => r.Symptoms.OnlyLowerReaches(Noticed))
        )
            yield return new(
                "repeat-unchanged",
                null,
                again,
                "Repeat it unchanged",
                "Only the lower gut was in trouble, and its scores repeat poorly: see whether it comes again.",
                [Sources.Gaskell2019]
            );
    }

    /// <summary>The first score that asks for a change.</summary>
    private const int Noticed = 3;

    internal static string Rate(decimal gPerKg) => $"{Rounding.Shown(gPerKg, 1)} g/kg";
}
