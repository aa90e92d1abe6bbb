using System.Collections.Immutable;

namespace Practice.Domain.Screening;

/// <summary>How a question is answered.</summary>
public enum AnswerKind
{
    /// <summary>Yes or no.</summary>
    YesNo,

    /// <summary>Exactly one of the choices.</summary>
    OneOf,

    /// <summary>One or more of the choices; the first one, which denies all others, stands alone.</summary>
    AnyOf,

    /// <summary>In the client's own words; may be left empty.</summary>
    Text,
}

/// <summary>One possible answer.</summary>
/// <param name="Key">Stable key within its question.</param>
/// <param name="Text">What the client reads.</param>
public sealed record Choice(string Key, string Text)
{
    /// <summary>No.</summary>
    public static Choice No { get; } = new("no", "No");

    /// <summary>Yes.</summary>
    public static Choice Yes { get; } = new("yes", "Yes");

    /// <summary>None of the other choices.</summary>
    public static Choice NoneOfThese { get; } = new("none", "None of these");
}

/// <summary>When a question is asked at all: after one of these answers to an earlier one.</summary>
/// <param name="Question">The earlier question.</param>
/// <param name="Choices">The answers that lead on.</param>
public sealed record FollowUp(Question Question, ImmutableArray<Choice> Choices);

/// <summary>A health question, as data: the screens show what stands here and the rules read the answers.</summary>
public sealed record Question
{
    private Question() { }

    /// <summary>Stable key.</summary>
    public required string Key { get; init; }

    /// <summary>The question in plain words.</summary>
    public required string Text { get; init; }

    /// <summary>What helps to answer it; empty when it speaks for itself.</summary>
    public string Help { get; init; } = "";

    /// <summary>How it is answered.</summary>
    public required AnswerKind Kind { get; init; }

    /// <summary>The possible answers; the first one reports nothing. Empty for a question answered in
    /// words.</summary>
    public ImmutableArray<Choice> Choices { get; init; } = [];

    /// <summary>The answer that leads here; null when the question is always asked.</summary>
    public FollowUp? After { get; init; }

    /// <summary>Whether a screening is complete without an answer to it.</summary>
    public bool IsOptional => Kind == AnswerKind.Text;

    /// <summary>A question answered by yes or no.</summary>
    public static Question YesNo(string key, string text) =>
        new()
        {
            Key = key,
            Text = text,
            Kind = AnswerKind.YesNo,
            Choices = [Choice.No, Choice.Yes],
        };

    /// <summary>A question with exactly one answer; the first choice reports nothing.</summary>
    public static Question OneOf(string key, string text, ImmutableArray<Choice> choices) =>
        new()
        {
            Key = key,
            Text = text,
            Kind = AnswerKind.OneOf,
            Choices = choices,
        };

    /// <summary>A question with any number of answers; "none of these" is put first.</summary>
    public static Question AnyOf(string key, string text, ImmutableArray<Choice> choices) =>
        new()
        {
            Key = key,
            Text = text,
            Kind = AnswerKind.AnyOf,
            Choices = [Choice.NoneOfThese, .. choices],
        };

    /// <summary>A question answered in words, or not at all.</summary>
    public static Question InWords(string key, string text) =>
        new()
        {
            Key = key,
            Text = text,
            Kind = AnswerKind.Text,
        };

    /// <summary>Questions are the same when their keys are.</summary>
    public bool Equals(Question? other) => other is not null && Key == other.Key;

    /// <inheritdoc />
    public override int GetHashCode() => Key.GetHashCode(StringComparison.Ordinal);
}

/// <summary>Questions that belong together.</summary>
/// <param name="Key">Stable key.</param>
/// <param name="Title">Heading.</param>
/// <param name="Questions">In the order in which they are asked; a follow-up stands after what leads to it.</param>
public sealed record QuestionSection(string Key, string Title, ImmutableArray<Question> Questions);
