using Practice.Domain.Evidence;

namespace Practice.Domain.Rehearsals;

/// <summary>Leaves out or halves the food that the trials point at, where the plan still holds it.</summary>
internal static class FoodChange
{
    public static IEnumerable<Proposal> For(ProposalCase rehearsed)
    {
        var names = rehearsed
            .Plan.Days.SelectMany(d => d.Occasions)
            .SelectMany(o => o.Portions)
            .GroupBy(p => p.FoodId, p => p.Name)
            .ToDictionary(food => food.Key, food => food.First());
        if (
            NextTrial.Of(rehearsed.Suspects) is not { } next
            || !names.TryGetValue(next.LeaveOut, out var name)
        )
            yield break;
        var group = rehearsed.Suspects.GroupOf(next.LeaveOut)!;
        PlanChange change = next.Halve
            ? new HalveFood(next.LeaveOut)
            : new LeaveOutFood(next.LeaveOut);
        yield return new(
            next.Halve ? "halve-food" : "leave-out-food",
            change,
            rehearsed.Again,
            next.Halve ? $"Half of {name}" : $"Another food for {name}",
            group.Explain(food => names.GetValueOrDefault(food, food)),
            SuspectFoods.References
        );
    }
}
