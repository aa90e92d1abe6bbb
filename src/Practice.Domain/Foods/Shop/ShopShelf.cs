using System.Collections.Frozen;
using System.Collections.Immutable;
using System.Reflection;
using System.Text.Json;

namespace Practice.Domain.Foods.Shop;

/// <summary>How a food is sold.</summary>
/// <param name="Dry">The dry food it is cooked from; null where it is bought as it is eaten.</param>
/// <param name="Uk">How shops of the United Kingdom pack it.</param>
/// <param name="Us">How shops of the United States pack it.</param>
public sealed record ShopFood(DryForm? Dry, Packing? Uk, Packing? Us)
{
    /// <summary>How the reader's shops pack it; null where they sell it loose or too variously to say.</summary>
    public Packing? PackingIn(HouseholdUnits units) =>
        units == HouseholdUnits.UsCustomary ? Us : Uk;
}

/// <summary>How the foods of the library are sold: <c>packs.json</c> beside this file, one line for foods sold alike.</summary>
public static class ShopShelf
{
    private static readonly Lazy<FrozenDictionary<string, ShopFood>> Once = new(Read);

    /// <summary>Keys of the foods whose packs are known.</summary>
    public static ImmutableArray<string> Known => Once.Value.Keys;

    /// <summary>How a food is sold; null when that is not known.</summary>
    public static ShopFood? Find(string foodId) => Once.Value.GetValueOrDefault(foodId);

    private static FrozenDictionary<string, ShopFood> Read()
    {
        var assembly = Assembly.GetExecutingAssembly();
        var name = assembly
            .GetManifestResourceNames()
            .Single(n => n.EndsWith(".Shop.packs.json", StringComparison.Ordinal));
        using var stream = assembly.GetManifestResourceStream(name)!;
        using var document = JsonDocument.Parse(stream);
        var foods = new Dictionary<string, ShopFood>(StringComparer.Ordinal);
        foreach (var (id, food) in document.RootElement.EnumerateArray().SelectMany(ReadRow))
            if (!foods.TryAdd(id, food))
                throw FoodFields.Fault(id, "foods", "stands in two lines of packs");
        return foods.ToFrozenDictionary(StringComparer.Ordinal);
    }

    private static IEnumerable<(string Id, ShopFood Food)> ReadRow(JsonElement element)
    {
        var row = new FoodFields(element.GetRawText(), "", element);
        var ids = row.Items("foods").Select(id => id.GetString()!).ToList();
        var food = new ShopFood(
            row.PartOrNull("dry") is { } dry ? ReadDry(dry) : null,
            row.PartOrNull("uk") is { } uk ? ReadPacking(uk) : null,
            row.PartOrNull("us") is { } us ? ReadPacking(us) : null
        );
        row.Finish();
        return ids.Select(id => (id, food));
    }

    private static DryForm ReadDry(FoodFields row)
    {
        var dry = new DryForm(
            row.Text("name"),
            row.TextOrNull("usName"),
            row.Text("record"),
            row.Number("water")
        );
        row.Finish();
        return dry;
    }

    private static Packing ReadPacking(FoodFields row)
    {
        var (pack, packs) = (row.Text("pack"), row.Text("packs"));
        var (by, sizes) =
            row.PartOrNull("g") is { } grams ? (PackedBy.Grams, grams)
            : row.PartOrNull("ml") is { } millilitres ? (PackedBy.Millilitres, millilitres)
            : (PackedBy.Pieces, row.Part("pieces"));
        var packing = new Packing(
            pack,
            packs,
            by,
            [.. sizes.Names.Select(said => new PackSize(said, sizes.Number(said)))]
        );
        row.Finish();
        return packing;
    }
}
