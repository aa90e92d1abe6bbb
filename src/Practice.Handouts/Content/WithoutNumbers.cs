using System.Text.RegularExpressions;
using Practice.Domain.Plans;
using Practice.Domain.Screening;

namespace Practice.Handouts.Content;

/// <summary>
/// Takes numbers with units out of text that was written for everyone. Better a sentence too few than a number before
/// the eyes of somebody whom numbers harm.
/// </summary>
public static partial class WithoutNumbers
{
    /// <summary>The plan with all its texts and names made safe.</summary>
    public static RaceWeekPlan Of(RaceWeekPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return plan with
        {
            Header = plan.Header with
            {
                RaceName = Name(plan.Header.RaceName),
                RacePlace = Name(plan.Header.RacePlace),
            },
            Days = [.. plan.Days.Select(d => d with { Occasions = [.. d.Occasions.Select(Of)] })],
            Fluids = new(
                Sentences(plan.Fluids.Drinking),
                plan.Fluids.Salting is { } salting ? Sentences(salting) : null
            ),
            Cautions = [.. plan.Cautions.Select(c => c with { Text = Sentences(c.Text) })],
            Why = Sentences(plan.Why),
            Note = Sentences(plan.Note),
        };
    }

    private static Occasion Of(Occasion occasion) =>
        occasion with
        {
            Portions = [.. occasion.Portions.Select(p => p with { Name = Name(p.Name) })],
        };

    /// <summary>The text without the sentences that hold a number with a unit.</summary>
    public static string Sentences(string text) =>
        NumberFree.Allows(text)
            ? text
            : string.Join(' ', SentenceEnd().Split(text).Where(NumberFree.Allows));

    /// <summary>The name without its numbers: <c>Carbohydrate drink, 6 %</c> is a carbohydrate drink.</summary>
    public static string Name(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        foreach (var number in NumberFree.Violations(name))
            name = name.Replace(number, "", StringComparison.Ordinal);
        return Leftover().Replace(name, "").Trim(' ', ',', '\u00A0');
    }

    [GeneratedRegex(@"(?<=[.!?])\s+|\n+")]
    private static partial Regex SentenceEnd();

    [GeneratedRegex(@"\(\s*\)|[\s,]+(?=,)|\s{2,}")]
    private static partial Regex Leftover();
}
