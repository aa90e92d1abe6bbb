using System.Collections.Immutable;
using System.Globalization;
using Practice.Domain.Physiology;
using Practice.Domain.Quantities;

namespace Practice.Domain.Plans.Weeks;

/// <summary>A place along the drawing that is named.</summary>
/// <param name="Place">Where, 0 to 2.</param>
/// <param name="Label">Its name.</param>
public sealed record FuelMark(double Place, string Label);

/// <summary>
/// How a fuel story is drawn, on screen and on paper alike. Hours before the start and kilometres after it are no one
/// scale: each gets half of the drawing, 0 to 1 and 1 to 2.
/// </summary>
public static class FuelDrawing
{
    /// <summary>What is shown, with its unit.</summary>
    public const string Title = "Fuel in legs and liver, expected";

    /// <summary>The unit.</summary>
    public const string Unit = "g of glycogen that can be used";

    /// <summary>What a model that nobody measured is for.</summary>
    public const string Purpose = "A model to explain, not to prescribe.";

    /// <summary>The curve without the plan, from the first meal on.</summary>
    public static ImmutableArray<FuelPoint> WithoutPlan(this FuelStory story)
    {
        ArgumentNullException.ThrowIfNull(story);
        return [.. story.Without.Points.Where(p => p.Hour >= story.With.Points[0].Hour)];
    }

    /// <summary>Where a point stands, 0 to 2.</summary>
    public static double PlaceOf(this FuelStory story, FuelPoint point)
    {
        ArgumentNullException.ThrowIfNull(story);
        ArgumentNullException.ThrowIfNull(point);
        return point.Hour <= 0
            ? 1 - point.Hour / story.With.Points[0].Hour
            : 1 + point.Km / KmOf(story);
    }

    /// <summary>First meal, start, some kilometres and the finish.</summary>
    public static ImmutableArray<FuelMark> Marks(this FuelStory story)
    {
        ArgumentNullException.ThrowIfNull(story);
        var km = KmOf(story);
        var step = km switch
        {
            <= 25 => 5,
            <= 60 => 10,
            <= 120 => 25,
            _ => 50,
        };
        return
        [
            new(0, "first meal"),
            new(1, "start"),
            .. Enumerable
                .Range(1, (int)(km / step))
                .Select(i => i * step)
                .Where(k => k < km - step * 0.6)
                .Select(k => new FuelMark(1 + k / km, k.ToString(CultureInfo.InvariantCulture))),
            new(2, $"{Rounding.Shown((decimal)km, km % 1 < 0.05 ? 0 : 1)} km"),
        ];
    }

    /// <summary>The drawing in a sentence.</summary>
    public static string InWords(this FuelStory story)
    {
        ArgumentNullException.ThrowIfNull(story);
        var most = story.With.Points.Where(p => p.Hour <= 0).Max(p => p.ExpectedG);
        return string.Create(
            CultureInfo.InvariantCulture,
            $"At most {most:0} g before the start; {End(story.With)} with the plan, {End(story.Without)} without it."
        );
    }

    private static string End(FuelCurve curve) =>
        curve.WallKm is { } wall
            ? $"used up near {Rounding.Shown((decimal)wall, 0)} km"
            : $"{Rounding.Shown((decimal)curve.Points[^1].ExpectedG, 0)} g left at the finish";

    private static double KmOf(FuelStory story) => story.With.Points[^1].Km;
}
