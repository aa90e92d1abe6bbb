using System.Text;
using NodaTime;
using PdfSharp;
using PdfSharp.Drawing;
using PdfSharp.Pdf;
using PdfSharp.UniversalAccessibility;
using Practice.Domain.Practices;
using Practice.Handouts.Blocks;

namespace Practice.Handouts.Paper.Pdf;

/// <summary>
/// Draws and tags with PDFsharp. The library writes marked content in whatever mode the stream is in; to keep text
/// blocks and marked content nested, text is tagged in text mode and shapes are drawn in decorations and figures in
/// graphic mode, and both are entered before every begin and end.
/// </summary>
internal sealed class PdfCanvas : ICanvas, IDisposable
{
    private readonly PdfDocument _document = new();
    private readonly UAManager _access;
    private readonly StructureBuilder _structure;
    private readonly XGraphics _measure = XGraphics.CreateMeasureContext(
        new XSize(1000, 1000),
        XGraphicsUnit.Point,
        XPageDirection.Downwards
    );
    private readonly Dictionary<Font, XFont> _fonts = [];
    private readonly Dictionary<Colour, XSolidBrush> _brushes = [];
    private readonly Dictionary<(Font, string), double> _widths = [];
    private readonly Stack<PdfOutline> _bookmarks = new();
    private XGraphics? _graphics;
    private PdfPage? _page;
    private bool _pageIsUntouched;

    public PdfCanvas(HandoutDoc doc)
    {
        InterFonts.Register();
        // must come before the first page
        _access = UAManager.ForDocument(_document);
        _access.SetDocumentLanguage(doc.Language);
        _structure = _access.StructureBuilder;
        var date = doc.Date.AtMidnight().ToDateTimeUnspecified();
        _document.Info.Title = doc.Title;
        _document.Info.Author = doc.Author;
        _document.Info.Creator = "Practice";
        _document.Info.CreationDate = date;
        _document.Info.ModificationDate = date;
        // the finisher compresses: the library's streams lack their checksum
        _document.Options.NoCompression = true;
        _document.Version = 17;
        _document.ViewerPreferences.DisplayDocTitle = true;
    }

    private XGraphics Graphics =>
        _graphics ?? throw new InvalidOperationException("No page has been begun.");

    public bool CanDraw(Rune character) => InterFonts.Covers(character);

    public double Width(string text, Font font)
    {
        if (_widths.TryGetValue((font, text), out var known))
            return known;
        var width = font.IsFigure
            ? text.Sum(c => Pitch(c, font))
            : _measure.MeasureString(text, Open(font)).Width;
        return _widths[(font, text)] = width;
    }

    public double Ascent(Font font) =>
        Open(font).GetHeight() * Open(font).CellAscent / Open(font).CellSpace;

    public double Descent(Font font) =>
        Open(font).GetHeight() * Open(font).CellDescent / Open(font).CellSpace;

    public void BeginPage(double width, double height)
    {
        _graphics?.Dispose();
        _page = _document.AddPage();
        _page.Width = XUnit.FromPoint(width);
        _page.Height = XUnit.FromPoint(height);
        _page.Elements.SetName("/Tabs", "/S");
        _graphics = XGraphics.FromPdfPage(_page);
        // writes the page transform now, not inside the first marked content
        _graphics.Restore(_graphics.Save());
        _pageIsUntouched = true;
    }

    public void Text(string text, double x, double baseline, Font font, Colour colour)
    {
        if (!font.IsFigure)
        {
            Graphics.DrawString(text, Open(font), Brush(colour), new XPoint(x, baseline));
            return;
        }
        // the library does not shape, so tabular figures are set one by one, each in the middle of its pitch
        foreach (var c in text)
        {
            var glyph = c.ToString();
            var pitch = Pitch(c, font);
            var own = Width(glyph, font with { IsFigure = false });
            Graphics.DrawString(
                glyph,
                Open(font),
                Brush(colour),
                new XPoint(x + (pitch - own) / 2, baseline)
            );
            x += pitch;
        }
    }

    public void Fill(Rect area, Colour colour, double radius = 0)
    {
        if (radius > 0)
            Graphics.DrawRoundedRectangle(
                Brush(colour),
                area.X,
                area.Y,
                area.Width,
                area.Height,
                2 * radius,
                2 * radius
            );
        else
            Graphics.DrawRectangle(Brush(colour), area.X, area.Y, area.Width, area.Height);
    }

    public void Outline(Rect area, Colour colour, double width, double radius = 0) =>
        Graphics.DrawRoundedRectangle(
            Pen(colour, width),
            area.X,
            area.Y,
            area.Width,
            area.Height,
            2 * radius,
            2 * radius
        );

    public void Line(double x1, double y1, double x2, double y2, Colour colour, double width) =>
        Graphics.DrawLine(Pen(colour, width), x1, y1, x2, y2);

