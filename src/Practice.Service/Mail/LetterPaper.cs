using System.Net;
using System.Text;

namespace Practice.Service.Mail;

/// <summary>The two forms of a letter: plain words, and the same words set quietly for programs that show HTML.</summary>
internal static class LetterPaper
{
    public static string Plain(LetterContent letter)
    {
        var text = new StringBuilder();
        foreach (var paragraph in letter.Paragraphs)
            text.Append(paragraph).Append("\n\n");
        if (letter.Link is { } link)
            text.Append(link.Words).Append(":\n").Append(link.Address).Append("\n\n");
        return text.Append("-- \n").Append(letter.Foot).Append('\n').ToString();
    }

    public static string Html(LetterContent letter)
    {
        var html = new StringBuilder(
            "<!DOCTYPE html><html lang=\"en\"><body style=\"margin:0;padding:24px;background:#FAF7F1;color:#22302C;"
                + "font:16px/1.5 system-ui,sans-serif\"><div style=\"max-width:34em;margin:0 auto\">"
        );
        foreach (var paragraph in letter.Paragraphs)
            html.Append("<p style=\"margin:0 0 16px\">").Append(Text(paragraph)).Append("</p>");
        if (letter.Link is { } link)
            html.Append(
                    "<p style=\"margin:24px 0\"><a style=\"display:inline-block;padding:10px 18px;border-radius:8px;"
                )
                .Append("background:#22302C;color:#FFFFFF;text-decoration:none\" href=\"")
                .Append(Text(link.Address))
                .Append("\">")
                .Append(Text(link.Words))
                .Append("</a></p><p style=\"margin:0 0 16px;font-size:13px;color:#5B6B65\">")
                .Append(Text(link.Address))
                .Append("</p>");
        return html.Append("<p style=\"margin:32px 0 0;font-size:13px;color:#5B6B65\">")
            .Append(Text(letter.Foot))
            .Append("</p></div></body></html>")
            .ToString();
    }

    private static string Text(string words) => WebUtility.HtmlEncode(words);
}
