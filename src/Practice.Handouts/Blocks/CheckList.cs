using System.Collections.Immutable;

namespace Practice.Handouts.Blocks;

/// <summary>Sections of things to tick off, in columns.</summary>
/// <param name="Sections">The sections.</param>
public sealed record CheckList(ImmutableArray<CheckSection> Sections) : Block;

/// <summary>A section.</summary>
/// <param name="Title">Its heading, on level 3.</param>
/// <param name="Items">What to tick off.</param>
public sealed record CheckSection(string Title, ImmutableArray<CheckItem> Items);

/// <summary>A thing to tick off.</summary>
/// <param name="Text">What.</param>
/// <param name="Amount">How much.</param>
public sealed record CheckItem(string Text, string Amount);
