using System.Collections.Immutable;
using Practice.Domain.Plans;
using Practice.Domain.Plans.Weeks;
using Practice.Handouts.Blocks;

namespace Practice.Handouts.Content;

/// <summary>The week at a glance: a row for each day.</summary>
internal static class WeekPart
{
    public static IEnumerable<Block> Blocks(RaceWeekPlan plan, RaceWeek week, Reader reader) =>
        [
            new Heading(2, "Your week at a glance"),
            new Table(
                "The race week: each day with what matters on it.",
                [new("Day", 1.5), new("What matters", 4)],
                [.. week.Days.Select(d => Row(d, plan, reader))],
                null
            ),
        ];

    private static RowGroup Row(WeekDay day, RaceWeekPlan plan, Reader reader) =>
        new(
            new(reader.Dates.ShortDay(day.Date), What(day), OnTheRoad(day, reader)),
            [
                .. Start(day, plan, reader)
                    .Concat(day.Pointers.Select(p => p.For(reader.IsNumberFree)))
                    .Append(day.Note)
                    .Where(t => t.Length > 0)
                    .Select(t => ImmutableArray.Create(Words.FromString(t))),
            ]
        );

    private static IEnumerable<string> Start(WeekDay day, RaceWeekPlan plan, Reader reader)
    {
        if (day.Kind != WeekDayKind.RaceDay)
            yield break;
        var start = plan.Header.RaceStart;
        var atHome = BothClocks.Of(plan, start).AtHome is { } home
            ? $" ({reader.Dates.ShortDay(home.Date)}, {reader.Dates.Time(home.TimeOfDay)} at home)"
            : "";
        yield return $"Start at {reader.Dates.Time(start.TimeOfDay)}{atHome}.";
    }

    private static string OnTheRoad(WeekDay day, Reader reader) =>
        day.Travel is { } travel
            ? $"On the road {reader.Dates.Time(travel.From)} to {reader.Dates.Time(travel.To)}"
            : "";

    private static string What(WeekDay day) =>
        day.Kind switch
        {
            WeekDayKind.Ordinary => "Eat as usual",
            WeekDayKind.LowFibre => "Soft, low in fibre",
            WeekDayKind.Loading => "Loading",
            WeekDayKind.Eve => "The eve: loading",
            WeekDayKind.RaceDay => "Race day",
            _ => "The day after",
        };
}
