using System.Collections.Immutable;
using Practice.Domain.Plans;
using Practice.Domain.Plans.Weeks;
using Practice.Handouts.Blocks;
using Part = Practice.Domain.Plans.Weeks.RaceDayPart;

namespace Practice.Handouts.Content;

/// <summary>Race morning and recovery: a page each, with plates, advice and the practitioner's note.</summary>
internal static class RaceDayMeals
{
    public static IEnumerable<Block> Morning(RaceWeekPlan plan, RaceWeek week, Reader reader) =>
        Blocks(
            "Race morning",
            Part.Morning,
            week.Morning,
            week.MorningAdvice,
            week.MorningNote,
            plan,
            reader
        );

    public static IEnumerable<Block> Recovery(RaceWeekPlan plan, RaceWeek week, Reader reader) =>
        Blocks(
            "After the finish",
            Part.Recovery,
            week.Recovery,
            week.RecoveryAdvice,
            week.RecoveryNote,
            plan,
            reader
        );

    private static IEnumerable<Block> Blocks(
        string title,
        Part part,
        PlanDay day,
        ImmutableArray<Advice> advice,
        string note,
        RaceWeekPlan plan,
        Reader reader
    )
    {
        yield return new Heading(2, title);
        if (day.Occasions.All(o => !o.Portions.IsEmpty))
            yield return DayPart.Menu(day, plan, reader, o => SittingNames.Of(part, day, o));
        yield return new Bullets([
            .. advice.Select(a => Words.FromString(a.For(reader.IsNumberFree))),
        ]);
        if (note.Length > 0)
            yield return new Quote(note, "");
    }
}
