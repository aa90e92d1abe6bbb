using System.Buffers.Binary;
using System.IO.Compression;

namespace Practice.Domain.Tests.Handouts;

/// <summary>A logo of our own: a fern in a round, drawn here so that no picture file is needed.</summary>
internal static class SampleLogo
{
    private const int Size = 96;

    public static ReadOnlyMemory<byte> Png { get; } = Draw();

    private static byte[] Draw()
    {
        using var pixels = new MemoryStream();
        using (var zlib = new ZLibStream(pixels, CompressionLevel.Optimal, leaveOpen: true))
            for (var y = 0; y < Size; y++)
            {
                zlib.WriteByte(0);
                for (var x = 0; x < Size; x++)
                    zlib.Write(Pixel(x - Size / 2.0 + 0.5, y - Size / 2.0 + 0.5));
            }
        using var png = new MemoryStream();
        png.Write([0x89, (byte)'P', (byte)'N', (byte)'G', 13, 10, 26, 10]);
        var header = new byte[13];
        BinaryPrimitives.WriteInt32BigEndian(header, Size);
        BinaryPrimitives.WriteInt32BigEndian(header.AsSpan(4), Size);
        (header[8], header[9]) = (8, 6);
        Chunk(png, "IHDR"u8, header);
        Chunk(png, "IDAT"u8, pixels.ToArray());
        Chunk(png, "IEND"u8, []);
        return png.ToArray();
    }

    private static byte[] Pixel(double x, double y)
    {
        var radius = Math.Sqrt(x * x + y * y);
        var isLeaf = Math.Abs(y % 14) < 5 - Math.Abs(x) / 7 || Math.Abs(x) < 1.6;
        return radius > 46 ? [0, 0, 0, 0]
            : isLeaf && radius < 40 ? [255, 255, 255, 255]
            : [11, 110, 98, 255];
    }

    private static void Chunk(Stream png, ReadOnlySpan<byte> kind, byte[] data)
    {
        var four = new byte[4];
        BinaryPrimitives.WriteInt32BigEndian(four, data.Length);
        png.Write(four);
        png.Write(kind);
        png.Write(data);
        BinaryPrimitives.WriteUInt32BigEndian(four, Crc32([.. kind, .. data]));
        png.Write(four);
    }

    private static uint Crc32(byte[] data)
    {
        var crc = 0xFFFFFFFFu;
        foreach (var b in data)
        {
            crc ^= b;
            for (var i = 0; i < 8; i++)
                crc = (crc & 1) == 1 ? (crc >> 1) ^ 0xEDB88320 : crc >> 1;
        }
        return ~crc;
    }
}