    public void Polygon(IReadOnlyList<(double X, double Y)> corners, Colour fill) =>
        Graphics.DrawPolygon(
            Brush(fill),
            [.. corners.Select(c => new XPoint(c.X, c.Y))],
            XFillMode.Alternate
        );

    public void Ellipse(Rect box, Colour fill, double degrees = 0)
    {
        var area = new XRect(box.X, box.Y, box.Width, box.Height);
        if (degrees == 0)
        {
            Graphics.DrawEllipse(Brush(fill), area);
            return;
        }
        var state = Graphics.Save();
        Graphics.RotateAtTransform(degrees, area.Center);
        Graphics.DrawEllipse(Brush(fill), area);
        Graphics.Restore(state);
    }

    public void Image(ReadOnlyMemory<byte> png, Rect box)
    {
        using var image = XImage.FromStream(Logo.Open(png));
        Graphics.DrawImage(image, box.X, box.Y, box.Width, box.Height);
    }

    public void Tagged(Tag tag, Action draw)
    {
        Begin(tag);
        draw();
        End();
    }

    public void Begin(Tag tag)
    {
        _access.BeginTextMode();
        switch (tag.Name)
        {
            case "Sect" or "Div" or "BlockQuote":
                _structure.BeginGroupingElement("/" + tag.Name);
                break;
            case "Span":
                _structure.BeginInlineLevelElement("/Span");
                break;
            default:
                _structure.BeginBlockLevelElement("/" + tag.Name);
                break;
        }
        if (tag.Language is not null)
            _structure.SetLanguage(tag.Language);
        if (tag.Scope is not null)
            _structure.CurrentStructureElement.TableAttributes.Elements.SetName(
                "/Scope",
                "/" + tag.Scope
            );
        if (tag.Summary is not null)
            _structure.CurrentStructureElement.TableAttributes.Elements.SetString(
                "/Summary",
                tag.Summary
            );
        if (tag.RowSpan > 1)
            _structure.SetRowSpan(tag.RowSpan);
        if (tag.ColumnSpan > 1)
            _structure.SetColSpan(tag.ColumnSpan);
        if (tag.Name is "P" or "TD" or "TH" or "LBody" or "Lbl" or "Span" or "H1" or "H2" or "H3")
            _pageIsUntouched = false;
    }

    public void End()
    {
        _access.BeginTextMode();
        _structure.End();
    }

    public void Decoration(Action draw) => Artifact(_access.BeginGraphicMode, draw);

    public void RunningText(Action draw) => Artifact(_access.BeginTextMode, draw);

    private void Artifact(Action enterMode, Action draw)
    {
        _structure.EndMarkedContentsWithId();
        enterMode();
        _structure.BeginArtifact();
        draw();
        enterMode();
        _structure.End();
        // an element that was open goes on with text
        _access.BeginTextMode();
    }

    public void Figure(string alt, Rect box, Action draw)
    {
        // the library forces text mode on the first content of a page, which a figure must not be in
        if (_pageIsUntouched)
            Tagged(
                new("Span"),
                () => Text(" ", box.X, box.Y, new Font(Face.Regular, 8), Colour.Black)
            );
        _access.BeginGraphicMode();
        var area = Graphics.Transformer.WorldToDefaultPage(
            new XRect(box.X, box.Y, box.Width, box.Height)
        );
        _structure.BeginElement(PdfIllustrationElementTag.Figure, alt, area);
        draw();
        _access.BeginGraphicMode();
        _structure.End();
    }

    public void Bookmark(string title, int level)
    {
        while (_bookmarks.Count >= level)
            _bookmarks.Pop();
        var siblings = _bookmarks.Count == 0 ? _document.Outlines : _bookmarks.Peek().Outlines;
        _bookmarks.Push(siblings.Add(title, _page!, level == 1));
    }

    /// <summary>The file as the library writes it: not yet reproducible.</summary>
    public byte[] Save()
    {
        _graphics?.Dispose();
        _graphics = null;
        using var stream = new MemoryStream();
        _document.Save(stream, closeStream: false);
        return stream.ToArray();
    }

    public void Dispose()
    {
        _graphics?.Dispose();
        _measure.Dispose();
        _document.Dispose();
    }

    private double Pitch(char c, Font font) =>
        Width(char.IsAsciiDigit(c) ? "0" : c.ToString(), font with { IsFigure = false });

    private XFont Open(Font font)
    {
        var key = font with { IsFigure = false };
        return _fonts.TryGetValue(key, out var open) ? open : _fonts[key] = InterFonts.Open(key);
    }

    private XSolidBrush Brush(Colour c) =>
        _brushes.TryGetValue(c, out var brush)
            ? brush
            : _brushes[c] = new(XColor.FromArgb(c.Red, c.Green, c.Blue));

    private static XPen Pen(Colour c, double width) =>
        new(XColor.FromArgb(c.Red, c.Green, c.Blue), width) { LineCap = XLineCap.Flat };
}
