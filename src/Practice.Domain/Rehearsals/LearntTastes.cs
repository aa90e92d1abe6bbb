using Practice.Domain.Clients;
using Practice.Domain.Evidence;

namespace Practice.Domain.Rehearsals;

/// <summary>
/// What rehearsals teach of a client's foods, for the planner to prefer and avoid. What was entered by hand stays, unless
/// the trials say the opposite. Own rule.
/// </summary>
public static class LearntTastes
{
    /// <summary>Where the rule comes from.</summary>
    public static Source Source => Sources.SuspectWords;

    /// <summary>Tastes as they stand after the trials.</summary>
    /// <param name="before">As they stood.</param>
    /// <param name="suspects">What all trials say.</param>
    /// <param name="leftOut">Foods that were left out of the plan on purpose after a trial.</param>
    public static Tastes Of(Tastes before, SuspectFoods suspects, IEnumerable<string> leftOut)
    {
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(suspects);
        var suspect = Foods(suspects, SuspectLabel.Suspect, SuspectLabel.Likely)
            .Concat(leftOut)
            .ToHashSet();
        var doubtful = Foods(suspects, SuspectLabel.Possible).Concat(suspect).ToHashSet();
        var satWell = suspects
            .Groups.Where(g => g is { WithSymptoms: 0, CleanFullDoses: > 0 })
            .SelectMany(g => g.Foods)
            .Select(f => f.FoodId)
            .Except(doubtful);
        return before with
        {
            Suspect = before.Suspect.Except(Foods(suspects, SuspectLabel.Cleared)).Union(suspect),
            Tolerated = before.Tolerated.Except(doubtful).Union(satWell),
        };
    }

    private static IEnumerable<string> Foods(SuspectFoods suspects, params SuspectLabel[] labels) =>
        suspects
            .Groups.SelectMany(g => g.Foods)
            .Where(f => labels.Contains(f.Label))
            .Select(f => f.FoodId);
}
