using System.Collections.Immutable;
using Practice.Domain.Physiology;

namespace Practice.Domain.Plans.Weeks;

/// <summary>What to pack for the race, by where it belongs. Common practice; what is carried comes from the course plan.</summary>
public static class Packing
{
    /// <summary>Race kit.</summary>
    public const string Kit = "Race kit";

    /// <summary>Food and drink.</summary>
    public const string Food = "Food and drink";

    /// <summary>What is carried on the course.</summary>
    public const string Carried = "To carry on the course";

    /// <summary>For after the finish.</summary>
    public const string After = "For after the finish";

    /// <summary>Papers and medicines.</summary>
    public const string Papers = "Papers and medicines";

    /// <summary>The list that a week begins with.</summary>
    internal static ImmutableArray<PackItem> Usual(RaceHeat? heat) =>
        [
            new(Kit, "Number, pins or belt, chip"),
            new(Kit, "Shoes and socks you have raced in"),
            new(Kit, "Clothes you have raced in, one layer more to throw away"),
            new(Kit, "Something against chafing, plasters, toilet paper"),
            .. heat?.Colour >= HeatColour.Yellow
                ? (IEnumerable<PackItem>)[new(Kit, "Cap, sun cream, a light shirt")]
                : [],
            new(Food, "Race breakfast, also if the hotel promises one"),
            new(Food, "Second small feed and its drink"),
            new(Food, "Cutlery, bowl, opener where you stay"),
            new(After, "Dry clothes, warm layer, other shoes"),
            new(After, "First recovery food and drink"),
            new(Papers, "Identity paper, start papers, tickets"),
            new(Papers, "Your usual medicines, and what you must carry for an allergy"),
            new(Papers, "This plan and the race card"),
        ];

    /// <summary>The whole list of a plan: the week's own, and what its course plan says to carry.</summary>
    public static ImmutableArray<PackItem> Of(RaceWeekPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var carried =
            plan.Course?.Carried.Select(c => new PackItem(Carried, $"{c.Count} × {c.Name}")) ?? [];
        return [.. plan.Week?.Packing ?? [], .. carried];
    }
}
