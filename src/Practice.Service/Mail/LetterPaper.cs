using System.Net;
using System.Text;
using Practice.Domain.Practices;

namespace Practice.Service.Mail;

/// <summary>
/// The two forms of a letter: plain words, and the same words set quietly for programs that show HTML. What a program
/// must not lose stands on each element; the dark face is for those that read a style sheet.
/// </summary>
internal static class LetterPaper
{
    private const string Top = """
        <!DOCTYPE html><html lang="en"><head><meta charset="utf-8">
        <meta name="viewport" content="width=device-width">
        <meta name="color-scheme" content="light dark"><meta name="supported-color-schemes" content="light dark">
        <style>
        @media (prefers-color-scheme: dark) {
          body, .sheet { background: #141A18 !important; color: #E8EDE9 !important; }
          .soft, .soft a { color: #A3B0AA !important; }
          .rule { border-color: #2E3936 !important; }
        }
        </style></head>
        <body class="sheet" style="margin:0;padding:32px 24px;background:#FAF7F1;color:#22302C;font:16px/1.5 system-ui,-apple-system,'Segoe UI',sans-serif">
        <div style="max-width:34em;margin:0 auto">
        """;

    private const string Rule =
        "margin:0 0 24px;padding:0 0 12px;border-bottom:1px solid #E4DED2;font-weight:600";

    private const string Pill =
        "display:inline-block;padding:11px 20px;border-radius:8px;font-weight:600;text-decoration:none";

    private const string Small = "font-size:13px;color:#55655F;overflow-wrap:anywhere";

    public static string Plain(LetterContent letter)
    {
        var text = new StringBuilder();
        foreach (var paragraph in letter.Paragraphs)
            text.Append(paragraph).Append("\n\n");
        if (letter.Link is { } link)
            text.Append(link.Words).Append(":\n").Append(link.Address).Append("\n\n");
        if (letter.By.Length > 0)
            text.Append(letter.By).Append("\n\n");
        return text.Append("-- \n").Append(letter.Foot).Append('\n').ToString();
    }

    public static string Html(LetterContent letter) =>
        string.Concat([
            Top,
            letter.Head.Length > 0
                ? $"<p class=\"rule\" style=\"{Rule}\">{Text(letter.Head)}</p>"
                : "",
            .. letter.Paragraphs.Select(Paragraph),
            letter.Link is { } link ? Button(link, Colour.Parse(letter.Accent)) : "",
            letter.By.Length > 0 ? Paragraph(letter.By) : "",
            $"<p class=\"soft\" style=\"margin:32px 0 0;{Small}\">{Text(letter.Foot)}</p>",
            "</div></body></html>",
        ]);

    private static string Paragraph(string words) =>
        $"<p style=\"margin:0 0 16px\">{Text(words)}</p>";

    private static string Button(LetterLink link, Colour accent)
    {
        var (words, address) = (Text(link.Words), Text(link.Address));
        return $"""
            <p style="margin:24px 0 8px"><a href="{address}" style="{Pill};background:{accent};color:{accent.TextOn()}">{words}</a></p>
            <p class="soft" style="margin:0 0 16px;{Small}">{address}</p>
            """;
    }

    private static string Text(string words) => WebUtility.HtmlEncode(words);
}
