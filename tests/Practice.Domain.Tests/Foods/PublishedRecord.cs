using System.Globalization;
using CsvHelper;
using CsvHelper.Configuration;
using Practice.Domain.Foods;

namespace Practice.Domain.Tests.Foods;

/// <summary>A row of a published food table, copied beside the tests with its citation in the first line.</summary>
public sealed class PublishedRecord(IReadOnlyDictionary<string, string> cells)
{
    private static readonly Lazy<Dictionary<string, PublishedRecord>> Sr28Once = new(() =>
        Load("usda-sr28.csv", "record")
    );

    private static readonly Lazy<Dictionary<string, PublishedRecord>> CiqualOnce = new(() =>
        Load("ciqual-2020.csv", "record")
    );

    private static readonly Lazy<Dictionary<string, PublishedRecord>> OwnOnce = new(() =>
        Load("own-components.csv", "name")
    );

    public static IReadOnlyDictionary<string, PublishedRecord> Sr28 => Sr28Once.Value;

    public static IReadOnlyDictionary<string, PublishedRecord> Ciqual => CiqualOnce.Value;

    /// <summary>Components of our recipes that no table has.</summary>
    public static IReadOnlyDictionary<string, PublishedRecord> Own => OwnOnce.Value;

    public decimal? this[string column] =>
        cells[column] is { Length: > 0 } cell
            ? decimal.Parse(cell, CultureInfo.InvariantCulture)
            : null;

    /// <summary>Carbohydrate without fibre; SR28 publishes it with fibre in it. Null where fibre is not known.</summary>
    public decimal? AvailableCarbohydrate =>
        cells.ContainsKey("carb_by_difference_g")
            ? this["carb_by_difference_g"] - this["fibre_g"]
            : this["carbohydrate_g"];

    private static Dictionary<string, PublishedRecord> Load(string file, string key)
    {
        using var reader = new CsvReader(
            new StreamReader(Path.Combine(AppContext.BaseDirectory, "Foods", file)),
            new CsvConfiguration(CultureInfo.InvariantCulture) { AllowComments = true }
        );
        return reader
            .GetRecords<dynamic>()
            .Cast<IDictionary<string, object>>()
            .Select(row => row.ToDictionary(cell => cell.Key, cell => (string)cell.Value))
            .ToDictionary(row => row[key], row => new PublishedRecord(row));
    }
}

/// <summary>Rows of the library by where their values come from.</summary>
internal static class Origins
{
    public static IEnumerable<Food> From(string dataset) =>
        FoodLibrary.Standard.All.Where(food => food.Origin.Dataset == dataset);

    public static TheoryData<string> IdsFrom(string dataset) =>
        [.. From(dataset).Select(food => food.Id)];

    public static bool Notes(this Food food, string words) =>
        food.Origin.Note?.Contains(words, StringComparison.OrdinalIgnoreCase) == true;
}
