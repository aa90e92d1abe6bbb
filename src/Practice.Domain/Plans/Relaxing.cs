namespace Practice.Domain.Plans;

/// <summary>Takes up a relaxation that the planner offered.</summary>
public static class Relaxing
{
    /// <summary>The plan with one limit of one day moved to what the relaxation says.</summary>
    /// <exception cref="ArgumentOutOfRangeException">That kind of limit is not a number of the day.</exception>
    public static RaceWeekPlan Relax(this RaceWeekPlan plan, Relaxation relaxation)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(relaxation);
        var day = plan[relaxation.Date];
        var (limits, to) = (day.Limits, relaxation.To);
        var relaxed = relaxation.Kind switch
        {
            LimitKind.Variety => limits with { MoreRepeats = (int)to },
            LimitKind.DayCarbohydrate => limits with { CarbohydrateAimG = to },
            LimitKind.OccasionCarbohydrate => limits with { OccasionTolerance = to },
            LimitKind.Fibre => limits with { FibreMaxG = to },
            LimitKind.Fat => limits with { FatMaxG = to },
            LimitKind.ProteinFloor => limits with { ProteinMinG = to },
            LimitKind.ProteinCeiling => limits with { ProteinMaxG = to },
            LimitKind.DrinksShare when to > limits.DrinksShareMax => limits with
            {
                DrinksShareMax = to,
            },
            LimitKind.DrinksShare => limits with { DrinksShareMin = to },
            LimitKind.Fructose => limits with { FructoseMaxPerOccasionG = to },
            LimitKind.OccasionWeight => limits with { OccasionWeightMaxG = to },
            LimitKind.SugaryShare => limits with { SugaryShareMax = to },
            LimitKind.Sodium when to > limits.SodiumMaxMg => limits with { SodiumMaxMg = to },
            LimitKind.Sodium => limits with { SodiumMinMg = to },
            _ => throw new ArgumentOutOfRangeException(
                nameof(relaxation),
                relaxation.Kind,
                "Only a number of the day can be relaxed."
            ),
        };
        return plan.With(day with { Limits = relaxed });
    }
}
