using Practice.Domain.Evidence;

namespace Practice.Domain.Targets;

/// <summary>Most fructose of one sitting, free and half of the sucrose; screening may lower it, to none at all.</summary>
internal static class FructoseTarget
{
    private const decimal CeilingG = 50;

    public static Target Of(LoadingCase loading)
    {
        var adjustments = loading.Adjustments;
        var computed = adjustments.NoFructoseAtAll
            ? 0
            : Math.Min(CeilingG, adjustments.FructoseMaxPerOccasionG ?? CeilingG);
        // hereditary intolerance is a hold, and no value of the practitioner's own goes past it
        var own = adjustments.NoFructoseAtAll
            ? null
            : loading.OverrideOf(TargetKeys.FructosePerOccasion, computed);
        return new Target
        {
            Key = TargetKeys.FructosePerOccasion,
            Name = "Fructose, one sitting",
            High = own?.Value ?? computed,
            Unit = "g",
            Override = own,
            Basis = new Basis(
                "free fructose + half of the sucrose, at most 50 g in one sitting",
                [],
                [Sources.FructoseRule],
                computed < CeilingG ? "Screening lowered this ceiling." : null
            ),
        };
    }
}
