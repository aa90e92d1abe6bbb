using System.Collections.Immutable;

namespace Practice.Handouts.Blocks;

/// <summary>A piece of a paper. Blocks say every word and rounded number; layout only decides where they stand.</summary>
public abstract record Block;

/// <summary>The band at the top of the first page.</summary>
/// <param name="Kicker">What kind of paper it is.</param>
/// <param name="Title">Whom it is for.</param>
/// <param name="Lines">Race, date and time.</param>
/// <param name="Countdown">How long until the start; null once it is past.</param>
public sealed record Cover(
    string Kicker,
    string Title,
    ImmutableArray<string> Lines,
    Countdown? Countdown
) : Block;

/// <summary>How long until the start.</summary>
/// <param name="Figure">The number, set large.</param>
/// <param name="Caption">What it counts.</param>
public sealed record Countdown(string Figure, string Caption);

/// <summary>A row of facts in short.</summary>
/// <param name="Items">Two to five of them.</param>
public sealed record Facts(ImmutableArray<Fact> Items) : Block;

/// <summary>A fact in short.</summary>
/// <param name="Label">What it is.</param>
/// <param name="Value">The value with its unit.</param>
/// <param name="Note">A word to it; may be empty.</param>
public sealed record Fact(string Label, string Value, string Note = "");

/// <summary>A heading; levels follow one another without a gap.</summary>
/// <param name="Level">2 or 3: the cover is level 1.</param>
/// <param name="Text">The heading.</param>
/// <param name="NewPage">Whether it begins a page.</param>
public sealed record Heading(int Level, string Text, bool NewPage = false) : Block;

/// <summary>A paragraph.</summary>
/// <param name="Words">Its text.</param>
/// <param name="IsQuiet">Whether it is a remark in small soft ink.</param>
public sealed record Paragraph(Words Words, bool IsQuiet = false) : Block;

/// <summary>A list.</summary>
/// <param name="Items">Its points.</param>
public sealed record Bullets(ImmutableArray<Words> Items) : Block;

/// <summary>Somebody's own words.</summary>
/// <param name="Words">What was said.</param>
/// <param name="By">Who said it; may be empty.</param>
public sealed record Quote(Words Words, string By) : Block;

/// <summary>A box that must be seen.</summary>
/// <param name="IsCaution">Whether it concerns safety.</param>
/// <param name="Title">Its heading, on level 3.</param>
/// <param name="Body">What is in it.</param>
public sealed record Callout(bool IsCaution, string Title, ImmutableArray<Block> Body) : Block;

/// <summary>Moments in order on one line.</summary>
/// <param name="Items">Two to six of them.</param>
public sealed record Timeline(ImmutableArray<Milestone> Items) : Block;

/// <summary>A moment on the line.</summary>
/// <param name="When">Date.</param>
/// <param name="What">What happens.</param>
/// <param name="Detail">A word to it.</param>
/// <param name="IsGoal">Whether it is what the others lead to.</param>
public sealed record Milestone(string When, string What, string Detail, bool IsGoal = false);

/// <summary>Columns of blocks beside one another; stacked where type is too large for that.</summary>
/// <param name="Columns">The columns from left to right.</param>
/// <param name="KeepWithNext">Whether what follows belongs on the same page.</param>
public sealed record SideBySide(ImmutableArray<BlockColumn> Columns, bool KeepWithNext = false)
    : Block;

/// <summary>One of several columns.</summary>
/// <param name="Weight">Its part of the width.</param>
/// <param name="Blocks">What stands in it.</param>
public sealed record BlockColumn(double Weight, ImmutableArray<Block> Blocks);

/// <summary>Blocks that stay on one page if that leaves no great hole.</summary>
/// <param name="Blocks">The blocks.</param>
public sealed record Together(ImmutableArray<Block> Blocks) : Block;

/// <summary>Ruled lines to write on, as many as the rest of the page has room for.</summary>
/// <param name="Label">What to write.</param>
public sealed record NoteLines(string Label) : Block;
