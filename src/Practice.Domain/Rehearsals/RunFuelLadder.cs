using System.Collections.Immutable;
using Practice.Domain.Evidence;

namespace Practice.Domain.Rehearsals;

/// <summary>
/// The next rate to try on the run: 10 g/h more after a clean session, the same after some trouble, 15 g/h less after a
/// severe one. Training the gut works (Miall 2018); the steps are our own rule.
/// </summary>
public static class RunFuelLadder
{
    private const decimal Up = 10;
    private const decimal Down = 15;

    // a higher rate needs the practitioner's own decision: its advantage is unproven
    private const decimal Ceiling = 90;

    /// <summary>Where the ladder comes from.</summary>
    public static ImmutableArray<Source> References { get; } =
    [Sources.Miall2018, Sources.RunFuelSteps];

    /// <summary>The next rate, g/h, 0 to 90, or as high as the present one where that is higher.</summary>
    /// <param name="gPerHour">Carbohydrate taken, g/h, 0 or more.</param>
    /// <param name="verdict">How it sat.</param>
    public static decimal Next(decimal gPerHour, TrialVerdict verdict)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(gPerHour);
        return verdict switch
        {
            TrialVerdict.Pass => Math.Max(gPerHour, Math.Min(Ceiling, gPerHour + Up)),
            TrialVerdict.Adapt => gPerHour,
            _ => Math.Max(0, gPerHour - Down),
        };
    }
}
