using QRCoder;

namespace Practice.Handouts;

/// <summary>
/// An address as squares that a phone's camera reads, for paper and screen alike. It mends itself where up to 15 % of it
/// can not be read, which a fold or a drop of tea needs.
/// </summary>
/// <param name="Size">Squares along a side, the white rim of four included.</param>
/// <param name="Dark">Rows of squares from the top, dark ones true.</param>
public sealed record QrSquares(int Size, IReadOnlyList<IReadOnlyList<bool>> Dark)
{
    /// <summary>The squares of an address.</summary>
    public static QrSquares Of(string address)
    {
        using var drawn = QRCodeGenerator.GenerateQrCode(address, QRCodeGenerator.ECCLevel.M);
        var rows = drawn.ModuleMatrix.Select(row => (IReadOnlyList<bool>)[.. row.Cast<bool>()]);
        return new QrSquares(drawn.ModuleMatrix.Count, [.. rows]);
    }
}
