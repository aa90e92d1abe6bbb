using PdfSharp.Drawing;

namespace Practice.Handouts.Paper.Pdf;

/// <summary>A logo as the library takes it: an 8-bit PNG. Sixteen-bit, indexed below 8 bit, and SVG it refuses.</summary>
internal static class Logo
{
    public static MemoryStream Open(ReadOnlyMemory<byte> png)
    {
        var bytes = png.ToArray();
        return new(bytes, 0, bytes.Length, writable: false, publiclyVisible: true);
    }

    /// <summary>Width over height; null when it can not be printed.</summary>
    public static double? AspectOf(ReadOnlyMemory<byte> png)
    {
        try
        {
            using var image = XImage.FromStream(Open(png));
            return (double)image.PixelWidth / image.PixelHeight;
        }
        // the library tells a bad image only by exceptions of several kinds
        catch (Exception e)
            when (e
                    is InvalidOperationException
                        or ArgumentException
                        or NotSupportedException
                        or NotImplementedException
                        or IndexOutOfRangeException
                        or OverflowException
            )
        {
            return null;
        }
    }
}
