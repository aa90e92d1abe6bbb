using System.Collections.Concurrent;
using System.Text;
using PdfSharp.Drawing;
using PdfSharp.Fonts;
using PdfSharp.Pdf;

namespace Practice.Handouts.Paper.Pdf;

/// <summary>Inter in four cuts, from this assembly: papers look alike on every machine and need no installed font.</summary>
internal sealed class InterFonts : IFontResolver
{
    private const string Family = "Inter";
    private const string SemiBoldFamily = "Inter SemiBold";

    private static readonly ConcurrentDictionary<string, byte[]> Files = new();

    private static readonly ConcurrentDictionary<int, bool> Covered = new();

    private static readonly Lazy<bool> Registered = new(() =>
    {
        GlobalFontSettings.FontResolver = new InterFonts();
        return true;
    });

    /// <summary>The library keeps one resolver for the process.</summary>
    public static void Register() => _ = Registered.Value;

    /// <summary>Whether the typeface has a glyph: Latin, Greek and Cyrillic, no other script.</summary>
    public static bool Covers(Rune character) =>
        Covered.GetOrAdd(
            character.Value,
            static codePoint =>
                GlyphHelper.GlyphIndexFromCodePoint(codePoint, Open(new(Face.Regular, 10))) != 0
        );

    public static XFont Open(Font font)
    {
        var options = new XPdfFontOptions(PdfFontEncoding.Unicode);
        return font.Face switch
        {
            Face.SemiBold => new(SemiBoldFamily, font.Size, XFontStyleEx.Regular, options),
            Face.Bold => new(Family, font.Size, XFontStyleEx.Bold, options),
            Face.Italic => new(Family, font.Size, XFontStyleEx.Italic, options),
            _ => new(Family, font.Size, XFontStyleEx.Regular, options),
        };
    }

    public FontResolverInfo ResolveTypeface(string familyName, bool isBold, bool isItalic) =>
        new(
            familyName == SemiBoldFamily ? "Inter-SemiBold"
            : isBold ? "Inter-Bold"
            : isItalic ? "Inter-Italic"
            : "Inter-Regular"
        );

    public byte[] GetFont(string faceName) =>
        Files.GetOrAdd(
            faceName,
            static face =>
            {
                using var stream =
                    typeof(InterFonts).Assembly.GetManifestResourceStream(
                        $"Practice.Handouts.Fonts.{face}.ttf"
                    ) ?? throw new InvalidOperationException($"Font '{face}' is not embedded.");
                var bytes = new byte[stream.Length];
                stream.ReadExactly(bytes);
                return bytes;
            }
        );
}
