using System.IO.Compression;
using System.Security.Cryptography;
using System.Text.Json;
using Microsoft.AspNetCore.DataProtection;
using Practice.Store.Documents;

namespace Practice.Store.Sealing;

/// <summary>
/// Closes health facts before they reach the database and opens them when they come back, with the installation's
/// data-protection keys. What does not open is an error, never an empty answer: an empty screening would read as "no
/// problems".
/// </summary>
internal sealed class HealthSeal(IDataProtectionProvider keys)
{
    /// <summary>The first bytes of everything that data protection has sealed; no JSON begins with them.</summary>
    public static ReadOnlySpan<byte> Mark => [0x09, 0xF0, 0xC9, 0xF0];

    public byte[] Close(object document, Type type, SealedPlace place) =>
        Close(JsonSerializer.SerializeToUtf8Bytes(document, type, StoredJson.Options), place);

    /// <summary>Closes a document that is JSON already.</summary>
    public byte[] Close(byte[] json, SealedPlace place) => At(place).Protect(Packed(json));

    /// <exception cref="SealedHealthException">It cannot be opened; nothing may be assumed in its place.</exception>
    public object Open(byte[]? closed, Type type, SealedPlace place)
    {
        if (closed is null || !closed.AsSpan().StartsWith(Mark))
            throw new SealedHealthException(place, "It is not sealed.");
        try
        {
            return JsonSerializer.Deserialize(
                    Unpacked(At(place).Unprotect(closed)),
                    type,
                    StoredJson.Options
                ) ?? throw new SealedHealthException(place, "It reads as nothing.");
        }
        catch (CryptographicException e)
        {
            throw new SealedHealthException(place, e.Message, e);
        }
    }

    private IDataProtector At(SealedPlace place) =>
        keys.CreateProtector(
            "practice.health",
            place.Column,
            place.PracticeId.ToString(),
            place.RowId.ToString()
        );

    // what is sealed cannot be compressed by the database any more: a plan would take many times its room
    private static byte[] Packed(byte[] json)
    {
        using var packed = new MemoryStream();
        using (var packing = new BrotliStream(packed, CompressionLevel.Fastest))
            packing.Write(json);
        return packed.ToArray();
    }

    private static MemoryStream Unpacked(byte[] packed)
    {
        var json = new MemoryStream();
        using (
            var unpacking = new BrotliStream(new MemoryStream(packed), CompressionMode.Decompress)
        )
            unpacking.CopyTo(json);
        json.Position = 0;
        return json;
    }
}
