using System.Collections.Immutable;

namespace Practice.Handouts.Blocks;

/// <summary>Rows with a box to write into for each moment.</summary>
/// <param name="Columns">The moments.</param>
/// <param name="Rows">What is asked for.</param>
public sealed record ScoreBoxes(ImmutableArray<string> Columns, ImmutableArray<string> Rows)
    : Block;

/// <summary>A code for a phone's camera, with words beside it.</summary>
/// <param name="Code">The squares.</param>
/// <param name="Title">What it opens, on level 3.</param>
/// <param name="Text">What to do with it.</param>
/// <param name="Alt">The code for those who can not see it.</param>
public sealed record CameraCode(QrSquares Code, string Title, string Text, string Alt) : Block;
