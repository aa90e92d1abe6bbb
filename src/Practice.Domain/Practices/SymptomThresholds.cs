using Practice.Domain.Evidence;

namespace Practice.Domain.Practices;

/// <summary>
/// Which worst score of a trial passes and which fails; what lies between asks for a change. A practice may draw its own
/// lines, but a severe score always fails, and so do vomiting, a stop and a warning sign, whatever the lines.
/// </summary>
/// <param name="PassUpTo">The highest score that passes, 0 to 4 and below <paramref name="FailFrom"/>.</param>
/// <param name="FailFrom">The lowest score that fails, 1 to 5.</param>
public sealed record SymptomThresholds(int PassUpTo = 2, int FailFrom = SymptomThresholds.Severe)
{
    /// <summary>From this score on a symptom disturbs a run: Wilson 2017 and the anchors of the scale.</summary>
    public const int Severe = 5;

    /// <summary>The house rule: pass up to 2, fail from 5.</summary>
    public static SymptomThresholds House { get; } = new();

    /// <summary>pass to 2, adapt at 3 and 4, fail from 5</summary>
    public string InWords()
    {
        var between = (FailFrom - PassUpTo - 1) switch
        {
            0 => "",
            1 => $", adapt at {PassUpTo + 1}",
            2 => $", adapt at {PassUpTo + 1} and {FailFrom - 1}",
            _ => $", adapt at {PassUpTo + 1} to {FailFrom - 1}",
        };
        return $"pass to {PassUpTo}{between}, fail from {FailFrom}";
    }

    /// <summary>Why a verdict is what it is; says so where a practice drew its own lines.</summary>
    public Basis Basis =>
        new(
            "Verdict = worst score of any symptom at any time, held against two lines; vomiting, a stop or a warning sign fails",
            [new("Pass up to", $"{PassUpTo} of 10"), new("Fail from", $"{FailFrom} of 10")],
            [Sources.TrialVerdicts, Sources.SymptomAnchors, Sources.Wilson2017],
            this == House ? null : $"The practice's own lines. The house rule: {House.InWords()}."
        );

    /// <summary>The same, when the lines make sense.</summary>
    /// <exception cref="ArgumentException">They do not; the message says why.</exception>
    public SymptomThresholds Checked() =>
        FailFrom is < 1 or > Severe
            ? throw new ArgumentException("Fail from: 1 to 5. A severe score always fails.")
        : PassUpTo < 0 || PassUpTo >= FailFrom
            ? throw new ArgumentException("Pass up to: from 0, and below the score that fails.")
        : this;
}
