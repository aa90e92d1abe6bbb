using System.Collections.Immutable;
using Practice.Domain.Plans;
using Practice.Handouts.Blocks;

namespace Practice.Handouts.Content;

/// <summary>Drinking, salt, and what must be read before anything is eaten.</summary>
internal static class AdvicePart
{
    public static IEnumerable<Block> Blocks(RaceWeekPlan plan) =>
        [
            new Together([Cautions(plan)]),
            new Together([
                new Heading(2, plan.Fluids.Salting is null ? "Drinking" : "Drinking and salt"),
                Fluids(plan),
            ]),
        ];

    private static Block Fluids(RaceWeekPlan plan)
    {
        var drinking = plan.Fluids.Drinking;
        return plan.Fluids.Salting is { } salting
            ? new SideBySide([Column("Drinking", drinking), Column("Salt", salting)])
            : new Paragraph(drinking);
    }

    private static BlockColumn Column(string title, string text) =>
        new(1, [new Heading(3, title), new Paragraph(text)]);

    private static Callout Cautions(RaceWeekPlan plan)
    {
        var texts = plan
            .Cautions.Where(c => c.ForClient)
            .Select(c => c.Text)
            .Append(
                "A label always wins over this paper: read it for everything you must not eat, each time you buy."
            )
            .Append(
                $"This plan is made for {plan.Header.ClientName} and {plan.Header.RaceName} alone: please do "
                    + "not pass it on."
            );
        return new(
            IsCaution: true,
            "Please read before you begin",
            [new Bullets([.. texts.Where(t => t.Length > 0).Select(Words.FromString)])]
        );
    }
}
