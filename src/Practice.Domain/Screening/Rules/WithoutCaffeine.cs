using Practice.Domain.Evidence;

namespace Practice.Domain.Screening.Rules;

/// <summary>What follows wherever caffeine is ruled out.</summary>
internal static class WithoutCaffeine
{
    public static Caution Caution { get; } =
        new(
            "no-caffeine",
            "This plan brings no caffeine: leave out gels, tablets and drinks that have it. Ask your "
                + "practitioner about "
                + "your usual coffee or tea.",
            ForClient: true,
            Sources.DieteticPractice
        );

    public static Adjustments Adjustments { get; } =
        new()
        {
            CaffeineMaxMgPerDay = 0,
            CaffeineMaxMgPerIntake = 0,
            NoRaceCaffeine = true,
        };

    public static Findings Findings { get; } =
        new() { Cautions = [Caution], Adjustments = Adjustments };
}
