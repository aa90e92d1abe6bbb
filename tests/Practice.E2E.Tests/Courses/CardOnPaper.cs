using System.Text.RegularExpressions;
using UglyToad.PdfPig;

namespace Practice.E2E.Tests.Courses;

/// <summary>The race card as a reader of the file meets it.</summary>
public sealed partial class CardOnPaper
{
    private readonly string _text;

    private CardOnPaper(string text) => _text = text;

    public static CardOnPaper Read(byte[] pdf)
    {
        using var document = PdfDocument.Open(pdf);
        return new(Squeezed(Assert.Single(document.GetPages()).Text));
    }

    /// <summary>The schedule has exactly these stops in this order.</summary>
    public void Says(IReadOnlyList<StopOnCourse> stops)
    {
        ArgumentNullException.ThrowIfNull(stops);
        var at = 0;
        foreach (var stop in stops)
        {
            var line = Squeezed($"{stop.Place} {stop.Clock} {stop.Take}");
            var found = _text.IndexOf(line, at, StringComparison.Ordinal);
            Assert.True(found >= 0, $"The card does not say, or not in its place: {stop}");
            at = found + line.Length;
        }
        Assert.Equal(stops.Count, PlaceAndClock().Count(_text));
    }

    // the file keeps no white space between cells
    private static string Squeezed(string text) => WhiteSpace().Replace(text, "");

    [GeneratedRegex(@"\s+")]
    private static partial Regex WhiteSpace();

    [GeneratedRegex(@"\dkm\d\d:\d\d")]
    private static partial Regex PlaceAndClock();
}
