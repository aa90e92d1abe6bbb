using Practice.Domain.Plans;
using Practice.Domain.Practices;
using Practice.Handouts.Blocks;

namespace Practice.Handouts.Content;

/// <summary>The loading plan as a paper: every word and rounded number on it. Pure; layout adds nothing.</summary>
public static class LoadingHandout
{
    /// <summary>Builds the paper of a plan.</summary>
    public static HandoutDoc Build(
        RaceWeekPlan plan,
        PracticeProfile practice,
        HandoutOptions options
    )
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(practice);
        ArgumentNullException.ThrowIfNull(options);
        var reader = Reader.Of(plan, options);
        if (reader.IsNumberFree)
            plan = WithoutNumbers.Of(plan);
        return Letterhead.Paper(
            "Carbohydrate-loading plan",
            plan,
            practice,
            options,
            reader,
            [
                CoverPart.Band("carbohydrate-loading plan", plan, options, reader),
                CoverPart.InShort(plan, reader),
                .. CoverPart.Note(plan, options),
                .. OverviewPart.Blocks(plan, reader),
                .. AdvicePart.Blocks(plan),
                .. plan.Days.SelectMany(day => DayPart.Blocks(day, plan, reader)),
                .. ShoppingPart.Blocks(ShoppingList.For(plan), plan.Days, reader),
                .. CoverPart.Closing(practice, reader),
            ]
        );
    }
}
