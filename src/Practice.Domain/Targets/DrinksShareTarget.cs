using Practice.Domain.Evidence;

namespace Practice.Domain.Targets;

/// <summary>How much of the carbohydrate is drunk: less to chew and less fibre. Check P07.</summary>
internal static class DrinksShareTarget
{
    private const decimal Either = 5;

    public static Target Of(LoadingCase loading)
    {
        var computed = loading.Choices.DrinksShare * 100;
        var own = loading.OverrideOf(TargetKeys.DrinksShare, computed);
        var aim = own?.Value ?? computed;
        return new Target
        {
            Key = TargetKeys.DrinksShare,
            Name = "Carbohydrate from drinks",
            Aim = aim,
            Low = Math.Max(0, aim - Either),
            High = aim + Either,
            Unit = "%",
            Override = own,
            Basis = new Basis(
                "the share chosen, within 5 points",
                [BasisInput.Of("Share chosen", computed, "%")],
                [Sources.DrinksSupply]
            ),
        };
    }
}
