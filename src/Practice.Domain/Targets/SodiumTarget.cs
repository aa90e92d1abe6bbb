using Practice.Domain.Evidence;

namespace Practice.Domain.Targets;

/// <summary>Sodium of normal salting; the population's limit where screening rules added salt out.</summary>
internal static class SodiumTarget
{
    private const decimal NormalLeastMg = 2000;
    private const decimal NormalMostMg = 5000;
    private const decimal PopulationLimitMg = 2300;

    public static Target Of(LoadingCase loading)
    {
        var noneAdded = loading.Adjustments.NoAddedSodium;
        var computed = noneAdded ? PopulationLimitMg : NormalMostMg;
        var own = loading.OverrideOf(TargetKeys.Sodium, computed);
        var most = own?.Value ?? computed;
        return new Target
        {
            Key = TargetKeys.Sodium,
            Name = "Sodium, full day",
            Low = noneAdded ? null : Math.Min(NormalLeastMg, most),
            High = most,
            Unit = "mg/day",
            Override = own,
            Basis = noneAdded ? NoneAdded : NormalSalting,
        };
    }

    private static readonly Basis NormalSalting = new(
        "normal salting, 2000 to 5000 mg of sodium",
        [],
        [Sources.SaltingRule, Sources.DrinkALittleMore],
        "A little extra salt helps to keep the extra drink; it does not protect against drinking too much."
    );

    private static readonly Basis NoneAdded = new(
        "no salt added; at most 2300 mg of sodium",
        [],
        [Sources.SodiumGuidance],
        "Screening: no advice to add salt. The limit is that of the general population; the physician's own goes first."
    );
}
