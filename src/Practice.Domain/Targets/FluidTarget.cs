using Practice.Domain.Evidence;

namespace Practice.Domain.Targets;

/// <summary>A little more drink than usual, never forced; none for clients who drink to thirst.</summary>
internal static class FluidTarget
{
    private const decimal LeastL = 0.3m;
    private const decimal MostL = 0.6m;

    public static Target Of(LoadingCase loading)
    {
        var thirstOnly = loading.Adjustments.ThirstOnly;
        decimal? computed = thirstOnly ? null : MostL;
        var own = loading.OverrideOf(TargetKeys.Fluid, computed);
        var most = own?.Value ?? computed;
        return new Target
        {
            Key = TargetKeys.Fluid,
            Name = "Drink above usual",
            Low = thirstOnly || most < LeastL ? null : LeastL,
            High = most,
            Unit = "L/day",
            Decimals = 1,
            Override = own,
            Basis = new Basis(
                "usual drinking and 0.3 to 0.6 L more",
                [],
                [Sources.FluidRule, Sources.DrinkALittleMore],
                thirstOnly
                    ? "Screening: drink to thirst, no drinking plan."
                    : "Not to be forced: thirst comes first."
            ),
        };
    }
}
