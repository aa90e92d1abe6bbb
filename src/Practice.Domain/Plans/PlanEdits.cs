using Practice.Domain.Foods;

namespace Practice.Domain.Plans;

/// <summary>Edits of a plan by hand. Each makes a new plan; locked portions are the planner's limit, not the hand's.</summary>
public static class PlanEdits
{
    /// <summary>Serves another number of steps.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not one of the serving's steps.</exception>
    public static RaceWeekPlan Serve(this RaceWeekPlan plan, PortionRef portion, int steps) =>
        plan.Change(
            portion,
            p =>
                p.Serving.Steps.Contains(steps)
                    ? p with
                    {
                        Steps = steps,
                    }
                    : throw new ArgumentOutOfRangeException(
                        nameof(steps),
                        steps,
                        $"{p.Name} is served in {string.Join(", ", p.Serving.Steps)} steps."
                    )
        );

    /// <summary>Locks a portion against the planner, or frees it.</summary>
    public static RaceWeekPlan Lock(this RaceWeekPlan plan, PortionRef portion, bool locked) =>
        plan.Change(portion, p => p with { IsLocked = locked });

    /// <summary>Puts another portion in a portion's place; it is locked, since a hand chose it.</summary>
    public static RaceWeekPlan Swap(
        this RaceWeekPlan plan,
        PortionRef portion,
        Portion replacement
    ) => plan.Change(portion, _ => replacement with { IsLocked = true });

    /// <summary>Takes a portion off the plate.</summary>
    public static RaceWeekPlan Remove(this RaceWeekPlan plan, PortionRef portion) =>
        plan.Change(
            portion.Date,
            portion.Kind,
            o => o with { Portions = [.. o.Portions.Where(p => p.FoodId != portion.FoodId)] }
        );

    /// <summary>Puts a portion on the plate; it is locked, since a hand chose it.</summary>
    /// <exception cref="InvalidOperationException">The food is on the plate already.</exception>
    public static RaceWeekPlan Add(
        this RaceWeekPlan plan,
        NodaTime.LocalDate date,
        OccasionKind kind,
        Portion portion
    ) =>
        plan.Change(
            date,
            kind,
            o =>
                o.Find(portion.FoodId) is null
                    ? o with
                    {
                        Portions = o.Portions.Add(portion with { IsLocked = true }),
                    }
                    : throw new InvalidOperationException(
                        $"{portion.Name} is on the plate already."
                    )
        );

    private static RaceWeekPlan Change(
        this RaceWeekPlan plan,
        NodaTime.LocalDate date,
        OccasionKind kind,
        Func<Occasion, Occasion> change
    ) => plan.With(plan[date].With(change(plan[date][kind])));

    private static RaceWeekPlan Change(
        this RaceWeekPlan plan,
        PortionRef portion,
        Func<Portion, Portion> change
    ) =>
        plan.Change(
            portion.Date,
            portion.Kind,
            o =>
                o.Find(portion.FoodId) is null
                    ? throw new InvalidOperationException($"No {portion.FoodId} on that plate.")
                    : o with
                    {
                        Portions =
                        [
                            .. o.Portions.Select(p => p.FoodId == portion.FoodId ? change(p) : p),
                        ],
                    }
        );
}
