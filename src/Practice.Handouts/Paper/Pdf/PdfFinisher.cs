using System.IO.Compression;
using System.Security.Cryptography;
using System.Text;
using System.Text.RegularExpressions;
using Practice.Handouts.Blocks;

namespace Practice.Handouts.Paper.Pdf;

/// <summary>
/// Makes the library's file reproducible and complete: it picks random font tags and document ids, writes its own
/// metadata with the title unescaped and without the PDF/UA mark, and leaves the checksum off deflated streams.
/// </summary>
internal static partial class PdfFinisher
{
    public static byte[] Finish(byte[] file, HandoutDoc doc)
    {
        var pdf = PlainPdf.Read(file);
        var tags = new Dictionary<string, string>();
        var objects = pdf
            .Objects.Select(o => o with { Text = SteadyFontTags(o.Text, tags) })
            .Select(Inflate)
            .ToList();
        var id = Identify(objects);
        var metadata = Encoding.UTF8.GetBytes(DocumentMetadata.Of(doc, new Guid(id)));
        return PdfPacker.Pack(
            pdf with
            {
                Objects =
                [
                    .. objects.Select(o =>
                        o.IsMetadata
                            ? o with
                            {
                                Text = "<</Type/Metadata/Subtype/XML>>",
                                Stream = metadata,
                            }
                            : o
                    ),
                ],
            },
            Convert.ToHexString(id)
        );
    }

    // ABCDEF+Inter: six random letters a subset
    private static string SteadyFontTags(string text, Dictionary<string, string> tags) =>
        FontTag()
            .Replace(
                text,
                m =>
                    tags.TryGetValue(m.Value, out var tag)
                        ? tag
                        : tags[m.Value] = "INTER" + (char)('A' + tags.Count)
            );

    private static PdfObject Inflate(PdfObject o)
    {
        const string Filter = "/Filter/FlateDecode";
        if (o.Stream is null || !o.Text.Contains(Filter, StringComparison.Ordinal))
            return o;
        using var packed = new MemoryStream(o.Stream, 2, o.Stream.Length - 2);
        using var deflate = new DeflateStream(packed, CompressionMode.Decompress);
        using var plain = new MemoryStream();
        deflate.CopyTo(plain);
        return o with
        {
            Text = o.Text.Replace(Filter, "", StringComparison.Ordinal),
            Stream = plain.ToArray(),
        };
    }

    private static byte[] Identify(IEnumerable<PdfObject> objects)
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        foreach (var o in objects.Where(o => !o.IsMetadata))
        {
            hash.AppendData(Encoding.Latin1.GetBytes(o.Text));
            hash.AppendData(o.Stream ?? []);
        }
        return hash.GetHashAndReset()[..16];
    }

    [GeneratedRegex(@"(?<=/)[A-Z]{6}(?=\+)")]
    private static partial Regex FontTag();
}
