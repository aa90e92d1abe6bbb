using System.Collections.Immutable;
using Practice.Domain.Evidence;
using Practice.Domain.Quantities;
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
        Target CutTo(Target target, decimal? aim, decimal? low, decimal? high) =>
            Cut(day, target, aim, low, high);
        return
        [
            new(
                CutTo(
                    targets.CarbohydratePerDay,
                    limits.CarbohydrateAimG,
                    limits.CarbohydrateAimG - slack,
                    limits.CarbohydrateAimG + slack
                ),
                totals.CarbohydrateG
            ),
            new(
                CutTo(
                    targets.DrinksShare,
                    limits.DrinksShareAim * 100,
                    limits.DrinksShareMin * 100,
                    limits.DrinksShareMax * 100
                ),
                day.DrinksShare * 100
            ),
            new(CutTo(targets.Fibre, null, null, limits.FibreMaxG), totals.FibreG),
            new(
                CutTo(targets.Protein, null, limits.ProteinMinG, limits.ProteinMaxG),
                totals.ProteinG
            ),
            new(CutTo(targets.Fat, null, null, limits.FatMaxG), totals.FatG),
            new(
                CutTo(targets.Sodium, null, limits.SodiumMinMg, limits.SodiumMaxMg),
                totals.SodiumMg
            ),
        ];
    }

    private static Target Cut(
        PlanDay day,
        Target target,
        decimal? aim,
        decimal? low,
        decimal? high
    ) =>
        target with
        {
            Name = target.Name.Replace(", full day", "", StringComparison.Ordinal),
            Aim = aim,
            Low = low is 0 ? null : low,
            High = high,
            Unit = target.Unit.Replace("/day", "", StringComparison.Ordinal),
            Basis = day.Share < 1 ? ForThePart(day, target.Basis) : target.Basis,
        };

    /// <summary>A part day says which part it is, so that its figure can be followed from the full day's.</summary>
    private static Basis ForThePart(PlanDay day, Basis basis) =>
        basis with
        {
            Inputs =
            [
                .. basis.Inputs,
                new BasisInput("Part of a full day", $"{Rounding.Shown(day.Share * 100, 0)} %"),
            ],
        };
}
