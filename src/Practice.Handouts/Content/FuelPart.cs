using Practice.Domain.Physiology;
using Practice.Domain.Plans;
using Practice.Domain.Plans.Weeks;
using Practice.Handouts.Blocks;

namespace Practice.Handouts.Content;

/// <summary>Glycogen from the first loading meal to the finish, to explain what the plan is for. Nothing for readers without numbers.</summary>
internal static class FuelPart
{
    public static IEnumerable<Block> Blocks(RaceWeekPlan plan, Reader reader)
    {
        if (reader.IsNumberFree || FuelStory.Of(plan) is not { } story)
            yield break;
        yield return new Together([
            new Heading(2, "Fuel in legs and liver"),
            new BandChart(
                $"Expected, {FuelDrawing.Unit}",
                [.. story.With.Points.Select(p => PointOf(story, p))],
                [.. story.WithoutPlan().Select(p => PointOf(story, p))],
                [.. story.Marks().Select(m => new BandMark(m.Place, m.Label))],
                "Line: with this plan; shaded: where nine guesses of ten lie. Dashed: usual diet, no breakfast, nothing on the way.",
                "Curve with its band: up over the loading days, down a little over night, up with breakfast, down over the course. What it comes to is said below it."
            ),
            new Paragraph(
                $"{story.InWords()} {FuelDrawing.Purpose} Nobody measured it in you, and no amount in this plan follows from it.",
                IsQuiet: true
            ),
        ]);
    }

    private static BandPoint PointOf(FuelStory story, FuelPoint point) =>
        new(story.PlaceOf(point), point.ExpectedG, point.LowG, point.HighG);
}
