using Practice.Domain.Evidence;
using Practice.Domain.Quantities;

namespace Practice.Domain.Rehearsals;

/// <summary>
/// Relieves the part of the gut that was in trouble: less fibre for the lower, less at one sitting for the upper. Common
/// practice; the steps are our own.
/// </summary>
internal static class GutRelief
{
    private const decimal StrictFibreG = 10;

    /// <summary>Below it a rehearsal passes, and nothing is said to have been in trouble.</summary>
    private const int TroubleFrom = 3;

    public static IEnumerable<Proposal> For(ProposalCase rehearsed)
    {
        var scores = rehearsed.Latest.Symptoms.Worst;
        // nausea is the stomach's, though the scale counts it apart
        return scores.Lower > Math.Max(scores.Upper, scores.Other)
            ? [.. LessFibre(rehearsed), EasierToEat.LessAtOnce(rehearsed, LowerTrouble)]
            : [.. EasierToEat.For(rehearsed, UpperTrouble), .. LessFibre(rehearsed)];
    }

    private const string LowerTrouble = "The lower gut was in trouble.";
    private const string UpperTrouble = "The stomach was in trouble: less bulk at once.";

    private static IEnumerable<Proposal> LessFibre(ProposalCase rehearsed)
    {
        var ceiling = rehearsed.Plan.Targets.Fibre.High;
        if (rehearsed.Adjustments.NoLowResidue || ceiling is not > StrictFibreG)
            yield break;
        yield return new(
            "lower-fibre",
            new LowerFibre(StrictFibreG / ceiling.Value),
            rehearsed.Again,
            $"Fibre down to {Rounding.Shown(StrictFibreG, 0)} g a day",
            rehearsed.Latest.Symptoms.Worst.Lower >= TroubleFrom
                ? LowerTrouble
                : "Less fibre keeps the gut quieter.",
            [Sources.LowFibre, Sources.Foo2022, Sources.ProposalSteps]
        );
    }
}
