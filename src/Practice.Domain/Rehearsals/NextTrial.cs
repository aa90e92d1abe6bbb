namespace Practice.Domain.Rehearsals;

/// <summary>What to change in the next trial: one thing.</summary>
/// <param name="LeaveOut">The food to leave out or halve.</param>
/// <param name="Keep">A food that is kept on purpose, so that the trial tells the two apart; null without such.</param>
/// <param name="Halve">Whether half of it will do: it is no more than possible.</param>
public sealed record NextTrial(string LeaveOut, string? Keep, bool Halve)
{
    /// <summary>Two chances this near call for a trial that tells them apart.</summary>
    private const double Near = 0.10;

    /// <summary>
    /// The food to change; null when none stands out. Of two that are within 0.10 the more suspect goes and the other
    /// stays: that teaches most. Own rule.
    /// </summary>
    public static NextTrial? Of(SuspectFoods suspects)
    {
        ArgumentNullException.ThrowIfNull(suspects);
        var ranked = suspects
            .Groups.SelectMany(group => group.Foods)
            .OrderByDescending(food => food.Chance)
            .ThenBy(food => food.FoodId, StringComparer.Ordinal)
            .Take(2)
            .ToList();
        if (ranked.Count == 0 || ranked[0].Label < SuspectLabel.Possible)
            return null;
        var rival =
            ranked.Count == 2 && ranked[0].Chance - ranked[1].Chance <= Near ? ranked[1] : null;
        return new(
            ranked[0].FoodId,
            rival?.FoodId,
            rival is null && ranked[0].Label == SuspectLabel.Possible
        );
    }

    /// <summary>In words.</summary>
    /// <param name="name">Name of a food by its key.</param>
    public string InWords(Func<string, string> name)
    {
        ArgumentNullException.ThrowIfNull(name);
        var change = Halve
            ? $"Next time have half of {name(LeaveOut)}"
            : $"Next time leave out {name(LeaveOut)}";
        return Keep is null
            ? $"{change} and change nothing else."
            : $"{change} and keep {name(Keep)}: that tells the two apart. Change nothing else.";
    }
}
