using System.Collections.Immutable;

namespace Practice.Domain.Plans;

/// <summary>Rounds parts to whole numbers that add up to a given whole.</summary>
public static class Apportion
{
    /// <summary>
    /// Rounds each part down, then gives the missing ones to the parts that lost most, the earlier first. A part is
    /// less than one away from its true value whenever the whole is the rounded sum of the parts.
    /// </summary>
    /// <param name="parts">Parts, none negative.</param>
    /// <param name="whole">What they must add up to.</param>
    public static ImmutableArray<int> ToWhole(IReadOnlyList<decimal> parts, int whole)
    {
        var rounded = parts.Select(p => (int)decimal.Floor(p)).ToArray();
        var missing = whole - rounded.Sum();
        var byLoss = Enumerable
            .Range(0, parts.Count)
            .OrderByDescending(i => parts[i] - rounded[i])
            .ThenBy(i => i);
        foreach (var i in byLoss.Take(missing))
            rounded[i]++;
        return [.. rounded];
    }

    /// <summary>Rounds as people do: halves away from zero.</summary>
    public static int Whole(decimal amount) =>
        (int)Math.Round(amount, MidpointRounding.AwayFromZero);
}
