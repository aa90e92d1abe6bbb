using System.Collections.Immutable;
using NodaTime.Text;
using Practice.Domain.Plans;
using Practice.Domain.Rehearsals;

namespace Practice.Web.Features.Portal.Answers;

/// <summary>What was eaten: a whole sitting with one tap, or portion by portion.</summary>
internal static class MealAnswers
{
    public const string Some = "some";

    public static string Sitting(RehearsedSitting sitting) =>
        $"ate.{LocalDatePattern.Iso.Format(sitting.Date)}.{sitting.Kind}";

    public static string Portion(RehearsedSitting sitting, Portion portion) =>
        $"{Sitting(sitting)}.{portion.FoodId}";

    public static string Amount(string portion) => PartAnswers.Amount(portion);

    public static string Instead(string portion) => portion + ".instead";

    public static ImmutableArray<EatenOccasion> Read(
        PageAnswers answers,
        IEnumerable<RehearsedSitting> sittings,
        Feedback? earlier
    ) => [.. sittings.Select(s => Read(answers, s, Of(earlier, s))).OfType<EatenOccasion>()];

    private static EatenOccasion? Read(
        PageAnswers answers,
        RehearsedSitting sitting,
        EatenOccasion? earlier
    )
    {
        ImmutableArray<EatenPortion>? portions = Told(answers, sitting) switch
        {
            PartAnswers.All => EatenOccasion.AsPlanned(sitting).Portions,
            PartAnswers.None => [.. sitting.Portions.Select(p => EatenPortion.Left(p.FoodId))],
            Some =>
            [
                .. sitting
                    .Portions.Select(p => Read(answers, p, Portion(sitting, p)))
                    .OfType<EatenPortion>(),
            ],
            _ => null,
        };
        return portions is { } told
            ? new EatenOccasion(sitting.Date, sitting.Kind, told, earlier?.Extras ?? [])
            : null;
    }

    // a browser too old to fold the portions away lets them be told without "some of it" being chosen
    private static string Told(PageAnswers answers, RehearsedSitting sitting) =>
        answers[Sitting(sitting)] is { Length: > 0 } told ? told
        : sitting.Portions.Any(p => answers[Portion(sitting, p)].Length > 0) ? Some
        : "";

    private static EatenPortion? Read(PageAnswers answers, Portion planned, string field) =>
        answers[field] switch
        {
            PartAnswers.All => EatenPortion.AsPlanned(planned.FoodId),
            PartAnswers.Half => EatenPortion.Amount(planned.FoodId, 0.5m),
            PartAnswers.None => EatenPortion.Left(planned.FoodId),
            PartAnswers.Other => Other(answers, planned, field),
            _ => null,
        };

    private static EatenPortion? Other(PageAnswers answers, Portion planned, string field)
    {
        if (answers.Text(Instead(field)) is { Length: > 0 } words)
            return EatenPortion.Replaced(planned.FoodId, words);
        if (answers.Number(Amount(field), 0, 4) is { } part)
            return EatenPortion.Amount(planned.FoodId, part);
        answers.Refuse(Amount(field), "Choose how much, or say what you ate instead.");
        return null;
    }

    public static void Write(
        PageAnswers answers,
        IEnumerable<RehearsedSitting> sittings,
        Feedback feedback
    )
    {
        foreach (var sitting in sittings)
            if (Of(feedback, sitting) is { } told)
                Write(answers, sitting, told);
    }

    private static void Write(PageAnswers answers, RehearsedSitting sitting, EatenOccasion told)
    {
        var portions = sitting.Portions.Select(p => told.Find(p.FoodId)).ToList();
        answers[Sitting(sitting)] =
            portions.TrueForAll(p => p?.How == EatenHow.AsPlanned) ? PartAnswers.All
            : portions.TrueForAll(p => p?.How == EatenHow.NotEaten) ? PartAnswers.None
            : Some;
        if (!answers.Is(Sitting(sitting), Some))
            return;
        foreach (var portion in portions.OfType<EatenPortion>())
            Write(answers, $"{Sitting(sitting)}.{portion.FoodId}", portion);
    }

    private static void Write(PageAnswers answers, string field, EatenPortion told)
    {
        answers[field] = told.How switch
        {
            EatenHow.AsPlanned => PartAnswers.All,
            EatenHow.NotEaten => PartAnswers.None,
            EatenHow.SomethingElse => PartAnswers.Other,
            _ => PartAnswers.Word(told.Part),
        };
        if (told.How == EatenHow.SomethingElse)
            answers[Instead(field)] = told.Instead?.Name ?? told.Words;
        else if (answers.Is(field, PartAnswers.Other))
            answers.Number(Amount(field), told.Part);
    }

    private static EatenOccasion? Of(Feedback? feedback, RehearsedSitting sitting) =>
        feedback?.Occasions.FirstOrDefault(o => o.Date == sitting.Date && o.Kind == sitting.Kind);
}
