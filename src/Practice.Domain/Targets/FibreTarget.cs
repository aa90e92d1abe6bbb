using Practice.Domain.Evidence;

namespace Practice.Domain.Targets;

/// <summary>Fibre ceiling of the last two days; an earlier loading day may hold a little more.</summary>
internal static class FibreTarget
{
    private const decimal CeilingG = 15;

    public static Target Of(LoadingCase loading)
    {
        decimal? computed = loading.Adjustments.NoLowResidue ? null : CeilingG;
        var own = loading.OverrideOf(TargetKeys.Fibre, computed);
        return new Target
        {
            Key = TargetKeys.Fibre,
            Name = "Fibre, full day",
            High = own?.Value ?? computed,
            Unit = "g/day",
            Override = own,
            Basis = new Basis(
                "at most 15 g on each of the last two days; 10 g where a stricter plan is wanted",
                [],
                [Sources.LowFibre, Sources.Foo2022, Sources.Mancin2025, Sources.FibreShift],
                computed is null
                    ? "Screening: no low-fibre restriction for this client."
                    : "A loading day before the last two may hold 5 g more. Back to about 30 g a day after the race."
            ),
        };
    }
}
