using System.Collections.Immutable;

namespace Practice.Handouts.Blocks;

/// <summary>How a stretch of text is set.</summary>
public enum RunStyle
{
    /// <summary>As the text around it.</summary>
    Plain,

    /// <summary>Stronger.</summary>
    Strong,

    /// <summary>Italic.</summary>
    Emphasis,

    /// <summary>Softer ink.</summary>
    Quiet,
}

/// <summary>A stretch of text in one style and language.</summary>
/// <param name="Text">The text; <c>\n</c> begins a new line.</param>
/// <param name="Style">How it is set.</param>
/// <param name="Language">Language tag where it differs from the document's.</param>
public sealed record Run(string Text, RunStyle Style = RunStyle.Plain, string? Language = null);

/// <summary>
/// Text in runs. User text enters as a run and is never read as markup, so no character of a name can change a paper.
/// </summary>
/// <param name="Runs">The runs in order.</param>
public sealed record Words(ImmutableArray<Run> Runs)
{
    /// <summary>Plain text.</summary>
    public static implicit operator Words(string text) => new([new Run(text)]);

    /// <summary>Text of several runs.</summary>
    public static Words Of(params ImmutableArray<Run> runs) => new(runs);

    /// <summary>Plain text; the named alternate of the conversion.</summary>
    public static Words FromString(string text) => text;

    /// <summary>The text alone.</summary>
    public string Plain => string.Concat(Runs.Select(r => r.Text));
}
