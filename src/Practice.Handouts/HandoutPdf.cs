using System.Collections.Immutable;
using Practice.Handouts.Blocks;
using Practice.Handouts.Paper;
using Practice.Handouts.Paper.Card;
using Practice.Handouts.Paper.Pdf;

namespace Practice.Handouts;

/// <summary>Papers as PDF: tagged by the rules of PDF/UA-1, the same bytes for the same paper. Thread-safe.</summary>
public static class HandoutPdf
{
    /// <summary>Renders a paper.</summary>
    public static byte[] Render(HandoutDoc doc)
    {
        ArgumentNullException.ThrowIfNull(doc);
        using var canvas = new PdfCanvas(doc);
        if (doc.IsFoldedCard)
            FoldedCard.Print(doc, canvas);
        else
            Press.Print(doc, canvas);
        return PdfFinisher.Finish(canvas.Save(), doc);
    }

    /// <summary>
    /// Characters of a paper that the typeface lacks and that will print as a question mark: it holds Latin, Greek and
    /// Cyrillic. Tell the practitioner before she hands it out.
    /// </summary>
    public static ImmutableArray<string> MissingCharacters(HandoutDoc doc)
    {
        ArgumentNullException.ThrowIfNull(doc);
        InterFonts.Register();
        return
        [
            .. PlainText
                .Of(doc)
                .Split('\n')
                .SelectMany(line => CleanText.Missing(line, InterFonts.Covers))
                .Distinct(),
        ];
    }

    /// <summary>Whether a logo can be printed; 16-bit PNG, SVG and damaged files can not.</summary>
    public static bool CanPrintLogo(ReadOnlyMemory<byte> png)
    {
        InterFonts.Register();
        return Logo.AspectOf(png) is not null;
    }
}
