using Practice.Handouts.Blocks;

namespace Practice.Handouts.Paper.Layout;

/// <summary>
/// Sections in two columns of like height, read down the first and then down the second; one column in large type
/// and for a section longer than a page. A list longer than a page is cut into pages of columns.
/// </summary>
internal static class CheckListLayout
{
    private const double Gap = 24;

    public static List<Slab> Lay(CheckList list, Setting setting, double width)
    {
        var column = (width - Gap) / 2;
        var sections = list.Sections.Select(s => Section(s, setting, column)).ToList();
        var room = setting.Page.BodyHeight - setting.Type.Space(70);
        return setting.Type.IsLarge || sections.Exists(s => HeightOf(s) > room)
            ? [.. list.Sections.SelectMany(s => Section(s, setting, width))]
            : [.. Pages(sections, room).Select(page => Columns(page, column))];
    }

    /// <summary>Sections that fit one page in two columns, then those of the next.</summary>
    private static IEnumerable<List<List<Slab>>> Pages(List<List<Slab>> sections, double room)
    {
        var page = new List<List<Slab>>();
        var used = 0.0;
        foreach (var section in sections)
        {
            var height = HeightOf(section);
            // columns are cut between sections: the longer one is at most half of all and half a section
            var largest = page.Append(section).Max(HeightOf);
            if (page.Count > 0 && (used + height + largest) / 2 > room)
            {
                yield return page;
                (page, used) = ([], 0);
            }
            page.Add(section);
            used += height;
        }
        if (page.Count > 0)
            yield return page;
    }

    private static Slab Columns(List<List<Slab>> sections, double width)
    {
        var cut = Enumerable
            .Range(1, sections.Count)
            .MinBy(n => Math.Max(sections[..n].Sum(HeightOf), sections[n..].Sum(HeightOf)));
        List<Slab>[] columns =
        [
            [.. sections[..cut].SelectMany(s => s)],
            [.. sections[cut..].SelectMany(s => s)],
        ];
        return new()
        {
            Height = columns.Max(Slab.HeightOf),
            Before = 8,
            Draw = (x, y) =>
            {
                foreach (var column in columns)
                {
                    Slab.DrawAll(column, x, y);
                    x += width + Gap;
                }
            },
        };
    }

    private static double HeightOf(List<Slab> section) =>
        Slab.HeightOf(section) + section[0].Before;

    private static List<Slab> Section(CheckSection section, Setting setting, double width)
    {
        var title = HeadingLayout.Lay(new Heading(3, section.Title), setting, width);
        var last = section.Items.Length - 1;
        return
        [
            title,
            .. section.Items.Select((item, i) => Item(item, i == 0, i == last, setting, width)),
        ];
    }

    private static Slab Item(
        CheckItem item,
        bool isFirst,
        bool isLast,
        Setting setting,
        double width
    )
    {
        var (canvas, theme, type) = (setting.Canvas, setting.Theme, setting.Type);
        var box = type.Gentle(9);
        var indent = box + type.Gentle(7);
        var amountWidth = (width - indent) * 0.48;
        var amount = new TextBox(canvas, item.Amount, amountWidth, type.Small);
        var text = new TextBox(
            canvas,
            item.Text,
            width - indent - Math.Min(amountWidth, amount.UsedWidth) - 8,
            type.Cell
        );
        var padding = type.Gentle(3);
        var height = Math.Max(text.Height, amount.Height) + 2 * padding;
        return new()
        {
            Height = height,
            Before = isFirst ? 2 : 0,
            KeepsWithNext = isFirst && !isLast,
            Draw = (x, y) =>
            {
                canvas.Decoration(() =>
                {
                    var middle = y + padding + text.LineHeight / 2;
                    canvas.Outline(new(x + 0.5, middle - box / 2, box, box), theme.Soft, 0.8, 1.6);
                    canvas.Line(x + indent, y + height, x + width, y + height, theme.Hairline, 0.5);
                });
                if (isFirst)
                    canvas.Begin(new("L"));
                canvas.Begin(new("LI"));
                canvas.Tagged(
                    new("LBody"),
                    () =>
                    {
                        text.Draw(x + indent, y + padding, setting.OnSheet);
                        canvas.Text(
                            " ",
                            x + indent + text.UsedWidth,
                            y + padding + 8,
                            new(Face.Regular, 8),
                            theme.Soft
                        );
                        amount.Draw(
                            x + width - amountWidth,
                            y + padding + (text.LineHeight - amount.LineHeight) / 2,
                            Inks.Only(theme.Soft),
                            Align.Right
                        );
                    }
                );
                canvas.End();
                if (isLast)
                    canvas.End();
            },
        };
    }
}
