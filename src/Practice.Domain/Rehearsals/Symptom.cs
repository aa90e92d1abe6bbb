using Practice.Domain.Evidence;
using Practice.Domain.Practices;

namespace Practice.Domain.Rehearsals;

/// <summary>When a symptom was felt.</summary>
public enum SymptomMoment
{
    /// <summary>Before the run, the loading days included.</summary>
    Before,

    /// <summary>During the run; the minutes say when.</summary>
    During,

    /// <summary>At the end of the run.</summary>
    End,

    /// <summary>Two hours after.</summary>
    TwoHoursAfter,

    /// <summary>The day after.</summary>
    DayAfter,
}

/// <summary>How bad a score is.</summary>
public enum Severity
{
    /// <summary>0: none.</summary>
    None,

    /// <summary>1 to 4: does not disturb the run.</summary>
    Mild,

    /// <summary>5 to 9: disturbs the run.</summary>
    Severe,

    /// <summary>10: forces a stop.</summary>
    Extreme,
}

/// <summary>One answer on the symptom scale, 0 to 10. Scale: Gaskell 2019; checks I01 to I03.</summary>
public sealed record Symptom
{
    /// <summary>From this score on a symptom is severe.</summary>
    public const int SevereFrom = SymptomThresholds.Severe;

    /// <summary>The score that forces a stop.</summary>
    public const int Worst = 10;

    /// <summary>Records an answer.</summary>
    /// <param name="item">Which symptom.</param>
    /// <param name="moment">When it was felt.</param>
    /// <param name="score">0 to 10.</param>
    /// <param name="minutesIntoRun">Minutes into the run, 0 or more; needed for <see cref="SymptomMoment.During"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">Score outside 0 to 10, or minutes below zero.</exception>
    public Symptom(SymptomItem item, SymptomMoment moment, int score, int? minutesIntoRun = null)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(score);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(score, Worst);
        ArgumentOutOfRangeException.ThrowIfNegative(minutesIntoRun ?? 0, nameof(minutesIntoRun));
        (Item, Moment, Score, MinutesIntoRun) = (item, moment, score, minutesIntoRun);
    }

    /// <summary>Where the scale comes from.</summary>
    public static Source Source => Sources.Gaskell2019;

    /// <summary>Which symptom.</summary>
    public SymptomItem Item { get; }

    /// <summary>When it was felt.</summary>
    public SymptomMoment Moment { get; }

    /// <summary>0 to 10.</summary>
    public int Score { get; }

    /// <summary>Minutes into the run; null when not during it.</summary>
    public int? MinutesIntoRun { get; }

    /// <summary>How bad it was.</summary>
    public Severity Severity => SeverityOf(Score);

    /// <summary>How bad a score is: 0 none, 1 to 4 mild, 5 to 9 severe, 10 extreme.</summary>
    public static Severity SeverityOf(int score) =>
        score switch
        {
            <= 0 => Severity.None,
            < SevereFrom => Severity.Mild,
            < Worst => Severity.Severe,
            _ => Severity.Extreme,
        };
}
