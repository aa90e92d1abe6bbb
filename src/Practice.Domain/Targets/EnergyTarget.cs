using System.Collections.Immutable;
using Practice.Domain.Clients;
using Practice.Domain.Evidence;
using Practice.Domain.Physiology;

namespace Practice.Domain.Targets;

/// <summary>
/// Energy that the other targets add up to, and whether it is more than the client usually needs. It follows from the
/// carbohydrate and never limits it. Checks T02, B16.
/// </summary>
internal static class EnergyTarget
{
    private const double EnergyMustRiseAbove = 0.85;

    public static Target Of(
        LoadingCase loading,
        Target perDay,
        Target protein,
        Target fat,
        Target fibre
    )
    {
        var carbohydrate = perDay.Aim!.Value;
        var fibreG = fibre.High ?? 0;
        var (leastFat, mostFat) = (fat.Low!.Value, fat.High!.Value);
        var fatG = (leastFat + mostFat) / 2;
        var proteinG = protein.Aim ?? 0;
        var computed = FoodEnergy.Kcal(carbohydrate, proteinG, fatG, fibreG);
        var own = loading.OverrideOf(TargetKeys.Energy, computed);
        return new Target
        {
            Key = TargetKeys.Energy,
            Name = "Energy, full day",
            Aim = own?.Value ?? computed,
            Low = FoodEnergy.Kcal(carbohydrate, protein.Low ?? proteinG, leastFat, 0),
            High = FoodEnergy.Kcal(carbohydrate, protein.High ?? proteinG, mostFat, fibreG),
            Unit = "kcal/day",
            Override = own,
            Basis = new Basis(
                "4 × carbohydrate + 4 × protein + 9 × fat + 2 × fibre",
                Inputs(loading, carbohydrate, proteinG, fatG, fibreG),
                [
                    Sources.Regulation1169,
                    loading.MeasuredFatFreeKg is null
                        ? Sources.Mifflin1990
                        : Sources.Cunningham1980,
                    Sources.Rapoport2010,
                    Sources.EnergyNeed,
                    Sources.EnergyCheck,
                    Sources.Sedlock2008,
                ],
                Note(loading, carbohydrate, protein)
            ),
        };
    }

    private static ImmutableArray<BasisInput> Inputs(
        LoadingCase loading,
        decimal carbohydrateG,
        decimal proteinG,
        decimal fatG,
        decimal fibreG
    )
    {
        var inputs = ImmutableArray.Create(
            BasisInput.Of("Carbohydrate", carbohydrateG, "g"),
            BasisInput.Of("Protein", proteinG, "g"),
            BasisInput.Of("Fat, middle of floor and ceiling", fatG, "g"),
            BasisInput.Of("Fibre", fibreG, "g")
        );
        return UsualNeedKcal(loading) is { } need
            ? inputs.Add(BasisInput.Of("Usual daily need, estimate", need, "kcal"))
            : inputs;
    }

    private static string? Note(LoadingCase loading, decimal carbohydrateG, Target protein)
    {
        if (protein.Aim is null)
            return "Protein is set by the metabolic team and is not in this figure.";
        if (UsualNeedKcal(loading) is not { } need)
            return "No comparison with the usual need: its equations are for adults.";
        var fromCarbohydrate = (double)(carbohydrateG * FoodEnergy.Carbohydrate);
        if (fromCarbohydrate <= EnergyMustRiseAbove * need)
            return null;
        const string rise =
            "The carbohydrate alone brings more than 85 % of the usual need: energy must rise on this day. Do not shrink the carbohydrate to avoid it.";
        return loading.Physique.Sex == Sex.Female
            ? rise + " In trials where women's glycogen did not rise they ate about 6 g/kg."
            : rise;
    }

    /// <summary>Energy of a usual training day, kcal; null under 18, for whom the equations were not made.</summary>
    private static double? UsualNeedKcal(LoadingCase loading)
    {
        if (!loading.IsAdult)
            return null;
        var massKg = (double)loading.MassKg;
        var resting = loading.MeasuredFatFreeKg is { } fatFreeKg
            ? RestingEnergy.Cunningham(fatFreeKg)
            : RestingEnergy.Mifflin(
                massKg,
                (double)loading.Physique.HeightCm,
                loading.AgeYears,
                loading.Physique.Sex
            );
        var dailyKm = (double)(loading.Physique.WeeklyKm ?? 0) / 7;
        return TotalEnergy.Kcal(resting, RunningEnergy.NetKcal(massKg, dailyKm));
    }
}
