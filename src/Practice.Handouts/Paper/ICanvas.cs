using System.Text;
using Practice.Domain.Practices;

namespace Practice.Handouts.Paper;

/// <summary>A cut of the typeface.</summary>
internal enum Face
{
    Regular,
    SemiBold,
    Bold,
    Italic,
}

/// <summary>A cut in a size.</summary>
/// <param name="Face">The cut.</param>
/// <param name="Size">Size, pt.</param>
/// <param name="IsFigure">Whether digits stand on a fixed pitch.</param>
internal readonly record struct Font(Face Face, double Size, bool IsFigure = false);

/// <summary>A rectangle, pt.</summary>
internal readonly record struct Rect(double X, double Y, double Width, double Height)
{
    public double Right => X + Width;
    public double Bottom => Y + Height;
}

/// <summary>What a stretch of the paper is, to one who hears it.</summary>
/// <param name="Name">Standard structure type.</param>
/// <param name="Language">Language where it differs.</param>
/// <param name="Scope">What a heading cell heads: <c>Row</c> or <c>Column</c>.</param>
/// <param name="RowSpan">Rows a cell spans.</param>
/// <param name="ColumnSpan">Columns a cell spans.</param>
/// <param name="Summary">What a table holds.</param>
internal readonly record struct Tag(
    string Name,
    string? Language = null,
    string? Scope = null,
    int RowSpan = 1,
    int ColumnSpan = 1,
    string? Summary = null
);

/// <summary>
/// The wall to the PDF library. Points, origin at the top left. Text stands inside tags; shapes inside decoration or
/// figures; never otherwise.
/// </summary>
internal interface ICanvas
{
    bool CanDraw(Rune character);
    double Width(string text, Font font);
    double Ascent(Font font);
    double Descent(Font font);

    void BeginPage(double width, double height);
    void Text(string text, double x, double baseline, Font font, Colour colour);
    void Fill(Rect area, Colour colour, double radius = 0);
    void Outline(Rect area, Colour colour, double width, double radius = 0);
    void Line(double x1, double y1, double x2, double y2, Colour colour, double width);
    void Polygon(IReadOnlyList<(double X, double Y)> corners, Colour fill);
    void Ellipse(Rect box, Colour fill, double degrees = 0);
    void Image(ReadOnlyMemory<byte> png, Rect box);

    void Tagged(Tag tag, Action draw);
    void Begin(Tag tag);
    void End();
    void Decoration(Action draw);
    void RunningText(Action draw);
    void Figure(string alt, Rect box, Action draw);
    void Bookmark(string title, int level);
}
