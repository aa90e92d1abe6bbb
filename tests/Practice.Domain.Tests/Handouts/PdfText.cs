using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;

namespace Practice.Domain.Tests.Handouts;

/// <summary>Text of a PDF in the order in which it is drawn, white space made plain.</summary>
internal static class PdfText
{
    public static string Of(byte[] file)
    {
        using var document = PdfDocument.Open(file);
        return string.Join('\n', document.GetPages().Select(Of));
    }

    public static IReadOnlyList<string> Pages(byte[] file)
    {
        using var document = PdfDocument.Open(file);
        return [.. document.GetPages().Select(Of)];
    }

    private static string Of(Page page) => page.Text.Replace('\u00A0', ' ');
}
