using Practice.Domain.Evidence;
using Practice.Domain.Physiology;

namespace Practice.Domain.Targets;

/// <summary>Fat of a loading day: little, since it takes the place of carbohydrate, but not none.</summary>
internal static class FatTarget
{
    private const decimal CeilingGPerKg = 1;
    private const decimal CeilingEnergyShare = 0.25m;
    private const decimal FloorG = 20;

    public static Target Of(LoadingCase loading, Target perDay, Target protein, Target fibre)
    {
        var others = FoodEnergy.Kcal(
            perDay.Aim!.Value,
            protein.Aim ?? 0,
            fatG: 0,
            fibreG: fibre.High ?? 0
        );
        var byEnergy = others * CeilingEnergyShare / (1 - CeilingEnergyShare) / FoodEnergy.Fat;
        var computed = Math.Max(FloorG, Math.Min(CeilingGPerKg * loading.MassKg, byEnergy));
        var own = loading.OverrideOf(TargetKeys.Fat, computed);
        var ceiling = own?.Value ?? computed;
        return new Target
        {
            Key = TargetKeys.Fat,
            Name = "Fat, full day",
            Low = Math.Min(FloorG, ceiling),
            High = ceiling,
            Unit = "g/day",
            Override = own,
            Basis = new Basis(
                "at most 1 g/kg and at most 25 % of energy; at least 20 g",
                [loading.MassInput, BasisInput.Of("25 % of energy would be", byEnergy, "g")],
                [Sources.FatRule],
                "For loading days only; a usual diet keeps about 20 % of energy or more as fat."
            ),
        };
    }
}
