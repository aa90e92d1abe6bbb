using System.Collections.Immutable;
using Practice.Domain.Targets;

namespace Practice.Domain.Plans;

/// <summary>What a day brings, held against what that day, whole or part, must keep to.</summary>
/// <param name="Target">The target cut to the day; its basis is that of the full day.</param>
/// <param name="Value">What the plates bring, in the target's unit.</param>
public sealed record DayReading(Target Target, decimal Value)
{
    /// <summary>The readings of a day in the order in which they matter.</summary>
    public static ImmutableArray<DayReading> Of(PlanDay day, LoadingTargets targets)
    {
        ArgumentNullException.ThrowIfNull(day);
        ArgumentNullException.ThrowIfNull(targets);
        var (limits, totals) = (day.Limits, day.Totals);
        var slack = limits.CarbohydrateAimG * limits.CarbohydrateTolerance;
        return
        [
            new(
                Cut(
                    targets.CarbohydratePerDay,
                    limits.CarbohydrateAimG,
                    limits.CarbohydrateAimG - slack,
                    limits.CarbohydrateAimG + slack
                ),
                totals.CarbohydrateG
            ),
            new(
                Cut(
                    targets.DrinksShare,
                    limits.DrinksShareAim * 100,
                    limits.DrinksShareMin * 100,
                    limits.DrinksShareMax * 100
                ),
                day.DrinksShare * 100
            ),
            new(Cut(targets.Fibre, null, null, limits.FibreMaxG), totals.FibreG),
            new(
                Cut(targets.Protein, null, limits.ProteinMinG, limits.ProteinMaxG),
                totals.ProteinG
            ),
            new(Cut(targets.Fat, null, null, limits.FatMaxG), totals.FatG),
            new(Cut(targets.Sodium, null, limits.SodiumMinMg, limits.SodiumMaxMg), totals.SodiumMg),
        ];
    }

    private static Target Cut(Target target, decimal? aim, decimal? low, decimal? high) =>
        target with
        {
            Name = target.Name.Replace(", full day", "", StringComparison.Ordinal),
            Aim = aim,
            Low = low is 0 ? null : low,
            High = high,
            Unit = target.Unit.Replace("/day", "", StringComparison.Ordinal),
        };
}
