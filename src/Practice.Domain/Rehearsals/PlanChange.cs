using Practice.Domain.Plans;
using Practice.Domain.Targets;

namespace Practice.Domain.Rehearsals;

/// <summary>
/// One change of a plan, as data. Where the choices change, targets are computed and days laid out anew; all else is an
/// edit of the plan. Either way the planner then fills around it from the foods a client may eat, so that no change can
/// bring back what is excluded.
/// </summary>
public abstract record PlanChange
{
    /// <summary>What was chosen, with the change.</summary>
    public virtual LoadingChoices Apply(LoadingChoices choices) => choices;

    /// <summary>The plan with the change, its targets as they were.</summary>
    public virtual RaceWeekPlan Apply(RaceWeekPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return plan with { Choices = Apply(plan.Choices) };
    }

    /// <summary>Whether targets must be computed anew with the changed choices.</summary>
    public bool NeedsTargets(RaceWeekPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return Apply(plan.Choices) != plan.Choices;
    }

    private protected static LoadingChoices Without(LoadingChoices choices, params string[] keys) =>
        choices.Overrides.Any(o => keys.Contains(o.Key))
            ? choices with
            {
                Overrides = [.. choices.Overrides.Where(o => !keys.Contains(o.Key))],
            }
            : choices;

    private protected static RaceWeekPlan EachDay(
        RaceWeekPlan plan,
        Func<PlanDay, PlanDay> change
    ) => plan with { Days = [.. plan.Days.Select(change)] };

    private protected static IEnumerable<PortionRef> Find(RaceWeekPlan plan, string foodId) =>
        plan.Days.SelectMany(day =>
            day.Occasions.Where(o => o.Find(foodId) is not null)
                .Select(o => new PortionRef(day.Date, o.Kind, foodId))
        );
}

/// <summary>Takes a food off all plates; the planner puts another in its place.</summary>
/// <param name="FoodId">Key of the food.</param>
public sealed record LeaveOutFood(string FoodId) : PlanChange
{
    /// <inheritdoc />
    public override RaceWeekPlan Apply(RaceWeekPlan plan) =>
        Find(plan, FoodId).Aggregate(plan, (p, portion) => p.Remove(portion));
}

/// <summary>Serves half of a food wherever it stands, or the least that a person would serve, and locks it there.</summary>
/// <param name="FoodId">Key of the food.</param>
public sealed record HalveFood(string FoodId) : PlanChange
{
    /// <inheritdoc />
    public override RaceWeekPlan Apply(RaceWeekPlan plan) =>
        Find(plan, FoodId).Aggregate(plan, Halve);

    private static RaceWeekPlan Halve(RaceWeekPlan plan, PortionRef portion)
    {
        var served = plan[portion.Date][portion.Kind].Find(portion.FoodId)!;
        var half = served.Serving.Steps.LastOrDefault(
            s => s <= served.Steps / 2m,
            served.Serving.MinSteps
        );
        return plan.Serve(portion, Math.Min(half, served.Steps)).Lock(portion, locked: true);
    }
}

/// <summary>Lets drinks bring another share of the carbohydrate.</summary>
/// <param name="Share">0 to 0.5.</param>
public sealed record ShiftToDrinks(decimal Share) : PlanChange
{
    /// <inheritdoc />
    public override LoadingChoices Apply(LoadingChoices choices) =>
        Without(choices, TargetKeys.DrinksShare) with
        {
            DrinksShare = Share,
        };
}

/// <summary>Sets another number of sittings a day, so that each is smaller.</summary>
/// <param name="PerDay">5 to 7.</param>
public sealed record SittingsPerDay(int PerDay) : PlanChange
{
    /// <inheritdoc />
    public override LoadingChoices Apply(LoadingChoices choices)
    {
        ArgumentNullException.ThrowIfNull(choices);
        return choices with { OccasionsPerDay = PerDay };
    }
}

/// <summary>Lowers the weight of each sitting.</summary>
/// <param name="Factor">Part of the present ceiling, above 0 to 1.</param>
public sealed record LighterSittings(decimal Factor) : PlanChange
{
    /// <inheritdoc />
    public override RaceWeekPlan Apply(RaceWeekPlan plan) =>
        EachDay(
            plan,
            day =>
                day with
                {
                    Limits = day.Limits with
                    {
                        OccasionWeightMaxG = day.Limits.OccasionWeightMaxG * Factor,
                    },
                }
        );
}

/// <summary>Lowers the fibre ceilings of all days in step.</summary>
/// <param name="Factor">Part of the present ceilings, above 0 to 1.</param>
public sealed record LowerFibre(decimal Factor) : PlanChange
{
    /// <inheritdoc />
    public override RaceWeekPlan Apply(RaceWeekPlan plan) =>
        EachDay(
            plan,
            day =>
                day with
                {
                    Limits = day.Limits with { FibreMaxG = day.Limits.FibreMaxG * Factor },
                }
        );
}

/// <summary>Chooses another carbohydrate rate; own values that would hide it are dropped.</summary>
/// <param name="GPerKg">g/kg in 24 h.</param>
public sealed record CarbohydrateStep(decimal GPerKg) : PlanChange
{
    /// <inheritdoc />
    public override LoadingChoices Apply(LoadingChoices choices) =>
        Without(
            choices,
            TargetKeys.CarbohydrateRate,
            TargetKeys.CarbohydratePerDay,
            TargetKeys.CarbohydrateTotal
        ) with
        {
            CarbohydrateGPerKg = GPerKg,
        };
}
