using System.Collections.Immutable;
using System.Globalization;

namespace Practice.Web.Parts.Plots;

/// <summary>An axis from a round number to a round number, with round ticks between; places are % of its length.</summary>
public sealed record PlotScale
{
    private PlotScale(double from, double to, ImmutableArray<double> ticks) =>
        (From, To, Ticks) = (from, to, ticks);

    public double From { get; }
    public double To { get; }
    public ImmutableArray<double> Ticks { get; }

    /// <summary>An axis that holds both values and has about so many ticks.</summary>
    public static PlotScale Around(double low, double high, int ticks = 4)
    {
        if (high - low < 1e-9)
            (low, high) = (low - 1, high + 1);
        var rough = (high - low) / ticks;
        var magnitude = Math.Pow(10, Math.Floor(Math.Log10(rough)));
        double[] steps = [1, 2, 5, 10];
        var step = steps.First(s => s * magnitude >= rough * 0.999) * magnitude;
        var from = Math.Floor(low / step + 1e-9) * step;
        var count = (int)Math.Ceiling((high - from) / step - 1e-9);
        return new PlotScale(
            from,
            from + count * step,
            [.. Enumerable.Range(0, count + 1).Select(i => from + i * step)]
        );
    }

    /// <summary>An axis exactly from one value to another, without ticks of its own.</summary>
    public static PlotScale Exactly(double from, double to) => new(from, to, []);

    /// <summary>How far along the axis, 0 to 100 %.</summary>
    public double Along(double value) =>
        To - From < 1e-9 ? 0 : Math.Clamp((value - From) / (To - From) * 100, 0, 100);

    /// <summary>How far down from the top, for an axis that rises.</summary>
    public double Down(double value) => 100 - Along(value);

    /// <summary>A place as SVG wants it.</summary>
    public static string Percent(double place) =>
        string.Create(CultureInfo.InvariantCulture, $"{place:0.##}%");
}
