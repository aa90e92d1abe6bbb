using System.Collections.Immutable;
using Practice.Handouts;
using SkiaSharp;

namespace Practice.Service.Practices.Brand;

/// <summary>What became of reading a logo.</summary>
public abstract record LogoReading;

/// <summary>A picture that screens and papers can show.</summary>
/// <param name="Png">The picture, drawn anew: nothing else that was in the file is kept.</param>
public sealed record LogoRead(ImmutableArray<byte> Png) : LogoReading;

/// <summary>The file cannot be a logo.</summary>
/// <param name="Why">Why, and what to do.</param>
public sealed record LogoRefused(string Why) : LogoReading;

/// <summary>
/// Reads a picture by what is in it, whatever its name says, and draws it anew. What else a file may hide (scripts,
/// places, a second file behind the first) does not survive that.
/// </summary>
public static class LogoPress
{
    /// <summary>The largest file, bytes.</summary>
    public const int LargestFile = 2 * 1024 * 1024;

    // a file of some kilobytes may unpack to gigabytes
    private const int LongestSide = 6000;
    private const int KeptLongestSide = 800;

    public static LogoReading Read(ReadOnlySpan<byte> file)
    {
        if (file.Length > LargestFile)
            return new LogoRefused("The file is larger than 2 MB. Save the picture smaller.");
        if (!IsPicture(file))
            return new LogoRefused(
                LooksLikeSvg(file)
                    ? "An SVG can carry a program, so it is not taken. Save it as PNG, some 800 pixels wide."
                    : "This is no picture that can be read. Use PNG, JPEG or WebP."
            );
        using var data = SKData.CreateCopy(file);
        using var codec = SKCodec.Create(data);
        if (codec is null)
            return new LogoRefused("The picture is damaged. Save it anew.");
        var (width, height) = (codec.Info.Width, codec.Info.Height);
        if (width is < 1 or > LongestSide || height is < 1 or > LongestSide)
            return new LogoRefused(
                $"At most {LongestSide} pixels a side: it has {width} × {height}."
            );
        using var drawn = SKBitmap.Decode(codec);
        return drawn is null
            ? new LogoRefused("The picture is damaged. Save it anew.")
            : Draw(drawn);
    }

    private static LogoReading Draw(SKBitmap drawn)
    {
        var scale = Math.Min(1f, (float)KeptLongestSide / Math.Max(drawn.Width, drawn.Height));
        var size = new SKImageInfo(
            Math.Max(1, (int)Math.Round(drawn.Width * scale)),
            Math.Max(1, (int)Math.Round(drawn.Height * scale)),
            SKColorType.Rgba8888,
            SKAlphaType.Unpremul
        );
        using var small = drawn.Resize(size, new SKSamplingOptions(SKCubicResampler.Mitchell));
        using var png = small?.Encode(SKEncodedImageFormat.Png, 100);
        if (png is null)
            return new LogoRefused("The picture could not be drawn. Save it as PNG.");
        var bytes = png.ToArray();
        return HandoutPdf.CanPrintLogo(bytes)
            ? new LogoRead([.. bytes])
            : new LogoRefused("The picture cannot be printed. Save it as PNG.");
    }

    /// <summary>The first bytes of PNG, JPEG and WebP.</summary>
    private static bool IsPicture(ReadOnlySpan<byte> file) =>
        file.StartsWith((ReadOnlySpan<byte>)[0x89, 0x50, 0x4E, 0x47, 0x0D, 0x0A, 0x1A, 0x0A])
        || file.StartsWith((ReadOnlySpan<byte>)[0xFF, 0xD8, 0xFF])
        || (file.Length > 12 && file.StartsWith("RIFF"u8) && file[8..].StartsWith("WEBP"u8));

    private static bool LooksLikeSvg(ReadOnlySpan<byte> file) =>
        file[..Math.Min(file.Length, 4096)].IndexOf("<svg"u8) >= 0;
}
