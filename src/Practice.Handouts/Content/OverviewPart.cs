using System.Collections.Immutable;
using Practice.Domain.Plans;
using Practice.Handouts.Blocks;

namespace Practice.Handouts.Content;

/// <summary>Why this plan, and the days at a glance.</summary>
internal static class OverviewPart
{
    public static IEnumerable<Block> Blocks(RaceWeekPlan plan, Reader reader) =>
        [
            new Heading(2, "Why this plan"),
            new Paragraph(plan.Why),
            new Heading(2, "Your days at a glance"),
            new Timeline([
                .. plan.Days.Select((d, i) => Moment(d, i, plan, reader)),
                Start(plan, reader),
            ]),
        ];

    private static Milestone Moment(PlanDay day, int index, RaceWeekPlan plan, Reader reader)
    {
        var what = plan.Days.Length == 1 ? "Loading day" : $"Loading day {index + 1}";
        if (day.Occasions.IsEmpty)
            return new(reader.Dates.ShortDay(day.Date), what, "");
        var from = $"from {reader.Dates.Time(day.Occasions[0].Time)}";
        var sittings = KitchenNumber.Phrase(day.Occasions.Length, "sitting", "sittings");
        var detail = reader.IsNumberFree
            ? $"{from}, {sittings}"
            : $"{from}, {sittings}, {DisplayTotals.Of(day).CarbohydrateG}\u00A0g";
        return new(reader.Dates.ShortDay(day.Date), what, detail);
    }

    private static Milestone Start(RaceWeekPlan plan, Reader reader) =>
        new(
            reader.Dates.ShortDay(plan.Header.RaceStart.Date),
            "Race day",
            $"start at {reader.Dates.Time(plan.Header.RaceStart.TimeOfDay)}",
            IsGoal: true
        );
}
