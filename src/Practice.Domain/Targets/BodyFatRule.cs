using System.Collections.Immutable;
using Practice.Domain.Clients;
using Practice.Domain.Evidence;
using Practice.Domain.Physiology;

namespace Practice.Domain.Targets;

/// <summary>
/// High body fat: carbohydrate by fat-free mass. Muscle stores glycogen and fat does not, so above 25 % body fat (men) or
/// 35 % (women), or a BMI above 30, the rate is 12 g/kg of fat-free mass, which was 10.3 g/kg of body mass in
/// Fairchild 2002; never below 7 g/kg of body mass. Own rule. Checks T20, T21.
/// </summary>
internal static class BodyFatRule
{
    public const decimal GramsPerKgFatFree = 12;
    private const decimal MenPercent = 25;
    private const decimal WomenPercent = 35;
    private const decimal HighBmi = 30;

    /// <summary>The range by fat-free mass; null when the rule does not concern the client.</summary>
    public static CarbohydrateRange? Range(LoadingCase loading)
    {
        if (!Concerns(loading))
            return null;
        var byFatFree = GramsPerKgFatFree * FatFreeKg(loading) / loading.MassKg;
        var usual = CarbohydrateRange.Loading.Start;
        return new(
            CarbohydrateRange.LeastLoading,
            Math.Clamp(byFatFree, CarbohydrateRange.LeastLoading, usual),
            usual,
            "12 g/kg of fat-free mass, within 7 to 10 g/kg of body mass",
            [Sources.BodyFatRule, Sources.Fairchild2002, Sources.Thomas2016, .. Estimate(loading)]
        );
    }

    private static ImmutableArray<Source> Estimate(LoadingCase loading) =>
        loading.MeasuredFatFreeKg is null ? [Sources.Boer1984] : [];

    /// <summary>Fat-free mass, kg: from measured body fat, else Boer's estimate.</summary>
    public static decimal FatFreeKg(LoadingCase loading) =>
        (decimal)(
            loading.MeasuredFatFreeKg
            ?? FatFreeMass.Boer(
                (double)loading.MassKg,
                (double)loading.Physique.HeightCm,
                loading.Physique.Sex
            )
        );

    public static bool Concerns(LoadingCase loading)
    {
        var metres = loading.Physique.HeightCm / 100;
        var limit = loading.Physique.Sex == Sex.Male ? MenPercent : WomenPercent;
        return loading.Physique.BodyFatPercent > limit
            || loading.MassKg / (metres * metres) > HighBmi;
    }
}
