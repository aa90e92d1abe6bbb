using System.Collections.Immutable;
using Practice.Domain.Clients;
using Practice.Domain.Foods;
using Practice.Domain.Plans;
using Practice.Domain.Plans.Weeks;
using Practice.Service.Plans;

namespace Practice.Service.Weeks;

/// <summary>Fills the meals of the race day like any other sitting.</summary>
public sealed class RaceDayMenus(IMenuPlanner planner)
{
    /// <summary>
    /// Race morning from foods that sat well, where they make a whole breakfast; otherwise from all the client may be
    /// served. Each menu is the first complete one; the week's page improves it.
    /// </summary>
    internal RaceWeekPlan Fill(
        RaceWeekPlan plan,
        EligibleFoods foods,
        Client client,
        CancellationToken cancel
    )
    {
        var recovery = First(plan, RaceDayPart.Recovery, foods, client, cancel);
        return Morning(plan, foods, client, cancel)
            .WithPart(RaceDayPart.Recovery, recovery.Days[0]);
    }

    /// <summary>Other foods for one part of the race day; what is locked stays.</summary>
    public Task<PlanDay> Other(
        PlanFile file,
        RaceWeekPlan plan,
        RaceDayPart part,
        CancellationToken cancel
    )
    {
        ArgumentNullException.ThrowIfNull(file);
        return Task.Run(
            () =>
            {
                var asked = file.RequestFor(plan.AsPlan(part));
                // the number of foods on the plates moves the seed: asked again, the answer is another one
                var eaten = asked.Days[0].Occasions.SelectMany(o => o.Portions).ToList();
                var seed = eaten.Sum(p => p.Steps * 31 + p.FoodId.Length);
                return planner.Build(asked with { Seed = asked.Seed ^ seed }, null, cancel).Days[0];
            },
            CancellationToken.None
        );
    }

    private RaceWeekPlan Morning(
        RaceWeekPlan plan,
        EligibleFoods foods,
        Client client,
        CancellationToken cancel
    )
    {
        const RaceDayPart part = RaceDayPart.Morning;
        var tolerated = foods.Allowed.Where(f => client.Tastes.Tolerated.Contains(f.Id));
        var known = foods with { Allowed = [.. tolerated] };
        if (HasBreakfast(known.Allowed))
        {
            var rehearsed = First(plan, part, known, client, cancel);
            if (rehearsed.Shortfalls.IsEmpty)
                return plan.WithPart(part, rehearsed.Days[0]);
        }
        return plan.WithPart(part, First(plan, part, foods, client, cancel).Days[0]);
    }

    /// <summary>A handful of foods with something to build a breakfast on is worth a try.</summary>
    private static bool HasBreakfast(ImmutableArray<Food> foods) =>
        foods.Length >= 6
        && foods.Any(f =>
            f.Roles.Any(r => r.Role is MealRole.Bread or MealRole.Cereal or MealRole.Porridge)
        );

    private MenuResult First(
        RaceWeekPlan plan,
        RaceDayPart part,
        EligibleFoods foods,
        Client client,
        CancellationToken cancel
    )
    {
        using var enough = CancellationTokenSource.CreateLinkedTokenSource(cancel);
        return planner.Build(
            MenuRequests.Of(plan.AsPlan(part), foods, client),
            new UntilComplete(enough),
            enough.Token
        );
    }
}
