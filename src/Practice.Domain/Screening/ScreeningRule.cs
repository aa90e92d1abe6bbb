using System.Collections.Immutable;
using Practice.Domain.Evidence;

namespace Practice.Domain.Screening;

/// <summary>What follows from one condition.</summary>
internal sealed record Findings
{
    public ImmutableArray<Hold> Holds { get; init; } = [];
    public ImmutableArray<Caution> Cautions { get; init; } = [];
    public Adjustments Adjustments { get; init; } = Adjustments.None;
}

/// <summary>
/// One condition and what follows from it. A rule knows no other rule: where several apply, all holds and cautions
/// stand and the strictest numbers win.
/// </summary>
internal abstract class ScreeningRule
{
    /// <summary>Where the rule comes from.</summary>
    public abstract Source Source { get; }

    /// <summary>Whether the condition is met.</summary>
    public abstract bool When(ScreenedCase screened);

    /// <summary>What follows when it is.</summary>
    public abstract Findings Then(ScreenedCase screened);

    /// <summary>A hold that a named professional lifts.</summary>
    protected Hold Hold(string key, string title, string reason) => new(key, title, reason, Source);

    /// <summary>Words for the client, and so without any number that has a unit.</summary>
    protected Caution TellClient(string key, string text) =>
        new(key, text, ForClient: true, Source);

    /// <summary>Words for the practitioner alone.</summary>
    protected Caution TellPractitioner(string key, string text) =>
        new(key, text, ForClient: false, Source);
}
