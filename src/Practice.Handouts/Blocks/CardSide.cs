using System.Collections.Immutable;

namespace Practice.Handouts.Blocks;

/// <summary>A side of a card that is folded from a sheet to a quarter of it.</summary>
/// <param name="Title">Its heading: level 1 on the front, 2 behind.</param>
/// <param name="IsFront">Whether it is the front, which may go on inside the fold.</param>
/// <param name="Blocks">What stands on it.</param>
public sealed record CardSide(string Title, bool IsFront, ImmutableArray<Block> Blocks) : Block;
