using Practice.Domain.Quantities;

namespace Practice.Domain.Foods.Own;

/// <summary>Whether the figures of 100 g can be those of a food.</summary>
internal static class FigureChecks
{
    // as the tests of the library: rounding of labels, and salt, ash and acids that nobody states
    private const decimal RoundedG = 0.5m;
    private const decimal HeaviestG = 101.5m;
    private const decimal LightestG = 86;
    private const decimal LeastEnergyGapKcal = 10;
    private const decimal EnergyGap = 0.15m;

    public static IEnumerable<FoodFault> Of(LabelFigures figures)
    {
        List<FoodFault> missing =
        [
            .. Missing(FoodField.Energy, figures.EnergyKcal),
            .. Missing(FoodField.Carbohydrate, figures.CarbohydrateG),
            .. Missing(FoodField.Sugars, figures.SugarsG),
            .. Missing(
                FoodField.Fibre,
                figures.FibreG,
                "Plans keep under a ceiling of fibre: where the label has none, take a like food's."
            ),
            .. Missing(FoodField.Protein, figures.ProteinG),
            .. Missing(FoodField.Fat, figures.FatG),
            .. Missing(FoodField.Sodium, figures.SodiumMg, "This is needed: salt in g times 400."),
            .. Missing(
                FoodField.Caffeine,
                figures.CaffeineMg,
                "Type 0 where there is no coffee, tea, cola, cocoa or guarana in it."
            ),
        ];
        List<FoodFault> outside =
        [
            .. Grams(FoodField.Carbohydrate, figures.CarbohydrateG),
            .. Grams(FoodField.Sugars, figures.SugarsG),
            .. Grams(FoodField.Glucose, figures.GlucoseG),
            .. Grams(FoodField.Fructose, figures.FructoseG),
            .. Grams(FoodField.Sucrose, figures.SucroseG),
            .. Grams(FoodField.Lactose, figures.LactoseG),
            .. Grams(FoodField.Fibre, figures.FibreG),
            .. Grams(FoodField.Protein, figures.ProteinG),
            .. Grams(FoodField.Fat, figures.FatG),
            .. Grams(FoodField.Water, figures.WaterG),
            .. Within(FoodField.Energy, figures.EnergyKcal, 900, "kcal"),
            .. Within(FoodField.Sodium, figures.SodiumMg, 40_000, "mg"),
            .. Within(FoodField.Potassium, figures.PotassiumMg, 20_000, "mg"),
            .. Within(FoodField.Caffeine, figures.CaffeineMg, 500, "mg"),
        ];
        // sums of figures that cannot be are not worth a second complaint
        return outside.Count > 0
            ? [.. missing, .. outside]
            : [.. missing, .. Sugars(figures), .. Mass(figures), .. Energy(figures)];
    }

    private static IEnumerable<FoodFault> Sugars(LabelFigures figures)
    {
        if (figures.SugarsG > figures.CarbohydrateG + RoundedG)
            yield return new(
                FoodField.Sugars,
                $"Sugars are part of the carbohydrate, which is {Shown(figures.CarbohydrateG)} g."
            );
        var single =
            (figures.GlucoseG ?? 0)
            + (figures.FructoseG ?? 0)
            + (figures.SucroseG ?? 0)
            + (figures.LactoseG ?? 0);
        if (single > figures.SugarsG + RoundedG)
            yield return new(
                FoodField.Sugars,
                $"Glucose, fructose, sucrose and lactose add up to {Shown(single)} g: more than all sugars."
            );
    }

    private static IEnumerable<FoodFault> Mass(LabelFigures figures)
    {
        var field = figures.WaterG is null ? FoodField.Carbohydrate : FoodField.Water;
        if (figures.KnownG > HeaviestG)
            yield return new(
                field,
                $"The parts weigh {Shown(figures.KnownG)} g of 100 g. Is it a figure of the dry food, or carbohydrate with fibre in it?"
            );
        else if (figures.WaterG is not null && figures.KnownG < LightestG)
            yield return new(
                field,
                $"Only {Shown(figures.KnownG)} g of 100 g are accounted for.",
                IsWarning: true
            );
    }

    private static IEnumerable<FoodFault> Energy(LabelFigures figures)
    {
        if (figures is { EnergyKcal: { } energy, EnergyByPartsKcal: { } byParts })
        {
            var gap = Math.Max(LeastEnergyGapKcal, EnergyGap * Math.Max(energy, byParts));
            if (Math.Abs(energy - byParts) > gap)
                yield return new(
                    FoodField.Energy,
                    $"From its parts it would be {Rounding.Shown(byParts, 0)} kcal: 4 for a gram of carbohydrate or protein, 9 of fat, 2 of fibre. Look at the label again.",
                    IsWarning: true
                );
        }
    }

    private static IEnumerable<FoodFault> Missing(
        FoodField field,
        decimal? figure,
        string text = "This is needed."
    ) => figure is null ? [new(field, text)] : [];

    private static IEnumerable<FoodFault> Grams(FoodField field, decimal? grams) =>
        grams is < 0 or > 100 ? [new(field, "Between 0 and 100 g.")] : [];

    private static IEnumerable<FoodFault> Within(
        FoodField field,
        decimal? figure,
        decimal most,
        string unit
    ) =>
        figure < 0 || figure > most
            ? [new(field, $"Between 0 and {Rounding.Shown(most, 0)} {unit}.")]
            : [];

    private static string Shown(decimal? grams) => Rounding.Shown(grams ?? 0, 1);
}
