using System.Buffers.Binary;
using System.Security.Cryptography;

namespace Practice.E2E.Tests.People;

/// <summary>What an authenticator does: six digits of the key and the half minute (RFC 6238).</summary>
internal static class SecondFactor
{
    private const string Letters = "abcdefghijklmnopqrstuvwxyz234567";

    public static string Code(string key)
    {
        var bits = string.Concat(
            key.Replace(" ", "", StringComparison.Ordinal)
                .ToLowerInvariant()
                .Select(c =>
                    Convert
                        .ToString(Letters.IndexOf(c, StringComparison.Ordinal), 2)
                        .PadLeft(5, '0')
                )
        );
        var secret = Enumerable
            .Range(0, bits.Length / 8)
            .Select(i => Convert.ToByte(bits.Substring(i * 8, 8), 2))
            .ToArray();
        Span<byte> step = stackalloc byte[8];
        BinaryPrimitives.WriteInt64BigEndian(step, DateTimeOffset.UtcNow.ToUnixTimeSeconds() / 30);
#pragma warning disable CA5350 // the standard says SHA-1
        var mac = HMACSHA1.HashData(secret, step);
#pragma warning restore CA5350
        var number = BinaryPrimitives.ReadInt32BigEndian(mac.AsSpan(mac[^1] & 15)) & int.MaxValue;
        return $"{number % 1_000_000:000000}";
    }
}
