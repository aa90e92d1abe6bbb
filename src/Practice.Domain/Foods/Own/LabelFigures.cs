namespace Practice.Domain.Foods.Own;

/// <summary>What a label or a table says of 100 g of a food. A null is "not said".</summary>
public sealed record LabelFigures
{
    /// <summary>Energy, kcal.</summary>
    public decimal? EnergyKcal { get; init; }

    /// <summary>Available carbohydrate, g: without fibre, as EU labels have it.</summary>
    public decimal? CarbohydrateG { get; init; }

    /// <summary>Sugars, g.</summary>
    public decimal? SugarsG { get; init; }

    /// <summary>Free glucose, g.</summary>
    public decimal? GlucoseG { get; init; }

    /// <summary>Free fructose, g.</summary>
    public decimal? FructoseG { get; init; }

    /// <summary>Sucrose, g.</summary>
    public decimal? SucroseG { get; init; }

    /// <summary>Lactose, g.</summary>
    public decimal? LactoseG { get; init; }

    /// <summary>Dietary fibre, g.</summary>
    public decimal? FibreG { get; init; }

    /// <summary>Protein, g.</summary>
    public decimal? ProteinG { get; init; }

    /// <summary>Fat, g.</summary>
    public decimal? FatG { get; init; }

    /// <summary>Sodium, mg.</summary>
    public decimal? SodiumMg { get; init; }

    /// <summary>Potassium, mg.</summary>
    public decimal? PotassiumMg { get; init; }

    /// <summary>Water, g; by difference where it is not said.</summary>
    public decimal? WaterG { get; init; }

    /// <summary>Caffeine, mg.</summary>
    public decimal? CaffeineMg { get; init; }

    /// <summary>Grams of all that is said to be in 100 g.</summary>
    public decimal KnownG =>
        (CarbohydrateG ?? 0) + (FibreG ?? 0) + (ProteinG ?? 0) + (FatG ?? 0) + (WaterG ?? 0);

    /// <summary>
    /// Energy by the factors of Regulation (EU) 1169/2011, Annex XIV: carbohydrate and protein 4, fat 9, fibre 2 kcal/g;
    /// null where one of them is not said.
    /// </summary>
    public decimal? EnergyByPartsKcal => 4 * (CarbohydrateG + ProteinG) + 9 * FatG + 2 * FibreG;

    /// <summary>The nutrients of 100 g; of figures that were found right.</summary>
    /// <param name="holdsMilk">Whether there is milk in it; without, there is no lactose.</param>
    internal Nutrients Read(bool holdsMilk) =>
        new()
        {
            EnergyKcal = EnergyKcal!.Value,
            CarbohydrateG = CarbohydrateG!.Value,
            SugarsG = SugarsG!.Value,
            GlucoseG = GlucoseG,
            FructoseG = FructoseG,
            SucroseG = SucroseG,
            LactoseG = LactoseG ?? (holdsMilk ? null : 0),
            FibreG = FibreG!.Value,
            ProteinG = ProteinG!.Value,
            FatG = FatG!.Value,
            SodiumMg = SodiumMg!.Value,
            PotassiumMg = PotassiumMg,
            WaterG = WaterG ?? Math.Max(0, 100 - KnownG),
            CaffeineMg = CaffeineMg!.Value,
        };
}
