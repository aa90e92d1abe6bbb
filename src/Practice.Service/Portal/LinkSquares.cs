using System.Globalization;
using System.Text;
using Practice.Handouts;

namespace Practice.Service.Portal;

/// <summary>A link to be read by a phone's camera, as the outline of a drawing.</summary>
/// <param name="Size">Side of the drawing, white rim included.</param>
/// <param name="Path">The dark squares as an SVG path.</param>
public sealed record LinkSquares(int Size, string Path)
{
    public static LinkSquares Of(Uri address)
    {
        ArgumentNullException.ThrowIfNull(address);
        var squares = QrSquares.Of(address.AbsoluteUri);
        var path = new StringBuilder();
        for (var y = 0; y < squares.Size; y++)
        for (var x = 0; x < squares.Size; x++)
            if (squares.Dark[y][x])
                path.Append(CultureInfo.InvariantCulture, $"M{x} {y}h1v1h-1z");
        return new LinkSquares(squares.Size, path.ToString());
    }
}
