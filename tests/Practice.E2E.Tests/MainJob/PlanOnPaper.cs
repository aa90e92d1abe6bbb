using System.Text.RegularExpressions;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;

namespace Practice.E2E.Tests.MainJob;

/// <summary>The handout as a reader of the file meets it.</summary>
public sealed partial class PlanOnPaper
{
    private readonly string _cover;
    private readonly string _body;

    private PlanOnPaper(PageSize size, IReadOnlyList<string> pages)
    {
        Size = size;
        _cover = Squeezed(pages[0]);
        _body = Squeezed(
            string.Concat(pages.Skip(1).Select(page => Furniture().Replace(page, "")))
        );
    }

    public PageSize Size { get; }

    public static PlanOnPaper Read(byte[] pdf)
    {
        using var document = PdfDocument.Open(pdf);
        var pages = document.GetPages().ToList();
        return new(pages[0].Size, [.. pages.Select(page => page.Text)]);
    }

    /// <summary>The cover bears these words.</summary>
    public void Names(string words) =>
        Assert.Contains(Squeezed(words), _cover, StringComparison.Ordinal);

    /// <summary>Every day has a table of exactly the plates and figures on the screen, and of nothing else.</summary>
    public void Says(PlanOnScreen plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        foreach (var day in plan.Days)
        {
            var table = Squeezed($"{string.Concat(day.Occasions.Select(Said))} Day total");
            Assert.Contains(table, _body, StringComparison.Ordinal);
            var total = _body[(_body.IndexOf(table, StringComparison.Ordinal) + table.Length)..];
            Assert.Matches($"^(aim[0-9]+gcarbohydrate)?{day.Carbohydrate}g[^0-9]", total);
            Assert.Contains(Squeezed(day.Name), _body, StringComparison.Ordinal);
        }
    }

    private static string Said(OccasionOnScreen occasion)
    {
        var (name, time) = (occasion.Name.Split(", ")[0], occasion.Name.Split(", ")[1]);
        return $"{time} {name} {occasion.Carbohydrate} g carbohydrate {string.Concat(occasion.Portions.Select(Said))}";
    }

    private static string Said(PortionOnScreen portion) =>
        $"{portion.Food} {portion.Amount} {portion.Measured} {portion.Grams}";

    // the file keeps no white space between cells
    private static string Squeezed(string text) => WhiteSpace().Replace(text, "");

    [GeneratedRegex(@"\s+")]
    private static partial Regex WhiteSpace();

    // the foot with all behind it, and the head of a table, which stands again after a page break
    [GeneratedRegex(
        @"Version \d+, issued .*$|When\s*What\s*How much\s*Measured\s*Carbs, g",
        RegexOptions.Singleline
    )]
    private static partial Regex Furniture();
}
