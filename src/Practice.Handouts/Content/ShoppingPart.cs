using System.Collections.Immutable;
using Practice.Domain.Plans;
using Practice.Handouts.Blocks;

namespace Practice.Handouts.Content;

/// <summary>What to buy, on a page of its own to take along.</summary>
internal static class ShoppingPart
{
    public static IEnumerable<Block> Blocks(
        ImmutableArray<ShoppingSection> sections,
        IReadOnlyList<PlanDay> eaten,
        Reader reader
    )
    {
        if (sections.IsEmpty)
            return [];
        var dates = reader.Dates;
        var days =
            eaten[0].Date == eaten[^1].Date
                ? dates.Day(eaten[0].Date)
                : $"{dates.Day(eaten[0].Date)} to {dates.Day(eaten[^1].Date)}";
        // that dry rice and pasta weigh under half of what they weigh cooked is general knowledge, no source
        var intro =
            $"For one person, {days}. "
            + (
                reader.IsNumberFree
                    ? "Whole pieces are rounded up. Amounts are as eaten: dry rice, pasta and grains swell to more than twice as much."
                    : "Rounded up to packs as shops commonly sell them: take the nearest yours has. Weights are as eaten unless the food is named dry."
            );
        return
        [
            new Heading(2, "Shopping list", NewPage: true),
            new Paragraph(intro, IsQuiet: true),
            new CheckList([
                .. sections.Select(s => new CheckSection(
                    s.Title,
                    [.. s.Items.Select(i => Item(i, reader))]
                )),
            ]),
        ];
    }

    private static CheckItem Item(ShoppingItem item, Reader reader) =>
        reader.IsNumberFree
            ? new(item.Name, item.ToBuyInWords(reader.Units))
            : new(item.NameInShop(reader.Units), item.ToBuy(reader.Units));
}
