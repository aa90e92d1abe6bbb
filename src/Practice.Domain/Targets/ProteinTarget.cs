using Practice.Domain.Evidence;

namespace Practice.Domain.Targets;

/// <summary>Protein of a loading day: the population's floor, and an aim that leaves room for carbohydrate. Check T09.</summary>
internal static class ProteinTarget
{
    private const decimal FloorGPerKg = 0.83m;
    private const decimal AimGPerKg = 1.1m;
    private const decimal CeilingGPerKg = 1.4m;

    public static Target Of(LoadingCase loading)
    {
        var setElsewhere = loading.Adjustments.NoProteinFloor;
        decimal? computed = setElsewhere ? null : AimGPerKg * loading.MassKg;
        var own = loading.OverrideOf(TargetKeys.Protein, computed);
        return new Target
        {
            Key = TargetKeys.Protein,
            Name = "Protein, full day",
            Aim = own?.Value ?? computed,
            Low = setElsewhere ? null : FloorGPerKg * loading.MassKg,
            High = setElsewhere ? null : CeilingGPerKg * loading.MassKg,
            Unit = "g/day",
            Override = own,
            Basis = new Basis(
                "at least 0.83 g/kg; aim 1.0 to 1.2 g/kg; up to 1.4 g/kg",
                [loading.MassInput],
                [Sources.EfsaProtein2012, Sources.ProteinWhileLoading, Sources.ProteinRule],
                setElsewhere
                    ? "Screening: protein comes from the metabolic team only; the general floor is not applied."
                    : "Athletes' usual 1.2 to 2.0 g/kg (Thomas 2016) returns after the race."
            ),
        };
    }
}
