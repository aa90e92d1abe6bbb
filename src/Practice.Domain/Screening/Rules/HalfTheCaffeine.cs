using Practice.Domain.Evidence;

namespace Practice.Domain.Screening.Rules;

/// <summary>What follows wherever caffeine lasts longer: half of the general limits of 400 mg a day and 200 mg at
/// once.</summary>
internal static class HalfTheCaffeine
{
    public static Caution Caution { get; } =
        new(
            "caffeine-halved",
            "One of your medicines makes caffeine last longer: take no more than half of what you otherwise would.",
            ForClient: true,
            Sources.EfsaCaffeine2015
        );

    public static Adjustments Adjustments { get; } =
        new() { CaffeineMaxMgPerDay = 200, CaffeineMaxMgPerIntake = 100 };
}
