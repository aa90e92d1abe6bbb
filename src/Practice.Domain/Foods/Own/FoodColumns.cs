using System.Collections.Frozen;
using System.Collections.Immutable;
using Practice.Domain.Tables;

namespace Practice.Domain.Foods.Own;

/// <summary>What a table of foods can say, column by column, and how a row of it is read.</summary>
public static class FoodColumns
{
    private const string Salt = "Salt";

    /// <summary>All columns, those that are needed first.</summary>
    public static ImmutableArray<ImportColumn> All { get; } =
    [
        Column(
            FoodField.Name,
            "Name",
            true,
            "Its name, one in use only once.",
            "Fig and oat square",
            "food",
            "food name",
            "product",
            "description"
        ),
        Column(
            FoodField.Energy,
            "Energy, kcal",
            true,
            "Of 100 g, as eaten.",
            "380",
            "energy",
            "calories",
            "kcal",
            "energy kcal"
        ),
        Column(
            FoodField.Carbohydrate,
            "Carbohydrate, g",
            true,
            "Of 100 g, without fibre.",
            "66",
            "carbs",
            "carbohydrates",
            "carb",
            "available carbohydrate"
        ),
        Column(FoodField.Sugars, "Sugars, g", true, "Of 100 g.", "34", "sugar", "of which sugars"),
        Column(
            FoodField.Fibre,
            "Fibre, g",
            true,
            "Of 100 g.",
            "5",
            "fiber",
            "dietary fibre",
            "dietary fiber"
        ),
        Column(FoodField.Protein, "Protein, g", true, "Of 100 g.", "6"),
        Column(FoodField.Fat, "Fat, g", true, "Of 100 g.", "9", "fats", "total fat"),
        Column(FoodField.Sodium, "Sodium, mg", false, "Of 100 g; or a column of salt.", "", "na"),
        new(Salt, "Salt, g", false, "Of 100 g; read as sodium.", "0.3"),
        Column(FoodField.Caffeine, "Caffeine, mg", true, "Of 100 g; 0 for none.", "0"),
        Column(
            FoodField.Allergens,
            "Allergens",
            true,
            $"Words such as {Listed(FoodTableWords.Allergens.Keys, 6)}; or none.",
            "wheat, oats, milk",
            "allergen",
            "contains"
        ),
        Column(
            FoodField.Traits,
            "Diets",
            false,
            $"Of {Listed(FoodTableWords.Traits.Keys, 30)}.",
            "uncertified oats, sugary",
            "diet",
            "diet flags",
            "traits",
            "flags"
        ),
        Column(
            FoodField.Roles,
            "Served as",
            true,
            $"Of {Listed(FoodTableWords.Roles.Keys, 40)}.",
            "sweet bite",
            "role",
            "roles",
            "part",
            "meal role"
        ),
        Column(
            FoodField.Occasions,
            "Served at",
            false,
            $"Of {Listed(FoodTableWords.Occasions.Keys, 10)}; empty: as usual for what it is served as.",
            "morning snack, afternoon snack",
            "occasions",
            "occasion",
            "sittings",
            "meals"
        ),
        Column(
            FoodField.Group,
            "Section",
            false,
            $"Of {Listed(FoodTableWords.Groups.Keys, 20)}; empty: as usual for what it is served as.",
            "snack",
            "group",
            "category",
            "aisle"
        ),
        Column(
            FoodField.Family,
            "Same kind as",
            false,
            "A kind of the library, such as biscuit or juice; empty: a thing of its own.",
            "snack bar",
            "family",
            "kind"
        ),
        Column(
            FoodField.Unit,
            "Unit",
            true,
            "What one is called, such as slice; g for weighed, ml for poured.",
            "square",
            "measure",
            "serving unit"
        ),
        Column(
            FoodField.UnitPlural,
            "Units",
            false,
            "What several are called; empty: with an s.",
            "squares",
            "plural",
            "unit plural"
        ),
        Column(
            FoodField.Grams,
            "Unit weighs, g",
            false,
            "What one piece, or 100 ml, weighs.",
            "40",
            "unit grams",
            "grams",
            "weight",
            "serving size",
            "piece weight"
        ),
        Column(
            FoodField.Least,
            "Smallest helping",
            true,
            "In pieces, g or ml.",
            "1",
            "least",
            "min",
            "minimum",
            "from"
        ),
        Column(
            FoodField.Most,
            "Largest helping",
            true,
            "In pieces, g or ml.",
            "3",
            "most",
            "max",
            "maximum",
            "to"
        ),
        Column(
            FoodField.CanBeHalved,
            "Halves",
            false,
            "yes or no.",
            "yes",
            "can be halved",
            "half"
        ),
        Column(
            FoodField.Measures,
            "Household measures",
            false,
            "Of weighed and poured foods, such as blue bowl=220; ladle=90.",
            "",
            "measures",
            "household"
        ),
        Column(FoodField.Glucose, "Glucose, g", false, "Of 100 g, where known.", ""),
        Column(FoodField.Fructose, "Fructose, g", false, "Of 100 g, where known.", ""),
        Column(FoodField.Sucrose, "Sucrose, g", false, "Of 100 g, where known.", ""),
        Column(FoodField.Lactose, "Lactose, g", false, "Of 100 g, where known.", ""),
        Column(FoodField.Potassium, "Potassium, mg", false, "Of 100 g, where known.", ""),
        Column(FoodField.Water, "Water, g", false, "Of 100 g, where known.", "", "moisture"),
        Column(
            FoodField.UsName,
            "US name",
            false,
            "Where it differs.",
            "",
            "american name",
            "name us"
        ),
        Column(FoodField.UsUnit, "US unit", false, "Where it differs.", ""),
        Column(FoodField.UsUnitPlural, "US units", false, "Where it differs.", ""),
        Column(
            FoodField.Source,
            "Source",
            false,
            "Where the figures come from.",
            "Label",
            "origin",
            "reference"
        ),
    ];

