using System.Collections.Immutable;
using System.Text.RegularExpressions;
using Practice.Domain.Course;
using Practice.Domain.Plans;
using Practice.Domain.Plans.Weeks;
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
            Days = [.. plan.Days.Select(Of)],
            Week = plan.Week is { } week ? Of(week) : null,
            Course = plan.Course is { } course ? Of(course) : null,
            Fluids = new(
                Sentences(plan.Fluids.Drinking),
                plan.Fluids.Salting is { } salting ? Sentences(salting) : null
            ),
            Cautions = [.. plan.Cautions.Select(c => c with { Text = Sentences(c.Text) })],
            Why = Sentences(plan.Why),
            Note = Sentences(plan.Note),
        };
    }

    private static PlanDay Of(PlanDay day) =>
        day with
        {
            Occasions = [.. day.Occasions.Select(Of)],
        };

    private static RaceWeek Of(RaceWeek week) =>
        week with
        {
            Days =
            [
                .. week.Days.Select(d =>
                    d with
                    {
                        Pointers = Of(d.Pointers),
                        Note = Sentences(d.Note),
                    }
                ),
            ],
            Morning = Of(week.Morning),
            MorningAdvice = Of(week.MorningAdvice),
            MorningNote = Sentences(week.MorningNote),
            Recovery = Of(week.Recovery),
            RecoveryAdvice = Of(week.RecoveryAdvice),
            RecoveryNote = Sentences(week.RecoveryNote),
            Fluids = Of(week.Fluids),
            Caffeine = Of(week.Caffeine),
            Sleep = Of(week.Sleep),
            DoNotTry = [.. week.DoNotTry.Select(Sentences)],
            Packing = [.. week.Packing.Select(p => p with { What = Name(p.What) })],
        };

    private static ImmutableArray<Advice> Of(ImmutableArray<Advice> advice) =>
        [.. advice.Select(a => new Advice(Sentences(a.Words))).Where(a => a.Words.Length > 0)];

    private static CoursePlan Of(CoursePlan course) =>
        course with
        {
            Steps =
            [
                .. course.Steps.Select(s =>
                    s with
                    {
                        Name = Name(s.Name),
                        Words = Name(s.Words),
                        Station = s.Station is { } station ? Name(station) : null,
                    }
                ),
            ],
            Advice = [.. course.Advice.Select(Sentences).Where(a => a.Length > 0)],
        };

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
