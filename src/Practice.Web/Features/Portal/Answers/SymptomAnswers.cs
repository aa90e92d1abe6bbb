using System.Collections.Immutable;
using System.Globalization;
using Practice.Domain.Rehearsals;

namespace Practice.Web.Features.Portal.Answers;

/// <summary>
/// What was felt, moment by moment. On a run that nobody watches the scale is answered afterwards, looking back
/// (science: Gaskell 2019 asks every half hour, or at the end for runs alone).
/// </summary>
internal static class SymptomAnswers
{
    public const string None = "none";
    public const string Some = "some";

    /// <summary>The minute of the run from which something was felt.</summary>
    public const string Minute = "felt.During.minute";

    public static ImmutableArray<SymptomMoment> Moments { get; } =
    [.. Enum.GetValues<SymptomMoment>()];

    public static ImmutableArray<SymptomItem> Items { get; } = [.. Enum.GetValues<SymptomItem>()];

    public static string Moment(SymptomMoment moment) => $"felt.{moment}";

    public static string Item(SymptomMoment moment, SymptomItem item) => $"felt.{moment}.{item}";

    public static ImmutableArray<Symptom> Read(PageAnswers answers) =>
        [.. Moments.SelectMany(moment => Read(answers, moment))];

    private static IEnumerable<Symptom> Read(PageAnswers answers, SymptomMoment moment)
    {
        var minute = moment == SymptomMoment.During ? (int?)answers.Number(Minute, 0, 1440) : null;
        return Told(answers, moment) switch
        {
            None => Items.Select(item => new Symptom(item, moment, 0)),
            Some => Items.Select(item => new Symptom(
                item,
                moment,
                Score(answers, Item(moment, item)),
                minute
            )),
            _ => [],
        };
    }

    // a browser too old to fold the scales away lets them be moved without "something" being chosen
    private static string Told(PageAnswers answers, SymptomMoment moment) =>
        answers[Moment(moment)] is { Length: > 0 } told ? told
        : Items.Any(item => Score(answers, Item(moment, item)) > 0) ? Some
        : "";

    private static int Score(PageAnswers answers, string field) =>
        (int)(answers.Number(field, 0, Symptom.Worst) ?? 0);

    public static void Write(PageAnswers answers, ImmutableArray<Symptom> symptoms)
    {
        foreach (var felt in symptoms.GroupBy(s => s.Moment))
        {
            answers[Moment(felt.Key)] = felt.Any(s => s.Score > 0) ? Some : None;
            foreach (var item in felt.GroupBy(s => s.Item))
                answers[Item(felt.Key, item.Key)] = item.Max(s => s.Score)
                    .ToString(CultureInfo.InvariantCulture);
            if (felt.Min(s => s.MinutesIntoRun) is { } minute)
                answers.Number(Minute, minute);
        }
    }
}
