using System.Collections.Immutable;
using Practice.Domain.Evidence;
using Practice.Domain.Targets;

namespace Practice.Domain.Tests.Plans;

/// <summary>Targets with round numbers, for tests that are not about how targets come to be.</summary>
internal static class SampleTargets
{
    public static LoadingTargets At(decimal fullDayG) =>
        new()
        {
            Loads = true,
            CarbohydrateRate = Of("rate", 10, 8, 12, "g/kg/day"),
            CarbohydratePerDay = Of(
                "carbohydrate",
                fullDayG,
                fullDayG * 0.98m,
                fullDayG * 1.02m,
                "g/day"
            ),
            CarbohydrateTotal = Of("total", fullDayG * 1.5m, null, null, "g"),
            Energy = Of("energy", fullDayG * 5, null, null, "kcal/day"),
            Protein = Of("protein", 77, 58, 112, "g/day"),
            Fat = Of("fat", null, null, 70, "g/day"),
            Fibre = Of("fibre", null, null, 15, "g/day"),
            DrinksShare = Of("drinks", 30, 25, 35, "%"),
            Fluid = Of("fluid", null, 0.3m, 0.6m, "L/day"),
            Sodium = Of("sodium", null, 2000, 5000, "mg/day"),
            FructosePerOccasion = Of("fructose", null, null, 50, "g"),
            BodyMassGain = Of("gain", 1.3m, 1, 1.5m, "kg") with { Decimals = 1 },
            Benefit = Of("benefit", null, 2, 3, "%"),
            ExpectedFinish = Of("finish", 210, null, null, "min"),
            Glycogen = [],
        };

    private static Target Of(string key, decimal? aim, decimal? low, decimal? high, string unit) =>
        new()
        {
            Key = key,
            Name = key,
            Aim = aim,
            Low = low,
            High = high,
            Unit = unit,
            Basis = new Basis("sample", [], []),
        };
}
