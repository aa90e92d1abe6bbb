using System.Buffers.Text;
using System.Security.Cryptography;

namespace Practice.Service.Portal;

/// <summary>The secret in a link's address: 256 random bits, of which only the fingerprint is kept.</summary>
internal static class LinkSecret
{
    private const int Bytes = 32;

    /// <summary>A new one, 43 characters that an address may hold.</summary>
    public static string New() => Base64Url.EncodeToString(RandomNumberGenerator.GetBytes(Bytes));

    /// <summary>SHA-256 as 64 hexadecimal digits; null for what can be no secret, so that no search is made for it.</summary>
    public static string? Fingerprint(string secret)
    {
        if (!Base64Url.IsValid(secret, out var length) || length != Bytes)
            return null;
        var bytes = Base64Url.DecodeFromChars(secret);
        // the last character has bits to spare: one secret has one way of writing it
        return Base64Url.EncodeToString(bytes) == secret
            ? Convert.ToHexStringLower(SHA256.HashData(bytes))
            : null;
    }
}
