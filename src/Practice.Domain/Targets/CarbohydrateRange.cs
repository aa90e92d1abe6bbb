using System.Collections.Immutable;
using Practice.Domain.Evidence;

namespace Practice.Domain.Targets;

/// <summary>Which carbohydrate rates are allowed for a client, where to start, and why.</summary>
/// <param name="Low">Lowest rate that still counts as this, g/kg per 24 h.</param>
/// <param name="Start">Where to start, g/kg per 24 h.</param>
/// <param name="High">Highest rate, g/kg per 24 h.</param>
/// <param name="Formula">The rule in words.</param>
/// <param name="References">Where the rule comes from.</param>
internal sealed record CarbohydrateRange(
    decimal Low,
    decimal Start,
    decimal High,
    string Formula,
    ImmutableArray<Source> References
)
{
    /// <summary>Below this it is topping up and not loading, g/kg per 24 h.</summary>
    public const decimal LeastLoading = 7;

    /// <summary>The guideline says 10 to 12; the tool lets practitioners go down to 8.</summary>
    public static readonly CarbohydrateRange Loading = new(
        8,
        10,
        12,
        "10 g/kg of body mass in 24 h; 8 to 12 allowed (guideline 10 to 12)",
        [Sources.TenPerKilogram, Sources.Thomas2016]
    );

    /// <summary>General fuelling up before an event under 90 min.</summary>
    public static readonly CarbohydrateRange ToppingUp = new(
        7,
        7,
        12,
        "Event under 90 min: usual diet and a high-carbohydrate day before, 7 to 12 g/kg in 24 h",
        [Sources.Wallis2022, Sources.Thomas2016, Sources.ToppingUp]
    );

    /// <summary>The range that holds for a client.</summary>
    public static CarbohydrateRange For(LoadingCase loading, bool loads) =>
        Screened(loads ? BodyFatRule.Range(loading) ?? Loading : ToppingUp, loading);

    private static CarbohydrateRange Screened(CarbohydrateRange range, LoadingCase loading)
    {
        var (low, high) = (
            loading.Adjustments.CarbohydrateRateLow,
            loading.Adjustments.CarbohydrateRateHigh
        );
        if (low is null && high is null)
            return range;
        var top = high ?? range.High;
        var bottom = Math.Min(low ?? range.Low, top);
        return new(
            bottom,
            Math.Min(range.Start, (bottom + top) / 2),
            top,
            "Screening sets the range; start at its middle, or lower where another rule asks for less",
            [Sources.ScreenedRange, .. range.References]
        );
    }
}
