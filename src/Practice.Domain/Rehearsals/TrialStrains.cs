namespace Practice.Domain.Rehearsals;

/// <summary>
/// What may bring symptoms on without any food. Each that held raises the chance of symptoms without food by 0.10, from
/// 0.10 to at most 0.5. Own rule; unknown counts as not so.
/// </summary>
public sealed record TrialStrains
{
    private const double Base = 0.10;
    private const double Each = 0.10;
    private const double Most = 0.50;

    private const double LongEffortMinutes = 90;
    private const decimal HotWetBulbGlobeC = 23;
    private const decimal DryMassLoss = 0.02m;
    private const decimal MuchCaffeineMgPerKg = 3;

    /// <summary>None.</summary>
    public static TrialStrains None { get; } = new();

    /// <summary>More than 90 min at race effort.</summary>
    public bool LongAtRaceEffort { get; init; }

    /// <summary>Wet-bulb globe temperature above 23 °C.</summary>
    public bool Hot { get; init; }

    /// <summary>More than 2 % of body mass lost.</summary>
    public bool LostMuchMass { get; init; }

    /// <summary>Ill, or period-related symptoms.</summary>
    public bool IllOrPeriod { get; init; }

    /// <summary>Caffeine above 3 mg/kg.</summary>
    public bool MuchCaffeine { get; init; }

    /// <summary>How many held, 0 to 5.</summary>
    public int Count =>
        new[] { LongAtRaceEffort, Hot, LostMuchMass, IllOrPeriod, MuchCaffeine }.Count(s => s);

    /// <summary>Chance of symptoms without any trigger food, 0.10 to 0.50.</summary>
    public double Leak => Math.Min(Most, Base + Each * Count);

    /// <summary>The strains that a client's feedback tells of.</summary>
    /// <param name="feedback">What was told.</param>
    /// <param name="massKg">Body mass, kg, for caffeine.</param>
    public static TrialStrains Of(Feedback feedback, decimal massKg)
    {
        ArgumentNullException.ThrowIfNull(feedback);
        return new()
        {
            LongAtRaceEffort = feedback.Run?.AtRaceEffort is { TotalMinutes: > LongEffortMinutes },
            Hot = feedback.Run?.WetBulbGlobeC > HotWetBulbGlobeC,
            LostMuchMass = feedback.MassLoss > DryMassLoss,
            IllOrPeriod = feedback.IllOrPeriod,
            MuchCaffeine = feedback.Run?.CaffeineMg > MuchCaffeineMgPerKg * massKg,
        };
    }
}
