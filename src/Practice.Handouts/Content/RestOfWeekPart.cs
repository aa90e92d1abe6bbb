using Practice.Domain.Plans.Weeks;
using Practice.Domain.Quantities;
using Practice.Handouts.Blocks;

namespace Practice.Handouts.Content;

/// <summary>Heat, caffeine, sleep and what not to try.</summary>
internal static class RestOfWeekPart
{
    public static IEnumerable<Block> Blocks(RaceWeek week, Reader reader)
    {
        if (week.Heat is { } heat)
            yield return new Callout(
                IsCaution: heat.Colour >= Domain.Physiology.HeatColour.Red,
                $"Heat: {heat.Colour.ToString().ToLowerInvariant()} flag expected",
                [
                    new Paragraph(
                        $"Heat stress of about {Rounding.Shown(heat.WetBulbGlobeC, 0)} °C, 3 either way, from the forecast. Look at the organiser's flag on the day.",
                        IsQuiet: true
                    ),
                    new Bullets([.. heat.Actions.Select(Words.FromString)]),
                ]
            );
        yield return new Heading(2, "Sleep, caffeine, and what not to try");
        yield return new SideBySide([
            new(
                1,
                [
                    new Heading(3, "Sleep"),
                    List(week.Sleep, reader),
                    new Heading(3, "Caffeine"),
                    List(week.Caffeine, reader),
                ]
            ),
            new(
                1,
                [
                    new Heading(3, "Not this week"),
                    new Bullets([.. week.DoNotTry.Select(Words.FromString)]),
                ]
            ),
        ]);
    }

    private static Bullets List(IEnumerable<Advice> advice, Reader reader) =>
        new([.. advice.Select(a => Words.FromString(a.For(reader.IsNumberFree)))]);
}
