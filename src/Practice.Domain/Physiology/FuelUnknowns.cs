namespace Practice.Domain.Physiology;

/// <summary>
/// What nobody has measured in this athlete, as one guess of it all. The expected guess holds the usual values; drawn
/// guesses spread over the published or stated ranges, each range taken as two standard deviations either way, or as a
/// triangle where it is lopsided (own rule).
/// </summary>
internal sealed record FuelUnknowns
{
    /// <summary>Glycogen of a usual diet above what is usual for the oxygen uptake, mmol/kg wet weight; 25 either way.</summary>
    public double StartShift { get; init; }

    /// <summary>How loading rises.</summary>
    public GlycogenLoading Kinetics { get; init; } = GlycogenLoading.Expected;

    /// <summary>Leg muscle as a share of body mass.</summary>
    public required double LegShare { get; init; }

    /// <summary>Share of the liver's glycogen that a night takes: 0.25 to 0.40 observed. The upper end is expected.</summary>
    public double NightLoss { get; init; } = 0.40;

    /// <summary>Cost above the level rule: 1.05, a tenth either way.</summary>
    public double CostFactor { get; init; } = 1.05;

    /// <summary>Carbohydrate share above the fitted one, 0.10 either way.</summary>
    public double ShareShift { get; init; }

    public static FuelUnknowns Expected(LegMuscle legs) => new() { LegShare = legs.Usual };

    public static FuelUnknowns Drawn(LegMuscle legs, Draws draws) =>
        new()
        {
            StartShift = draws.Within(MuscleGlycogen.UsualSpread),
            Kinetics = new(
                draws.Triangle(
                    GlycogenLoading.Low.Plateau,
                    GlycogenLoading.Expected.Plateau,
                    GlycogenLoading.High.Plateau
                ),
                draws.Triangle(
                    GlycogenLoading.Low.RatePerHour,
                    GlycogenLoading.Expected.RatePerHour,
                    GlycogenLoading.High.RatePerHour
                )
            ),
            LegShare = draws.Triangle(legs.Low, legs.Usual, legs.High),
            NightLoss = draws.Triangle(0.25, 0.40, 0.40),
            CostFactor = 1.05 * (1 + draws.Within(0.10)),
            ShareShift = draws.Within(0.10),
        };
}
