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
