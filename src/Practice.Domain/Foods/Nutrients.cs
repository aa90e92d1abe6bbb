namespace Practice.Domain.Foods;

/// <summary>
/// Energy and nutrients of an amount of food. Carbohydrate is <em>available</em> carbohydrate: fibre is not in it.
/// A null is "not known", never zero.
/// </summary>
public sealed record Nutrients
{
    /// <summary>Nothing at all.</summary>
    public static Nutrients Zero { get; } =
        new()
        {
            GlucoseG = 0,
            FructoseG = 0,
            SucroseG = 0,
            LactoseG = 0,
            PotassiumMg = 0,
        };

    /// <summary>Energy, kcal.</summary>
    public decimal EnergyKcal { get; init; }

    /// <summary>Available carbohydrate, g.</summary>
    public decimal CarbohydrateG { get; init; }

    /// <summary>Sugars, g; part of the carbohydrate.</summary>
    public decimal SugarsG { get; init; }

    /// <summary>Free glucose, g, where known.</summary>
    public decimal? GlucoseG { get; init; }

    /// <summary>Free fructose, g, where known.</summary>
    public decimal? FructoseG { get; init; }

    /// <summary>Sucrose, g, where known.</summary>
    public decimal? SucroseG { get; init; }

    /// <summary>Lactose, g, where known.</summary>
    public decimal? LactoseG { get; init; }

    /// <summary>Dietary fibre, g.</summary>
    public decimal FibreG { get; init; }

    /// <summary>Protein, g.</summary>
    public decimal ProteinG { get; init; }

    /// <summary>Fat, g.</summary>
    public decimal FatG { get; init; }

    /// <summary>Sodium, mg.</summary>
    public decimal SodiumMg { get; init; }

    /// <summary>Potassium, mg, where known.</summary>
    public decimal? PotassiumMg { get; init; }

    /// <summary>Water, g.</summary>
    public decimal WaterG { get; init; }

    /// <summary>Caffeine, mg.</summary>
    public decimal CaffeineMg { get; init; }

    /// <summary>
    /// Fructose load, g: free fructose and half of the sucrose. Where the single sugars are not known, half of all
    /// sugars but lactose, which is the split of sucrose (own rule; an estimate).
    /// </summary>
    public decimal FructoseLoadG =>
        FructoseG is { } free && SucroseG is { } sucrose
            ? free + sucrose / 2
            : Math.Max(0, SugarsG - (LactoseG ?? 0)) / 2;

    /// <summary>
    /// The most lactose there can be, g: the lactose where known, else all sugars. Safe for one food; of a sum of
    /// foods add the ceilings, not this of the sum.
    /// </summary>
    public decimal LactoseCeilingG => LactoseG ?? SugarsG;

    /// <summary>The most sucrose there can be, g: the sucrose where known, else all sugars that are not known to be others.</summary>
    public decimal SucroseCeilingG =>
        SucroseG ?? Math.Max(0, SugarsG - (GlucoseG ?? 0) - (FructoseG ?? 0) - (LactoseG ?? 0));

    /// <summary>These nutrients times a factor of zero or more.</summary>
    public Nutrients Times(decimal factor) =>
        new()
        {
            EnergyKcal = EnergyKcal * factor,
            CarbohydrateG = CarbohydrateG * factor,
            SugarsG = SugarsG * factor,
            GlucoseG = GlucoseG * factor,
            FructoseG = FructoseG * factor,
            SucroseG = SucroseG * factor,
            LactoseG = LactoseG * factor,
            FibreG = FibreG * factor,
            ProteinG = ProteinG * factor,
            FatG = FatG * factor,
            SodiumMg = SodiumMg * factor,
            PotassiumMg = PotassiumMg * factor,
            WaterG = WaterG * factor,
            CaffeineMg = CaffeineMg * factor,
        };

    /// <summary>The nutrients of that many grams, these being the nutrients of 100 g.</summary>
    public Nutrients ForGrams(decimal grams) => Times(grams / 100m);

    /// <summary>Sums two amounts; a single sugar unknown in either stays unknown.</summary>
    public static Nutrients operator +(Nutrients left, Nutrients right) =>
        new()
        {
            EnergyKcal = left.EnergyKcal + right.EnergyKcal,
            CarbohydrateG = left.CarbohydrateG + right.CarbohydrateG,
            SugarsG = left.SugarsG + right.SugarsG,
            GlucoseG = left.GlucoseG + right.GlucoseG,
            FructoseG = left.FructoseG + right.FructoseG,
            SucroseG = left.SucroseG + right.SucroseG,
            LactoseG = left.LactoseG + right.LactoseG,
            FibreG = left.FibreG + right.FibreG,
            ProteinG = left.ProteinG + right.ProteinG,
            FatG = left.FatG + right.FatG,
            SodiumMg = left.SodiumMg + right.SodiumMg,
            PotassiumMg = left.PotassiumMg + right.PotassiumMg,
            WaterG = left.WaterG + right.WaterG,
            CaffeineMg = left.CaffeineMg + right.CaffeineMg,
        };

    /// <summary>Sums two amounts; the named alternate of the operator.</summary>
    public static Nutrients Add(Nutrients left, Nutrients right) => left + right;
}
