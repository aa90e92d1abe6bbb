using System.ComponentModel.DataAnnotations;
using Practice.Domain.Foods;
using Practice.Domain.Foods.Own;

namespace Practice.Web.Features.Foods.Ours;

/// <summary>
/// What was typed about a food of the practice's own. Its fields bear the names of <see cref="FoodField"/>, which the
/// checks of the Domain answer by; it asks nothing itself.
/// </summary>
public sealed class FoodForm : IValidatableObject
{
    public string? Name { get; set; }
    public string? UsName { get; set; }
    public FoodGroup? Group { get; set; }
    public string? Family { get; set; }
    public decimal? Energy { get; set; }
    public decimal? Carbohydrate { get; set; }
    public decimal? Sugars { get; set; }
    public decimal? Glucose { get; set; }
    public decimal? Fructose { get; set; }
    public decimal? Sucrose { get; set; }
    public decimal? Lactose { get; set; }
    public decimal? Fibre { get; set; }
    public decimal? Protein { get; set; }
    public decimal? Fat { get; set; }
    public decimal? Sodium { get; set; }
    public decimal? Potassium { get; set; }
    public decimal? Water { get; set; }
    public decimal? Caffeine { get; set; }
    public ServingStyle? Style { get; set; }
    public string? Unit { get; set; }
    public string? UnitPlural { get; set; }
    public string? UsUnit { get; set; }
    public string? UsUnitPlural { get; set; }
    public decimal? Grams { get; set; }
    public bool CanBeHalved { get; set; }
    public decimal? Least { get; set; }
    public decimal? Most { get; set; }
    public List<MeasureLine> Measures { get; } = [];
    public bool NoAllergens { get; set; }
    public HashSet<Allergen> Allergens { get; } = [];
    public HashSet<FoodTraits> Traits { get; } = [];
    public HashSet<MealRole> Roles { get; } = [];
    public HashSet<OccasionKind> Occasions { get; } = [];
    public string? Source { get; set; }

    /// <summary>A form filled with what is written down.</summary>
    public static FoodForm Of(FoodSheet sheet)
    {
        var (figures, serving) = (sheet.Per100G, sheet.Serving);
        var form = new FoodForm
        {
            Name = sheet.Name,
            UsName = sheet.UsName,
            Group = sheet.Group,
            Family = sheet.Family,
            Energy = figures.EnergyKcal,
            Carbohydrate = figures.CarbohydrateG,
            Sugars = figures.SugarsG,
            Glucose = figures.GlucoseG,
            Fructose = figures.FructoseG,
            Sucrose = figures.SucroseG,
            Lactose = figures.LactoseG,
            Fibre = figures.FibreG,
            Protein = figures.ProteinG,
            Fat = figures.FatG,
            Sodium = figures.SodiumMg,
            Potassium = figures.PotassiumMg,
            Water = figures.WaterG,
            Caffeine = figures.CaffeineMg,
            Style = serving.Style,
            Unit = serving.Unit,
            UnitPlural = serving.UnitPlural,
            UsUnit = serving.UsUnit,
            UsUnitPlural = serving.UsUnitPlural,
            Grams = serving.Grams,
            CanBeHalved = serving.CanBeHalved,
            Least = serving.Least,
            Most = serving.Most,
            NoAllergens = sheet.Allergens is { IsEmpty: true },
            Source = sheet.Source,
        };
        form.Measures.AddRange(serving.Measures.Select(MeasureLine.Of));
        form.Allergens.UnionWith(sheet.Allergens ?? []);
        form.Traits.UnionWith(FoodWords.Traits.Where(t => sheet.Traits.HasFlag(t)));
        form.Roles.UnionWith(sheet.Roles);
        form.Occasions.UnionWith(sheet.Occasions);
        return form;
    }

    /// <summary>What the form says, right or wrong.</summary>
    public FoodSheet Read() =>
        new()
        {
            Name = Name ?? "",
            UsName = Text(UsName),
            Group = Group,
            Family = Text(Family),
            Per100G = new()
            {
                EnergyKcal = Energy,
                CarbohydrateG = Carbohydrate,
                SugarsG = Sugars,
                GlucoseG = Glucose,
                FructoseG = Fructose,
                SucroseG = Sucrose,
                LactoseG = Lactose,
                FibreG = Fibre,
                ProteinG = Protein,
                FatG = Fat,
                SodiumMg = Sodium,
                PotassiumMg = Potassium,
                WaterG = Water,
                CaffeineMg = Caffeine,
            },
            Serving = new()
            {
                Style = Style,
                Unit = Unit?.Trim() ?? "",
                UnitPlural = UnitPlural?.Trim() ?? "",
                UsUnit = Text(UsUnit),
                UsUnitPlural = Text(UsUnitPlural),
                Grams = Style == ServingStyle.Weighed ? null : Grams,
                CanBeHalved = CanBeHalved,
                Least = Least,
                Most = Most,
                Measures = [.. Measures.Where(m => !m.IsEmpty).Select(m => m.Read())],
            },
            Allergens =
                Allergens.Count > 0 ? [.. Allergens.Order()]
                : NoAllergens ? []
                : null,
            Traits = Traits.Aggregate(FoodTraits.None, (all, one) => all | one),
            Roles = [.. Roles.Order()],
            Occasions = [.. Occasions.Order()],
            Source = Source ?? "",
        };

    /// <inheritdoc />
    public IEnumerable<ValidationResult> Validate(ValidationContext validationContext)
    {
        if (NoAllergens && Allergens.Count > 0)
            yield return new("Either some of them or none of them.", [nameof(Allergens)]);
        foreach (var fault in FoodSheetChecks.Of(Read()).Where(fault => !fault.IsWarning))
            yield return new(fault.Text, [fault.Field.ToString()]);
    }

    private static string? Text(string? typed) =>
        string.IsNullOrWhiteSpace(typed) ? null : typed.Trim();
}