    /// <summary>Reads a row. Its faults stay with the reader; of a row without errors the sheet has none either.</summary>
    public static FoodSheet Read(RowReader row)
    {
        ArgumentNullException.ThrowIfNull(row);
        var roles = Several(row, FoodField.Roles, FoodTableWords.Roles) ?? [];
        var unit = Text(row, FoodField.Unit) ?? "";
        var sheet = new FoodSheet
        {
            Name = Text(row, FoodField.Name) ?? "",
            UsName = Text(row, FoodField.UsName),
            Group =
                row.One(Key(FoodField.Group), FoodTableWords.Groups) ?? UsualPlaces.Group(roles),
            Family = Text(row, FoodField.Family) is { } family
                ? RowReader.Key(family).Replace(' ', '-')
                : null,
            Per100G = Figures(row),
            Serving = Serving(row, unit),
            Allergens = Allergens(row),
            Traits = (Several(row, FoodField.Traits, FoodTableWords.Traits) ?? []).Aggregate(
                FoodTraits.None,
                (all, one) => all | one
            ),
            Roles = roles,
            Occasions =
                Several(row, FoodField.Occasions, FoodTableWords.Occasions)
                ?? UsualPlaces.Occasions(roles),
            Source = Text(row, FoodField.Source) ?? "",
        };
        // what could not be read at all is told already; what was read is asked whether it makes sense
        foreach (var fault in FoodSheetChecks.Of(sheet))
            if (KeyOf(fault.Field, row) is var key && !row.IsFaulty(key))
                row.Fault(key, fault.Text, fault.IsWarning);
        return sheet;
    }

    private static LabelFigures Figures(RowReader row) =>
        new()
        {
            EnergyKcal = Number(row, FoodField.Energy),
            CarbohydrateG = Number(row, FoodField.Carbohydrate),
            SugarsG = Number(row, FoodField.Sugars),
            GlucoseG = Number(row, FoodField.Glucose),
            FructoseG = Number(row, FoodField.Fructose),
            SucroseG = Number(row, FoodField.Sucrose),
            LactoseG = Number(row, FoodField.Lactose),
            FibreG = Number(row, FoodField.Fibre),
            ProteinG = Number(row, FoodField.Protein),
            FatG = Number(row, FoodField.Fat),
            SodiumMg = Number(row, FoodField.Sodium) ?? SodiumOf(row),
            PotassiumMg = Number(row, FoodField.Potassium),
            WaterG = Number(row, FoodField.Water),
            CaffeineMg = Number(row, FoodField.Caffeine),
        };

