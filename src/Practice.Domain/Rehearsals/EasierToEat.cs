using Practice.Domain.Evidence;
using Practice.Domain.Quantities;

namespace Practice.Domain.Rehearsals;

/// <summary>Makes the same carbohydrate easier to get down: more of it drunk, or less at one sitting. Own steps.</summary>
internal static class EasierToEat
{
    private const decimal DrinksStep = 0.10m;
    private const decimal MostDrinks = 0.50m;
    private const int MostSittings = 7;
    private const decimal Lighter = 0.85m;

    public static IEnumerable<Proposal> For(ProposalCase rehearsed, string why) =>
        [.. ToDrinks(rehearsed, why), LessAtOnce(rehearsed, why)];

    public static Proposal LessAtOnce(ProposalCase rehearsed, string why)
    {
        var sittings = rehearsed.Plan.Choices.OccasionsPerDay;
        return sittings < MostSittings
            ? new(
                "more-sittings",
                new SittingsPerDay(sittings + 1),
                rehearsed.Again,
                "One more sitting, each of them smaller",
                why,
                [Sources.ProposalSteps]
            )
            : new(
                "lighter-sittings",
                new LighterSittings(Lighter),
                rehearsed.Again,
                "Lighter sittings: less bulk at once",
                why,
                [Sources.ProposalSteps]
            );
    }

    // where screening allows no drinking plan, drinks are not the way out
    public static IEnumerable<Proposal> ToDrinks(ProposalCase rehearsed, string why)
    {
        var share = rehearsed.Plan.Choices.DrinksShare;
        if (rehearsed.Adjustments.ThirstOnly || share >= MostDrinks)
            yield break;
        var to = Math.Min(MostDrinks, share + DrinksStep);
        yield return new(
            "shift-to-drinks",
            new ShiftToDrinks(to),
            rehearsed.Again,
            $"Drinks bring {Rounding.Shown(100 * to, 0)} % of the carbohydrate",
            why,
            [Sources.DrinksSupply, Sources.ProposalSteps]
        );
    }
}
