using System.Globalization;
using System.IO.Compression;
using System.Text;

namespace Practice.Handouts.Paper.Pdf;

/// <summary>
/// Writes objects as a compact file: streams deflated with their checksum, everything else in one object stream, a
/// cross-reference stream at the end (ISO 32000-1, 7.5.7 and 7.5.8).
/// </summary>
internal sealed class PdfPacker : IDisposable
{
    private readonly MemoryStream _file = new();
    private readonly SortedDictionary<int, (byte Kind, int Place, int Index)> _entries = new()
    {
        [0] = (0, 0, 255),
    };

    public static byte[] Pack(PlainPdf pdf, string id)
    {
        using var packer = new PdfPacker();
        packer.Write("%PDF-1.7\n%\u00e2\u00e3\u00cf\u00d3\n");
        foreach (var o in pdf.Objects.Where(o => o.Stream is not null))
            packer.WriteStream(o.Number, o.Text, o.Stream!);
        var next = pdf.Objects.Max(o => o.Number) + 1;
        packer.WriteObjectStream(next, [.. pdf.Objects.Where(o => o.Stream is null)]);
        packer.WriteIndex(next + 1, $"/Info {pdf.Info}/Root {pdf.Root}/ID[<{id}><{id}>]");
        return packer._file.ToArray();
    }

    public void Dispose() => _file.Dispose();

    private void WriteObjectStream(int number, IReadOnlyList<PdfObject> objects)
    {
        var (index, body) = (new StringBuilder(), new StringBuilder());
        for (var i = 0; i < objects.Count; i++)
        {
            index.Append(CultureInfo.InvariantCulture, $"{objects[i].Number} {body.Length} ");
            body.Append(objects[i].Text).Append('\n');
            _entries[objects[i].Number] = (2, number, i);
        }
        WriteStream(
            number,
            $"<</Type/ObjStm/N {objects.Count}/First {index.Length}>>",
            Encoding.Latin1.GetBytes(index.Append(body).ToString())
        );
    }

    private void WriteIndex(int number, string trailer)
    {
        var start = (int)_file.Position;
        _entries[number] = (1, start, 0);
        var table = new byte[(number + 1) * 7];
        foreach (var (entry, (kind, place, index)) in _entries)
        {
            var row = table.AsSpan(entry * 7, 7);
            row[0] = kind;
            System.Buffers.Binary.BinaryPrimitives.WriteInt32BigEndian(row[1..], place);
            System.Buffers.Binary.BinaryPrimitives.WriteUInt16BigEndian(row[5..], (ushort)index);
        }
        WriteStream(number, $"<</Type/XRef/Size {number + 1}/W[1 4 2]{trailer}>>", table);
        Write($"startxref\n{start}\n%%EOF\n");
    }

    private void WriteStream(int number, string dictionary, byte[] data)
    {
        _entries[number] = (1, (int)_file.Position, 0);
        // the catalogue of a file says who made it to anyone who looks: metadata stays readable
        var plain =
            dictionary.Contains("/Filter", StringComparison.Ordinal)
            || dictionary.Contains("/Type/Metadata", StringComparison.Ordinal);
        if (!plain)
            (data, dictionary) = (Deflate(data), dictionary[..^2] + "/Filter/FlateDecode>>");
        Write($"{number} 0 obj\n{dictionary[..^2]}/Length {data.Length}>>\nstream\n");
        _file.Write(data);
        Write("\nendstream\nendobj\n");
    }

    private void Write(string text) => _file.Write(Encoding.Latin1.GetBytes(text));

    private static byte[] Deflate(byte[] data)
    {
        using var packed = new MemoryStream();
        using (var zlib = new ZLibStream(packed, CompressionLevel.Optimal, leaveOpen: true))
            zlib.Write(data);
        return packed.ToArray();
    }
}
