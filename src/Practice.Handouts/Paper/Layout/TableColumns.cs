using Practice.Handouts.Blocks;

namespace Practice.Handouts.Paper.Layout;

/// <summary>Where the columns of a table stand.</summary>
internal sealed class TableColumns
{
    public const double Padding = 5;

    private readonly double[] _widths;

    private TableColumns(double[] widths) => _widths = widths;

    public double WidthOf(int column) => _widths[column];

    /// <summary>Room for text in a column; the outer columns are flush with the text around the table.</summary>
    public double RoomOf(int column) =>
        _widths[column]
        - (column == 0 ? 0 : Padding)
        - (column == _widths.Length - 1 ? 0 : Padding);

    /// <summary>Where the text of a column begins.</summary>
    public double LeftOf(int column) => _widths[..column].Sum() + (column == 0 ? 0 : Padding);

    /// <summary>By weight, but none narrower than its longest word; what that costs, the widest pays.</summary>
    public static TableColumns Of(Table table, Setting setting, double width)
    {
        var unit = width / table.Columns.Sum(c => c.Weight);
        var widths = table.Columns.Select(c => c.Weight * unit).ToArray();
        for (var i = 0; i < widths.Length; i++)
        {
            var least = Math.Min(LongestWord(table, i, setting) + 2 * Padding + 1, width * 0.4);
            var widest = Array.IndexOf(widths, widths.Max());
            if (widths[i] >= least || i == widest)
                continue;
            widths[widest] -= least - widths[i];
            widths[i] = least;
        }
        return new(widths);
    }

    private static double LongestWord(Table table, int column, Setting setting)
    {
        var style = setting.Type.Cell with { IsFigure = table.Columns[column].IsFigure };
        return CellsOf(table, column)
            .Append(table.Columns[column].Header)
            .Max(words => TextBox.LongestWord(setting.Canvas, words, style));
    }

    private static IEnumerable<Words> CellsOf(Table table, int column) =>
        column == 0
            ? table.Groups.SelectMany(g => new Words[] { g.Head.Title, g.Head.Note })
            : table.Groups.SelectMany(g => g.Rows).Select(row => row[column - 1]);
}
