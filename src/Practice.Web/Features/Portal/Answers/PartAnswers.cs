namespace Practice.Web.Features.Portal.Answers;

/// <summary>How much of something was eaten: all, half, none, or another part of it chosen beside.</summary>
internal static class PartAnswers
{
    public const string All = "all";
    public const string Half = "half";
    public const string None = "none";
    public const string Other = "other";

    /// <summary>Parts to choose from where the amount has no measure of its own.</summary>
    public static IReadOnlyList<(decimal Part, string Words)> Others { get; } =
    [
        (0.25m, "a quarter"),
        (0.75m, "three quarters"),
        (1.5m, "one and a half times"),
        (2m, "twice as much"),
    ];

    /// <summary>The field beside, for another part.</summary>
    public static string Amount(string field) => field + ".amount";

    /// <summary>The part; null when nothing is told.</summary>
    public static decimal? Read(PageAnswers answers, string field)
    {
        switch (answers[field])
        {
            case All:
                return 1;
            case Half:
                return 0.5m;
            case None:
                return 0;
            case Other:
                var part = answers.Number(Amount(field), 0, 2);
                if (part is null)
                    answers.Refuse(Amount(field), "Choose how much.");
                return part;
            default:
                return null;
        }
    }

    public static void Write(PageAnswers answers, string field, decimal? part)
    {
        if (part is not { } told)
            return;
        answers[field] = Word(told);
        if (answers.Is(field, Other))
            answers.Number(Amount(field), told);
    }

    public static string Word(decimal part) =>
        part switch
        {
            1 => All,
            0.5m => Half,
            0 => None,
            _ => Other,
        };
}
