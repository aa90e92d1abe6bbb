using Practice.Handouts.Blocks;

namespace Practice.Handouts.Paper;

/// <summary>Where text stands in its width.</summary>
internal enum Align
{
    Left,
    Right,
    Centre,
}

/// <summary>Text broken into lines of a width. Breaks at spaces; a word too long for a line breaks anywhere.</summary>
internal sealed class TextBox
{
    private readonly record struct Piece(string Text, RunStyle Style, string? Language);

    private readonly record struct Fragment(Piece Piece, double X, double Width);

    private readonly ICanvas _canvas;
    private readonly TextStyle _style;
    private readonly double _width;
    private readonly double _ascent;
    private readonly List<Fragment[]> _lines = [];

    public TextBox(ICanvas canvas, Words words, double width, TextStyle style)
    {
        (_canvas, _style, _width) = (canvas, style, width);
        var font = FontOf(RunStyle.Plain);
        var (ascent, descent) = (canvas.Ascent(font), canvas.Descent(font));
        _ascent = (LineHeight - ascent - descent) / 2 + ascent;
        foreach (var paragraph in Paragraphs(words))
            Break(paragraph);
    }

    public int LineCount => _lines.Count;

    public double LineHeight => _style.Size * _style.Leading;

    public double Height => LineCount * LineHeight;

    /// <summary>Width of the longest line.</summary>
    public double UsedWidth => _lines.Max(WidthOf);

    /// <summary>Width of the longest word: a column must not be narrower.</summary>
    public static double LongestWord(ICanvas canvas, Words words, TextStyle style) =>
        words
            .Plain.Split(' ', '\n')
            .Max(w => canvas.Width(w, new(Face.Bold, style.Size, style.IsFigure)));

    public void Draw(double x, double top, Inks inks, Align align = Align.Left)
    {
        for (var i = 0; i < LineCount; i++)
            DrawLine(i, x, top + i * LineHeight, inks, align);
    }

    public void DrawLine(int index, double x, double top, Inks inks, Align align = Align.Left)
    {
        var line = _lines[index];
        var room = _width - WidthOf(line);
        var left =
            x
            + (
                align == Align.Left ? 0
                : align == Align.Right ? room
                : room / 2
            );
        for (var i = 0; i < line.Length; i++)
        {
            var (piece, offset, _) = line[i];
            // a space at the end of a line keeps its last word apart from the next line's first
            var isOpen = i == line.Length - 1 && index < LineCount - 1;
            var colour = piece.Style == RunStyle.Quiet ? inks.Quiet : inks.Plain;
            void Text() =>
                _canvas.Text(
                    isOpen ? piece.Text + " " : piece.Text,
                    left + offset,
                    top + _ascent,
                    FontOf(piece.Style),
                    colour
                );
            if (piece.Language is { } language)
                _canvas.Tagged(new("Span", language), Text);
            else
                Text();
        }
    }

    private static double WidthOf(Fragment[] line) =>
        line.Length == 0 ? 0 : line[^1].X + line[^1].Width;

    private Font FontOf(RunStyle style) =>
        new(
            style switch
            {
                RunStyle.Strong => _style.Face == Face.Regular ? Face.SemiBold : Face.Bold,
                RunStyle.Emphasis => Face.Italic,
                _ => _style.Face,
            },
            _style.Size,
            _style.IsFigure
        );

    private double WidthOf(Piece piece) => _canvas.Width(piece.Text, FontOf(piece.Style));

    private IEnumerable<List<Piece>> Paragraphs(Words words)
    {
        var paragraph = new List<Piece>();
        foreach (var run in words.Runs)
        {
            var lines = run.Text.Split('\n');
            for (var i = 0; i < lines.Length; i++)
            {
                if (i > 0)
                {
                    yield return paragraph;
                    paragraph = [];
                }
                var text = CleanText.Of(lines[i], _canvas.CanDraw);
                if (text.Length > 0)
                    paragraph.Add(new(text, run.Style, run.Language));
            }
        }
        yield return paragraph;
    }

    private void Break(List<Piece> paragraph)
    {
        var gap = _canvas.Width(" ", FontOf(RunStyle.Plain));
        var line = new List<List<Piece>>();
        var used = 0.0;
        foreach (var word in WordsOf(paragraph).SelectMany(Fit))
        {
            var width = word.Sum(WidthOf);
            if (line.Count > 0 && used + gap + width > _width + 0.01)
            {
                _lines.Add(Join(line));
                (line, used) = ([], 0);
            }
            used += width + (line.Count > 0 ? gap : 0);
            line.Add(word);
        }
        _lines.Add(Join(line));
    }

    /// <summary>Words of a paragraph; a word may change style within.</summary>
    private static IEnumerable<List<Piece>> WordsOf(List<Piece> paragraph)
    {
        var word = new List<Piece>();
        foreach (var piece in paragraph)
        {
            var parts = piece.Text.Split(' ');
            for (var i = 0; i < parts.Length; i++)
            {
                if (i > 0 && word.Count > 0)
                {
                    yield return word;
                    word = [];
                }
                if (parts[i].Length > 0)
                    word.Add(piece with { Text = parts[i] });
            }
        }
        if (word.Count > 0)
            yield return word;
    }

    private IEnumerable<List<Piece>> Fit(List<Piece> word)
    {
        if (word.Sum(WidthOf) <= _width)
            return [word];
        return word.SelectMany(Split).Select(p => new List<Piece> { p });
    }

    private IEnumerable<Piece> Split(Piece piece)
    {
        var rest = piece.Text;
        while (rest.Length > 0)
        {
            var fits = rest.Length;
            while (fits > 1 && WidthOf(piece with { Text = rest[..fits] }) > _width)
                fits--;
            if (fits < rest.Length && char.IsHighSurrogate(rest[fits - 1]))
                fits++;
            yield return piece with
            {
                Text = rest[..fits],
            };
            rest = rest[fits..];
        }
    }

    /// <summary>One string a run and line, so that text is found and copied whole.</summary>
    private Fragment[] Join(List<List<Piece>> words)
    {
        var pieces = new List<Piece>();
        foreach (var word in words)
        {
            for (var i = 0; i < word.Count; i++)
            {
                if (i == 0 && pieces.Count > 0)
                    pieces[^1] = pieces[^1] with { Text = pieces[^1].Text + " " };
                if (pieces.Count > 0 && pieces[^1] with { Text = "" } == word[i] with { Text = "" })
                    pieces[^1] = pieces[^1] with { Text = pieces[^1].Text + word[i].Text };
                else
                    pieces.Add(word[i]);
            }
        }
        var x = 0.0;
        var fragments = new Fragment[pieces.Count];
        for (var i = 0; i < pieces.Count; i++)
        {
            fragments[i] = new(pieces[i], x, WidthOf(pieces[i]));
            x += fragments[i].Width;
        }
        return fragments;
    }
}
