using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;

namespace Practice.Handouts.Paper.Pdf;

/// <summary>An object of a file.</summary>
/// <param name="Number">Its number.</param>
/// <param name="Text">The object, or the dictionary of its stream without the length.</param>
/// <param name="Stream">Bytes of its stream; null for none.</param>
internal sealed record PdfObject(int Number, string Text, byte[]? Stream)
{
    public bool IsMetadata => Text.Contains("/Type/Metadata", StringComparison.Ordinal);
}

/// <summary>
/// Reads back what PDFsharp 6.2.4 writes with compression off: numbered objects, direct lengths, a cross-reference
/// table. No general reader: the version is pinned and tests hold the outcome. Text is Latin-1, one char a byte.
/// </summary>
internal sealed partial record PlainPdf(IReadOnlyList<PdfObject> Objects, string Info, string Root)
{
    public static PlainPdf Read(byte[] file)
    {
        var text = Encoding.Latin1.GetString(file);
        var tail = text.LastIndexOf("startxref", StringComparison.Ordinal);
        var table = int.Parse(
            text.AsSpan(tail + 9).Trim().ToString().Split('\n')[0],
            CultureInfo.InvariantCulture
        );
        var trailer = text.IndexOf("trailer", table, StringComparison.Ordinal);
        var starts = Entry()
            .Matches(text[table..trailer])
            .Select(m => int.Parse(m.Groups[1].ValueSpan, CultureInfo.InvariantCulture))
            .Order()
            .ToList();
        var objects = starts.Select(
            (start, i) => Object(text[start..(i + 1 < starts.Count ? starts[i + 1] : table)])
        );
        var end = text[trailer..tail];
        return new([.. objects], Reference(end, "Info"), Reference(end, "Root"));
    }

    private static PdfObject Object(string text)
    {
        var head = text.IndexOf(" 0 obj", StringComparison.Ordinal);
        var number = int.Parse(text.AsSpan(0, head), CultureInfo.InvariantCulture);
        var body = text[(head + 6)..text.LastIndexOf("endobj", StringComparison.Ordinal)].Trim();
        var stream = StreamHead().Match(body);
        if (!stream.Success)
            return new(number, body, null);
        var length = int.Parse(stream.Groups[2].ValueSpan, CultureInfo.InvariantCulture);
        var dictionary = stream.Groups[1].Value + stream.Groups[3].Value;
        return new(
            number,
            dictionary,
            Encoding.Latin1.GetBytes(body.Substring(stream.Length, length))
        );
    }

    private static string Reference(string trailer, string key) =>
        Regex.Match(trailer, $@"/{key}\s+(\d+ 0 R)").Groups[1].Value;

    [GeneratedRegex(@"(\d{10}) 00000 n")]
    private static partial Regex Entry();

    [GeneratedRegex(@"^(<<.*?)/Length (\d+)(.*?>>)\s*stream\r?\n", RegexOptions.Singleline)]
    private static partial Regex StreamHead();
}
