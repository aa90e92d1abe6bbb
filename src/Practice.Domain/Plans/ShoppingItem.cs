using System.Globalization;
using Practice.Domain.Foods;
using Practice.Domain.Foods.Shop;

namespace Practice.Domain.Plans;

/// <summary>A food to buy, for the whole plan.</summary>
/// <param name="Name">Name as planned.</param>
/// <param name="Needed">All its portions as one: what the plan eats.</param>
/// <param name="Times">In how many sittings it is eaten.</param>
public sealed record ShoppingItem(string Name, Portion Needed, int Times)
{
    private const char NoBreak = '\u00A0';
    private const decimal Scales = 10;

    /// <summary>What to look for in a shop: the dry food where the plan eats it cooked and its weight is known.</summary>
    public string NameInShop(HouseholdUnits units) => Sold?.Dry?.NameIn(units) ?? Name;

    /// <summary>
    /// What to buy, rounded up to packs that shops commonly sell with what the plan needs of them; without a known pack
    /// to whole pieces, 50 g or 100 g, 100 ml.
    /// </summary>
    public string ToBuy(HouseholdUnits units)
    {
        if (Sold?.PackingIn(units) is not { } packing)
            return Loose(units);
        var (count, size) = packing.For(Amount(packing.By));
        var packs = $"{count}{NoBreak}{(count == 1 ? packing.Pack : packing.Packs)}";
        return $"{packs} of {size.Said.Replace(' ', NoBreak)} (needs{NoBreak}{Needs(packing.By, units)})";
    }

    /// <summary>What to buy, without any number beside a unit.</summary>
    public string ToBuyInWords(HouseholdUnits units) =>
        Needed.Serving.Style == ServingStyle.Counted ? PortionWords.NumberFree(WholePieces, units)
        : Times == 1 ? PortionWords.NumberFree(Needed, units)
        : $"enough for {KitchenNumber.Phrase(Times, "meal or snack", "meals or snacks")}";

    private ShopFood? Sold => ShopShelf.Find(Needed.FoodId);

    private decimal Grams => Sold?.Dry?.GramsFor(Needed.Grams, Needed.Per100G) ?? Needed.Grams;

    private decimal Amount(PackedBy by) =>
        by switch
        {
            PackedBy.Grams => Grams,
            PackedBy.Millilitres => Needed.Millilitres,
            _ => decimal.Ceiling(Needed.Steps * Needed.Serving.UnitsPerStep),
        };

    private string Needs(PackedBy by, HouseholdUnits units)
    {
        if (by == PackedBy.Pieces)
            return PortionWords.Household(WholePieces, units);
        var household = PortionWords.Household(Needed, units);
        if (Needed.Serving.Style == ServingStyle.Counted)
            return household;
        var amount = decimal.Ceiling(Amount(by) / Scales) * Scales;
        var measured = Measured(amount, by == PackedBy.Millilitres);
        return units == HouseholdUnits.Metric || Sold?.Dry is not null
            ? measured
            : $"{household}, {measured}";
    }

    private string Loose(HouseholdUnits units)
    {
        if (Needed.Serving.Style == ServingStyle.Counted)
            return PortionWords.Full(WholePieces, units);
        var household = PortionWords.Household(Needed, units);
        return units == HouseholdUnits.Metric || household == PortionWords.Grams(Needed)
            ? LooseWeight
            : $"{household} ({LooseWeight})";
    }

    private Portion WholePieces
    {
        get
        {
            var perStep = Needed.Serving.UnitsPerStep;
            var steps = decimal.Ceiling(Needed.Steps * perStep) / perStep;
            return Needed with { Steps = (int)decimal.Ceiling(steps) };
        }
    }

    private string LooseWeight
    {
        get
        {
            var poured = Needed.Serving.Style == ServingStyle.Poured;
            var amount = poured ? Needed.Millilitres : Needed.Grams;
            var step = poured || amount > 500 ? 100 : 50;
            return Measured(decimal.Ceiling(amount / step) * step, poured);
        }
    }

    private static string Measured(decimal amount, bool poured) =>
        amount < 1000
            ? Number(amount) + NoBreak + (poured ? "ml" : "g")
            : Number(amount / 1000) + NoBreak + (poured ? "litres" : "kg");

    private static string Number(decimal amount) =>
        amount.ToString("0.##", CultureInfo.InvariantCulture);
}
