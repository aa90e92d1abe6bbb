using System.Collections.Immutable;
using Practice.Domain.Quantities;

namespace Practice.Domain.Screening;

/// <summary>
/// What a client answered. A question without an answer is open: that is not the same as "no", and a screening with
/// open questions cannot lead to an issued plan.
/// </summary>
public sealed record ScreeningAnswers
{
    /// <summary>Nothing answered yet.</summary>
    public static ScreeningAnswers None { get; } = new();

    /// <summary>
    /// Keys of the choices made, or the words given, by key of the question. The form in which answers are stored;
    /// what a later questionnaire no longer knows stays here and means nothing.
    /// </summary>
    public ImmutableDictionary<string, ImmutableArray<string>> Given { get; init; } =
        ImmutableDictionary<string, ImmutableArray<string>>.Empty;

    /// <summary>Asks whether every word of the answers can be kept.</summary>
    /// <exception cref="ArgumentException">One cannot; the message says why.</exception>
    public void Check()
    {
        foreach (var (key, words) in Given)
        {
            TypedText.Checked(key, 100, "A question");
            foreach (var word in words)
                TypedText.Checked(word, 2000, "An answer", ofLines: true);
        }
    }

    /// <summary>The choices made; empty while the question is open or when it is answered in words.</summary>
    public ImmutableArray<Choice> Chosen(Question question)
    {
        ArgumentNullException.ThrowIfNull(question);
        return Given.TryGetValue(question.Key, out var keys)
            ? [.. question.Choices.Where(choice => keys.Contains(choice.Key))]
            : [];
    }

    /// <summary>Whether this choice was made.</summary>
    public bool Says(Question question, Choice choice) => Chosen(question).Contains(choice);

    /// <summary>Whether one of these choices was made.</summary>
    public bool SaysAnyOf(Question question, params ImmutableArray<Choice> choices) =>
        Chosen(question).Any(choices.Contains);

    /// <summary>Whether the answer is yes.</summary>
    public bool SaysYes(Question question) => Says(question, Choice.Yes);

    /// <summary>Whether anything but the first choice, which reports nothing, was made.</summary>
    public bool Reports(Question question) => Chosen(question).Any(c => c != question.Choices[0]);

    /// <summary>The words given; empty when there are none.</summary>
    public string WordsOn(Question question)
    {
        ArgumentNullException.ThrowIfNull(question);
        return question.Kind == AnswerKind.Text && Given.TryGetValue(question.Key, out var words)
            ? string.Join(' ', words)
            : "";
    }

    /// <summary>Whether the question has an answer.</summary>
    public bool Has(Question question) => !Chosen(question).IsEmpty || WordsOn(question).Length > 0;

    /// <summary>The answers with this question answered by these choices, in place of what stood there.</summary>
    /// <exception cref="ArgumentException">The choices are not an answer to the question.</exception>
    public ScreeningAnswers With(Question question, params ImmutableArray<Choice> choices)
    {
        ArgumentNullException.ThrowIfNull(question);
        var answers =
            !choices.IsEmpty
            && choices.All(question.Choices.Contains)
            && (choices.Length == 1 || MayStandTogether(question, choices));
        return answers
            ? Put(question, [.. choices.Select(choice => choice.Key).Distinct()])
            : throw new ArgumentException(
                $"Not an answer to '{question.Key}': {string.Join(", ", choices.Select(c => c.Key))}.",
                nameof(choices)
            );
    }

    /// <summary>The answers with this question answered yes.</summary>
    public ScreeningAnswers WithYes(Question question) => With(question, Choice.Yes);

    /// <summary>The answers with this question answered in words; blank words take the answer back.</summary>
    public ScreeningAnswers WithWords(Question question, string words)
    {
        ArgumentNullException.ThrowIfNull(question);
        if (question.Kind != AnswerKind.Text)
            throw new ArgumentException(
                $"'{question.Key}' is not answered in words.",
                nameof(question)
            );
        return string.IsNullOrWhiteSpace(words) ? Without(question) : Put(question, [words.Trim()]);
    }

    /// <summary>
    /// The answers with a choice ticked, or unticked when it was ticked. "None of these" and the other choices put
    /// each other out; with the last tick gone the question is open again.
    /// </summary>
    public ScreeningAnswers Toggle(Question question, Choice choice)
    {
        ArgumentNullException.ThrowIfNull(question);
        var chosen = Chosen(question);
        if (chosen.Contains(choice))
            return chosen.Length == 1 ? Without(question) : With(question, chosen.Remove(choice));
        return MayStandTogether(question, [.. chosen, choice])
            ? With(question, [.. chosen, choice])
            : With(question, choice);
    }

    /// <summary>The answers with this question open again.</summary>
    public ScreeningAnswers Without(Question question)
    {
        ArgumentNullException.ThrowIfNull(question);
        return this with { Given = Given.Remove(question.Key) };
    }

    /// <summary>Answers compare by content.</summary>
    public bool Equals(ScreeningAnswers? other) =>
        other is not null
        && Given.Count == other.Given.Count
        && Given.All(answer =>
            other.Given.TryGetValue(answer.Key, out var theirs)
            && answer.Value.ToHashSet().SetEquals(theirs)
        );

    /// <inheritdoc />
    public override int GetHashCode() =>
        Given.Keys.Aggregate(0, (hash, key) => hash ^ key.GetHashCode(StringComparison.Ordinal));

    private static bool MayStandTogether(Question question, ImmutableArray<Choice> choices) =>
        question.Kind == AnswerKind.AnyOf && !choices.Contains(Choice.NoneOfThese);

    private ScreeningAnswers Put(Question question, ImmutableArray<string> values) =>
        this with
        {
            Given = Given.SetItem(question.Key, values),
        };
}
