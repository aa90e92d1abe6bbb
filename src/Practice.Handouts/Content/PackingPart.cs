using System.Collections.Immutable;
using Practice.Domain.Plans.Weeks;
using Practice.Handouts.Blocks;

namespace Practice.Handouts.Content;

/// <summary>What to pack, on a page of its own to tick off.</summary>
internal static class PackingPart
{
    public static IEnumerable<Block> Blocks(ImmutableArray<PackItem> items) =>
        items.IsEmpty
            ? []
            :
            [
                new Heading(2, "Packing list", NewPage: true),
                new CheckList([
                    .. items
                        .GroupBy(i => i.Section)
                        .Select(g => new CheckSection(
                            g.Key,
                            [.. g.Select(i => new CheckItem(i.What, ""))]
                        )),
                ]),
            ];
}
