using Practice.Domain.Evidence;

namespace Practice.Domain.Targets;

/// <summary>Protein of a loading day: the population's floor, and an aim that leaves room for carbohydrate. Checks T09-T11.</summary>
internal static class ProteinTarget
{
    private const decimal FloorGPerKg = 0.83m;
    private const decimal AimGPerKg = 1.1m;
    private const decimal CeilingGPerKg = 1.4m;
    private const decimal UsualLowGPerKg = 1.2m;
    private const decimal UsualHighGPerKg = 2.0m;

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
                [
                    loading.MassInput,
                    BasisInput.Of("Outside loading, from", UsualLowGPerKg * loading.MassKg, "g"),
                    BasisInput.Of("Outside loading, to", UsualHighGPerKg * loading.MassKg, "g"),
                ],
                [
                    Sources.EfsaProtein2012,
                    Sources.ProteinWhileLoading,
                    Sources.ProteinRule,
                    Sources.Thomas2016,
                ],
                setElsewhere
                    ? "Screening: protein comes from the metabolic team only; the general floor is not applied."
                    : "An athlete's usual protein returns after the race."
            ),
        };
    }
}
