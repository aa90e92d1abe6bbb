using System.Collections.Immutable;
using Practice.Domain.Evidence;
using Practice.Domain.Foods;

namespace Practice.Domain.Rehearsals;

/// <summary>What a client has told about foods before any trial. Food keys throughout.</summary>
public sealed record GutHistory
{
    /// <summary>Nothing told.</summary>
    public static GutHistory Unknown { get; } = new();

    /// <summary>Foods that gave trouble in the past. Not what rehearsals taught: that would count it twice.</summary>
    public ImmutableHashSet<string> PastTrouble { get; init; } = [];

    /// <summary>Foods eaten every week without trouble.</summary>
    public ImmutableHashSet<string> EatenWeekly { get; init; } = [];
}

/// <summary>How likely a food is a trigger before any trial. Own rule; chilli is no trait of the library and is not seen.</summary>
public static class FoodPrior
{
    /// <summary>For a food of which nothing is known.</summary>
    public const double Usual = 0.10;

    private const double ByTraits = 0.20;
    private const double AfterPastTrouble = 0.30;
    private const double WhenEatenWeekly = 0.03;

    private const decimal RichInFibreG = 6;
    private const decimal FructoseAboveGlucoseG = 1;
    private const decimal RichInLactoseG = 2;
    private const decimal RichInFatG = 15;

    /// <summary>Where the rule comes from.</summary>
    public static ImmutableArray<Source> References { get; } =
    [Sources.SuspectAssumptions, Sources.TroubleTraits];

    /// <summary>The prior of a food, 0.03 to 0.30. Past trouble outweighs all; a weekly habit outweighs traits.</summary>
    public static double Of(Food food, GutHistory history)
    {
        ArgumentNullException.ThrowIfNull(food);
        ArgumentNullException.ThrowIfNull(history);
        return history.PastTrouble.Contains(food.Id) ? AfterPastTrouble
            : history.EatenWeekly.Contains(food.Id) ? WhenEatenWeekly
            : Troubles(food) ? ByTraits
            : Usual;
    }

    private static bool Troubles(Food food)
    {
        var (per100G, traits) = (food.Per100G, food.Traits);
        return (traits & Troublesome) != FoodTraits.None
            || per100G.FibreG >= RichInFibreG
            || per100G.FructoseG - per100G.GlucoseG >= FructoseAboveGlucoseG
            || per100G.LactoseG >= RichInLactoseG
            || per100G.FatG >= RichInFatG;
    }

    private const FoodTraits Troublesome =
        FoodTraits.HighResidue | FoodTraits.HighFodmap | FoodTraits.Sweetener;
}
