using System.Collections.Immutable;
using NodaTime;
using Practice.Domain.Practices;

namespace Practice.Handouts.Blocks;

/// <summary>A paper: every word and number on it, not yet laid out.</summary>
public sealed record HandoutDoc
{
    /// <summary>Title of the document.</summary>
    public required string Title { get; init; }

    /// <summary>Language tag.</summary>
    public required string Language { get; init; }

    /// <summary>Who stands behind it.</summary>
    public required string Author { get; init; }

    /// <summary>The date the file bears.</summary>
    public required LocalDate Date { get; init; }

    /// <summary>How it looks.</summary>
    public required PracticeProfile Practice { get; init; }

    /// <summary>What it is printed on.</summary>
    public PaperSize Paper { get; init; }

    /// <summary>Whether it is set in large type.</summary>
    public bool IsLargePrint { get; init; }

    /// <summary>Whether it is a card of two sides, folded from one sheet.</summary>
    public bool IsFoldedCard { get; init; }

    /// <summary>At the head of every page but the first.</summary>
    public required string RunningHead { get; init; }

    /// <summary>At the foot of every page, beside the page number.</summary>
    public required ImmutableArray<string> Foot { get; init; }

    /// <summary>The body.</summary>
    public required ImmutableArray<Block> Blocks { get; init; }
}