    // salt is sodium times 2.5: Regulation (EU) 1169/2011, Annex I
    private static decimal? SodiumOf(RowReader row)
    {
        if (row.Number(Salt) is not { } salt)
            return null;
        if (salt is >= 0 and <= 100)
            return salt * 400;
        row.Fault(Salt, "Between 0 and 100 g.");
        return null;
    }

    private static ServingSheet Serving(RowReader row, string unit)
    {
        var style = RowReader.Key(unit) switch
        {
            "" => (ServingStyle?)null,
            "g" or "gram" or "grams" => ServingStyle.Weighed,
            "ml" or "millilitre" or "millilitres" => ServingStyle.Poured,
            _ => ServingStyle.Counted,
        };
        if (style is null)
            row.Fault(Key(FoodField.Unit), "Empty: a word such as slice, or g, or ml.");
        var counted = style == ServingStyle.Counted;
        return new ServingSheet
        {
            Style = style,
            Unit = counted ? unit : "",
            UnitPlural = counted ? Text(row, FoodField.UnitPlural) ?? $"{unit}s" : "",
            UsUnit = Text(row, FoodField.UsUnit),
            UsUnitPlural = Text(row, FoodField.UsUnitPlural),
            Grams = style == ServingStyle.Weighed ? null : Number(row, FoodField.Grams),
            CanBeHalved = row.One(Key(FoodField.CanBeHalved), FoodTableWords.YesOrNo) ?? false,
            Least = Number(row, FoodField.Least),
            Most = Number(row, FoodField.Most),
            Measures = counted ? [] : Measures(row),
        };
    }

    private static ImmutableArray<Allergen>? Allergens(RowReader row)
    {
        var key = Key(FoodField.Allergens);
        if (row.Text(key) is not { } text)
        {
            row.Fault(key, "Empty: write what it holds, or none. Read the label; it always wins.");
            return null;
        }
        return FoodTableWords.NoAllergen.Contains(RowReader.Key(text))
            ? []
            : row.Several(key, FoodTableWords.Allergens);
    }

    private static ImmutableArray<HouseholdMeasure> Measures(RowReader row)
    {
        var measures = ImmutableArray.CreateBuilder<HouseholdMeasure>();
        var key = Key(FoodField.Measures);
        foreach (
            var said in (row.Text(key) ?? "").Split(';', StringSplitOptions.RemoveEmptyEntries)
        )
        {
            var parts = said.Split('=', 2, StringSplitOptions.TrimEntries);
            if (
                parts.Length == 2
                && decimal.TryParse(
                    parts[1].Replace(',', '.'),
                    System.Globalization.NumberStyles.AllowDecimalPoint,
                    System.Globalization.CultureInfo.InvariantCulture,
                    out var grams
                )
            )
                measures.Add(new(parts[0], $"{parts[0]}s", grams, IsOwn: true));
            else
                row.Fault(key, "Write each as name=grams, such as blue bowl=220.");
        }
        return measures.ToImmutable();
    }

    // what a form asks in a field of its own, a table says in another column
    private static string KeyOf(FoodField field, RowReader row) =>
        field switch
        {
            FoodField.Style => Key(FoodField.Unit),
            FoodField.Sodium when Text(row, field) is null && row.Text(Salt) is not null => Salt,
            _ => Key(field),
        };

    private static string Key(FoodField field) => field.ToString();

    private static string? Text(RowReader row, FoodField field) => row.Text(Key(field));

    private static decimal? Number(RowReader row, FoodField field) => row.Number(Key(field));

    private static ImmutableArray<T>? Several<T>(
        RowReader row,
        FoodField field,
        FrozenDictionary<string, T> words
    )
        where T : struct => row.Several(Key(field), words);

    private static string Listed(IEnumerable<string> words, int most) =>
        string.Join(", ", words.Order(StringComparer.Ordinal).Take(most));

    private static ImportColumn Column(
        FoodField field,
        string name,
        bool isNeeded,
        string says,
        string example,
        params ReadOnlySpan<string> alsoCalled
    ) => new(Key(field), name, isNeeded, says, example) { AlsoCalled = [.. alsoCalled] };
}
