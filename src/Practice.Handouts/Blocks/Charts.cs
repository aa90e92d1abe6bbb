using System.Collections.Immutable;

namespace Practice.Handouts.Blocks;

/// <summary>Bars with their aims.</summary>
/// <param name="Title">What is shown, with its unit.</param>
/// <param name="Bars">The bars.</param>
/// <param name="Legend">What the tick on a bar means.</param>
/// <param name="Alt">The chart in a sentence.</param>
public sealed record BarChart(string Title, ImmutableArray<Bar> Bars, string Legend, string Alt)
    : Block;

/// <summary>One bar.</summary>
/// <param name="Label">Below it.</param>
/// <param name="Value">Its height.</param>
/// <param name="Aim">Height of the tick.</param>
public sealed record Bar(string Label, int Value, int Aim);

/// <summary>A curve with the band it lies in, and a second curve to compare with.</summary>
/// <param name="Title">What is shown, with its unit.</param>
/// <param name="Points">The curve from left to right.</param>
/// <param name="Other">The other curve.</param>
/// <param name="Marks">Named places along it.</param>
/// <param name="Legend">What the second curve and the band mean.</param>
/// <param name="Alt">The chart in a sentence.</param>
public sealed record BandChart(
    string Title,
    ImmutableArray<BandPoint> Points,
    ImmutableArray<BandPoint> Other,
    ImmutableArray<BandMark> Marks,
    string Legend,
    string Alt
) : Block;

/// <summary>A point of a curve.</summary>
/// <param name="At">Where along the drawing.</param>
/// <param name="Value">Its height.</param>
/// <param name="Low">Lower end of the band.</param>
/// <param name="High">Upper end of the band.</param>
public sealed record BandPoint(double At, double Value, double Low, double High);

/// <summary>A named place along a curve.</summary>
/// <param name="At">Where along the drawing.</param>
/// <param name="Label">Its name.</param>
public sealed record BandMark(double At, string Label);
