using Practice.Domain.Evidence;

namespace Practice.Domain.Rehearsals;

/// <summary>Whether a client was loaded.</summary>
public enum Compliance
{
    /// <summary>Nine tenths of the plan or more.</summary>
    Met,

    /// <summary>Seven to nine tenths.</summary>
    Partly,

    /// <summary>Less; the trial says little of the plan.</summary>
    NotLoaded,
}

/// <summary>
/// Own rule: 0.90 of the planned carbohydrate and more is met, 0.70 to 0.90 partly, less not loaded; and a full
/// rehearsal of a plan that loads is not loaded below 7 g/kg in 24 h.
/// </summary>
public static class ComplianceRule
{
    private const decimal MetFrom = 0.90m;
    private const decimal PartlyFrom = 0.70m;
    private const decimal LeastLoadingGPerKg = 7m;

    /// <summary>Where the rule comes from.</summary>
    public static Source Source => Sources.Compliance;

    /// <summary>What an intake amounts to.</summary>
    /// <param name="kind">How much was tried.</param>
    /// <param name="plannedGPerKg">Carbohydrate planned, g/kg in 24 h, above 0.</param>
    /// <param name="eatenGPerKg">Carbohydrate eaten, g/kg in 24 h.</param>
    public static Compliance Of(RehearsalKind kind, decimal plannedGPerKg, decimal eatenGPerKg)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(plannedGPerKg);
        var tooLittle =
            kind == RehearsalKind.Full
            && plannedGPerKg >= LeastLoadingGPerKg
            && eatenGPerKg < LeastLoadingGPerKg;
        return (eatenGPerKg / plannedGPerKg) switch
        {
            < PartlyFrom => Compliance.NotLoaded,
            _ when tooLittle => Compliance.NotLoaded,
            < MetFrom => Compliance.Partly,
            _ => Compliance.Met,
        };
    }
}
