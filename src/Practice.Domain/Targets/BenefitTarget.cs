using System.Collections.Immutable;
using Practice.Domain.Evidence;
using Practice.Domain.Physiology;
using Practice.Domain.Races;

namespace Practice.Domain.Targets;

/// <summary>What loading is worth over a set distance, and the fuel arithmetic behind it for a road race. Checks X07, X08.</summary>
internal static class BenefitTarget
{
    private const decimal LeastPercent = 2;
    private const decimal MostPercent = 3;

    public static Target Of(
        LoadingCase loading,
        bool loads,
        Target finish,
        GlycogenForecast glycogen,
        int windowHours
    )
    {
        decimal? computed = loads ? null : 0;
        var own = loading.OverrideOf(TargetKeys.Benefit, computed);
        return new Target
        {
            Key = TargetKeys.Benefit,
            Name = "Expected benefit",
            Aim = own?.Value ?? computed,
            Low = loads ? LeastPercent : 0,
            High = loads ? MostPercent : 0,
            Unit = "%",
            Override = own,
            Basis = new Basis(
                "2 to 3 % faster over a set distance, in events over 90 min",
                [.. Stores(glycogen, windowHours), .. Use(loading, finish)],
                [
                    Sources.Hawley1997,
                    Sources.TwoToThreePercent,
                    Sources.Rapoport2010,
                    Sources.Leger1984,
                    Sources.Murray2018,
                ],
                loads
                    ? "Stores and use explain why; they do not set the target. Carbohydrate eaten in the race comes on top."
                    : "No benefit has been shown in events under 90 min."
            ),
        };
    }

    private static ImmutableArray<BasisInput> Stores(GlycogenForecast glycogen, int windowHours)
    {
        var before = GlycogenStores.MuscleG(glycogen.MassKg, glycogen.Sex, glycogen.StartMmolPerKg);
        return
        [
            BasisInput.Of(
                "Glycogen on a usual diet, muscle and liver",
                before + GlycogenStores.UsualLiverG,
                "g"
            ),
            BasisInput.Of(
                "Glycogen after loading, muscle and liver",
                before + glycogen.GainG(windowHours) + GlycogenStores.LoadedLiverG,
                "g"
            ),
        ];
    }

    /// <summary>What the race burns; only where pace and VO2max are known and the relations hold.</summary>
    private static ImmutableArray<BasisInput> Use(LoadingCase loading, Target finish)
    {
        if (
            finish.Aim is not { } minutes
            || loading.Race.Discipline != Discipline.RoadRunning
            || loading.Vo2Max.Origin == Vo2MaxOrigin.Assumed
        )
            return [];
        var km = (double)loading.Race.DistanceKm;
        var intensity = RunningIntensity.Relative(
            km / ((double)minutes / 60),
            loading.Vo2Max.MlPerKgMin
        );
        var share = CarbohydrateShare.At(intensity);
        var grams =
            share
            * RunningEnergy.NetKcal((double)loading.MassKg, km)
            / (double)FoodEnergy.Carbohydrate;
        return
        [
            BasisInput.Of("Intensity at race pace", 100 * intensity, "% of VO2max"),
            BasisInput.Of("Energy from carbohydrate", 100 * share, "%, within 10 points"),
            BasisInput.Of("Carbohydrate the race burns", grams, "g"),
        ];
    }
}
