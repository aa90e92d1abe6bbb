using System.Collections.Immutable;
using Practice.Domain.Plans;
using Practice.Handouts.Blocks;

namespace Practice.Handouts.Content;

/// <summary>Drinking, salt, and what must be read before anything is eaten.</summary>
internal static class AdvicePart
{
    public static IEnumerable<Block> Blocks(RaceWeekPlan plan, Reader reader) =>
        [new Heading(2, "Drinking and salt"), Fluids(plan, reader), Cautions(plan, reader)];

    private static SideBySide Fluids(RaceWeekPlan plan, Reader reader)
    {
        var drinking = Column("Drinking", reader.Text(plan.Fluids.Drinking));
        return plan.Fluids.Salting is { } salting
            ? new([drinking, Column("Salt", reader.Text(salting))])
            : new([drinking]);
    }

    private static BlockColumn Column(string title, string text) =>
        new(1, [new Heading(3, title), new Paragraph(text)]);

    private static Callout Cautions(RaceWeekPlan plan, Reader reader)
    {
        var texts = plan
            .Cautions.Where(c => c.ForClient)
            .Select(c => reader.Text(c.Text))
            .Append(
                "A label always wins over this paper: read it for everything you must not eat, each time you buy."
            )
            .Append(
                $"This plan is made for {plan.Header.ClientName} and {reader.Name(plan.Header.RaceName)} alone. It gives "
                    + "way to your doctor, your care team and the rules of licensed practice where you live."
            );
        return new(
            IsCaution: true,
            "Please read before you begin",
            [new Bullets([.. texts.Where(t => t.Length > 0).Select(Words.FromString)])]
        );
    }
}
