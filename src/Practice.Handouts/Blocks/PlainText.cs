using System.Globalization;
using System.Text;

namespace Practice.Handouts.Blocks;

/// <summary>A paper as plain text: every word a reader of it meets, in reading order.</summary>
public static class PlainText
{
    /// <summary>The text of a paper.</summary>
    public static string Of(HandoutDoc doc)
    {
        ArgumentNullException.ThrowIfNull(doc);
        var text = new StringBuilder();
        void Line(string line) => text.Append(line).Append('\n');
        Line($"{doc.Title} [{doc.Language}]");
        Line($"Head: {doc.RunningHead}");
        foreach (var foot in doc.Foot)
            Line($"Foot: {foot}");
        foreach (var line in doc.Blocks.SelectMany(Lines))
            Line(line);
        return text.ToString();
    }

    private static IEnumerable<string> Lines(Block block) =>
        block switch
        {
            Cover b =>
            [
                $"# {b.Kicker}: {b.Title}",
                .. b.Lines,
                .. b.Countdown is { } c ? new[] { $"{c.Figure} {c.Caption}" } : [],
            ],
            Facts b => b.Items.Select(f => $"- {f.Label}: {f.Value} {f.Note}".TrimEnd()),
            Heading b => ["", $"{new string('#', b.Level)} {b.Text}"],
            Paragraph b => [b.Words.Plain],
            Bullets b => b.Items.Select(i => $"- {i.Plain}"),
            Quote b => [$"> {b.Words.Plain}", $"> {b.By}"],
            Callout b =>
            [
                "",
                $"### {b.Title}{(b.IsCaution ? " (!)" : "")}",
                .. b.Body.SelectMany(Lines),
            ],
            Timeline b => b.Items.Select(i => $"* {i.When} | {i.What} | {i.Detail}"),
            BandChart b =>
            [
                $"[{b.Alt}]",
                $"[{b.Title}: {string.Join(", ", b.Marks.Select(m => m.Label))}; {b.Legend}]",
            ],
            BarChart b => [$"[{b.Alt}]", $"[{b.Title}: {Bars(b)}; {b.Legend}]"],
            Table b => Lines(b),
            CheckList b => b.Sections.SelectMany(s =>
                new[] { "", $"### {s.Title}" }.Concat(
                    s.Items.Select(i => $"[ ] {i.Text}: {i.Amount}".TrimEnd(' ', ':'))
                )
            ),
            ScoreBoxes b =>
            [
                $"[ ] {string.Join(" | ", b.Columns)}",
                .. b.Rows.Select(r => $"[ ] {r}"),
            ],
            CameraCode b => ["", $"[{b.Alt}]", $"### {b.Title}", b.Text],
            NoteLines b => ["", $"____ {b.Label}"],
            SideBySide b => b.Columns.SelectMany(c => c.Blocks).SelectMany(Lines),
            CardSide b =>
            [
                "",
                $"{(b.IsFront ? "#" : "##")} {b.Title}",
                .. b.Blocks.SelectMany(Lines),
            ],
            Together b => b.Blocks.SelectMany(Lines),
            _ => throw new NotSupportedException($"No text for {block.GetType().Name}."),
        };

    private static IEnumerable<string> Lines(Table table) =>
        [
            $"[{table.Summary}]",
            string.Join(" | ", table.Columns.Select(c => c.Header)),
            .. table.Groups.SelectMany(g =>
                new[] { $"{g.Head.Lead} {g.Head.Title}: {g.Head.Note}".TrimEnd(' ', ':') }.Concat(
                    g.Rows.Select(row => "  " + string.Join(" | ", row.Select(c => c.Plain)))
                )
            ),
            .. table.Total is { } t ? new[] { $"{t.Label}: {t.Value} ({t.Remark})" } : [],
        ];

    private static string Bars(BarChart chart) =>
        string.Join(
            ", ",
            chart.Bars.Select(b =>
                string.Create(CultureInfo.InvariantCulture, $"{b.Label} {b.Value}/{b.Aim}")
            )
        );
}
