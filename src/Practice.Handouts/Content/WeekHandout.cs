using System.Collections.Immutable;
using Practice.Domain.Plans;
using Practice.Domain.Plans.Weeks;
using Practice.Domain.Practices;
using Practice.Handouts.Blocks;

namespace Practice.Handouts.Content;

/// <summary>The papers of the race week. Pure: every word and rounded number is here; layout adds nothing.</summary>
public static class WeekHandout
{
    /// <summary>The whole race-week plan: cover, week at a glance, day pages, course, recovery, lists.</summary>
    /// <exception cref="InvalidOperationException">The week was not laid out yet.</exception>
    public static HandoutDoc Build(
        RaceWeekPlan plan,
        PracticeProfile practice,
        HandoutOptions options
    )
    {
        var (reader, safe) = Prepare(plan, practice, options);
        var week =
            safe.Week ?? throw new InvalidOperationException("The week was not laid out yet.");
        return Letterhead.Paper(
            "Race-week plan",
            safe,
            practice,
            options,
            reader,
            [
                CoverPart.Band("race-week plan", safe, options, reader),
                CoverPart.InShort(safe, reader),
                .. CoverPart.Note(safe, options),
                new Heading(2, "Why this plan"),
                new Paragraph(safe.Why),
                .. AdvicePart.Blocks(safe),
                .. WeekPart.Blocks(safe, week, reader),
                .. RestOfWeekPart.Blocks(week, reader),
                .. safe.Days.SelectMany(day => DayPart.Blocks(day, safe, reader)),
                .. RaceDayMeals.Morning(safe, week, reader),
                .. CourseSchedule.Blocks(safe, reader),
                .. FuelPart.Blocks(safe, reader),
                .. RaceDayMeals.Recovery(safe, week, reader),
                .. Flowing(Shopping(safe, reader)),
                .. PackingPart.Blocks(Packing.Of(safe)),
                .. CoverPart.Closing(practice, reader),
            ]
        );
    }

    /// <summary>The shopping list of the whole week alone.</summary>
    public static HandoutDoc ShoppingListOf(
        RaceWeekPlan plan,
        PracticeProfile practice,
        HandoutOptions options
    )
    {
        var (reader, safe) = Prepare(plan, practice, options);
        return List("Shopping list", safe, practice, options, reader, Shopping(safe, reader));
    }

    /// <summary>The packing list alone.</summary>
    public static HandoutDoc PackingListOf(
        RaceWeekPlan plan,
        PracticeProfile practice,
        HandoutOptions options
    )
    {
        var (reader, safe) = Prepare(plan, practice, options);
        return List(
            "Packing list",
            safe,
            practice,
            options,
            reader,
            PackingPart.Blocks(Packing.Of(safe))
        );
    }

    private static HandoutDoc List(
        string title,
        RaceWeekPlan plan,
        PracticeProfile practice,
        HandoutOptions options,
        Reader reader,
        IEnumerable<Block> blocks
    ) =>
        Letterhead.Paper(
            title,
            plan,
            practice,
            options,
            reader,
            [CoverPart.Band(title.ToLowerInvariant(), plan, options, reader), .. Flowing(blocks)]
        );

    /// <summary>The same, going on where the page is.</summary>
    private static IEnumerable<Block> Flowing(IEnumerable<Block> blocks) =>
        blocks.Select(b => b is Heading { NewPage: true } h ? h with { NewPage = false } : b);

    private static IEnumerable<Block> Shopping(RaceWeekPlan plan, Reader reader) =>
        ShoppingPart.Blocks(ShoppingList.ForWeek(plan), [.. plan.EveryDay], reader);

    internal static (Reader Reader, RaceWeekPlan Plan) Prepare(
        RaceWeekPlan plan,
        PracticeProfile practice,
        HandoutOptions options
    )
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(practice);
        ArgumentNullException.ThrowIfNull(options);
        var reader = Reader.Of(plan, options);
        return (reader, reader.IsNumberFree ? WithoutNumbers.Of(plan) : plan);
    }
}
