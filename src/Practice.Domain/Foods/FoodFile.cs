using System.Collections.Immutable;
using System.Text.Json;

namespace Practice.Domain.Foods;

/// <summary>
/// Reads foods from a JSON array, one object a food. Strict on purpose: a key that nobody reads is a fault too, for it
/// is most likely a misspelt one.
/// </summary>
internal static class FoodFile
{
    public static ImmutableArray<Food> Read(Stream json)
    {
        using var document = JsonDocument.Parse(json);
        return [.. document.RootElement.EnumerateArray().Select(ReadFood)];
    }

    private static Food ReadFood(JsonElement element)
    {
        var id =
            element.TryGetProperty("id", out var given) && given.ValueKind == JsonValueKind.String
                ? given.GetString()!
                : throw new InvalidDataException($"A food without 'id': {element.GetRawText()}");
        var row = new FoodFields(id, "", element);
        var food = new Food
        {
            Id = row.Text("id"),
            Name = row.Text("name"),
            UsName = row.TextOrNull("usName"),
            Group = row.One<FoodGroup>("group"),
            Family = row.Text("family"),
            Cuisine = row.TextOrNull("cuisine"),
            IsLiquid = row.Flag("liquid"),
            Per100G = ReadNutrients(row.Part("per100g")),
            Serving = ReadServing(row.Part("serving")),
            Roles = ReadRoles(row.Part("roles")),
            Occasions = row.Several<OccasionKind>("occasions"),
            Allergens = row.Several<Allergen>("allergens"),
            Traits = row.Several<FoodTraits>("traits")
                .Aggregate(FoodTraits.None, (all, trait) => all | trait),
            Origin = ReadOrigin(row.Part("origin")),
        };
        row.Finish();
        FoodChecks.Check(food);
        return food;
    }

    private static Nutrients ReadNutrients(FoodFields row)
    {
        var nutrients = new Nutrients
        {
            EnergyKcal = row.Number("kcal"),
            CarbohydrateG = row.Number("carb"),
            SugarsG = row.Number("sugars"),
            GlucoseG = row.NumberOrNull("glucose"),
            FructoseG = row.NumberOrNull("fructose"),
            SucroseG = row.NumberOrNull("sucrose"),
            LactoseG = row.NumberOrNull("lactose"),
            FibreG = row.Number("fibre"),
            ProteinG = row.Number("protein"),
            FatG = row.Number("fat"),
            SodiumMg = row.Number("sodium"),
            PotassiumMg = row.Number("potassium"),
            WaterG = row.Number("water"),
            CaffeineMg = row.NumberOrNull("caffeine") ?? 0,
        };
        row.Finish();
        return nutrients;
    }

    private static Serving ReadServing(FoodFields row)
    {
        var unit = row.Text("unit");
        var serving = new Serving
        {
            Style = row.One<ServingStyle>("style"),
            StepGrams = row.Number("step"),
            UnitsPerStep = row.Number("per"),
            Unit = unit,
            UnitPlural = row.TextOrNull("units") ?? unit,
            UsUnit = row.TextOrNull("usUnit"),
            UsUnitPlural = row.TextOrNull("usUnits"),
            Steps = [.. row.Items("steps").Select(step => step.GetInt32())],
            Measures = [.. row.Parts("measures").Select(ReadMeasure)],
        };
        row.Finish();
        return serving;
    }

    private static HouseholdMeasure ReadMeasure(FoodFields row)
    {
        var measure = new HouseholdMeasure(
            row.Text("name"),
            row.Text("plural"),
            row.Number("g"),
            row.OneOrNull<HouseholdUnits>("for")
        );
        row.Finish();
        return measure;
    }

    private static ImmutableArray<FoodRole> ReadRoles(FoodFields row) =>
        [
            .. row.Names.Select(name => new FoodRole(
                row.Name<MealRole>(name),
                (int)row.Number(name)
            )),
        ];

    private static FoodOrigin ReadOrigin(FoodFields row)
    {
        var origin = new FoodOrigin(
            row.Text("dataset"),
            row.TextOrNull("record"),
            row.TextOrNull("note")
        );
        row.Finish();
        return origin;
    }
}
