using System.Xml.Linq;
using Microsoft.AspNetCore.DataProtection.XmlEncryption;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Logging.Abstractions;

namespace Practice.Store.Sealing;

/// <summary>
/// Wraps keys that were made before there was a certificate. Data protection itself wraps new keys only, and the old ones go
/// on opening all that was sealed so far.
/// </summary>
internal static class WrapKeys
{
    private static readonly XNamespace Protection = "http://schemas.asp.net/2015/03/dataProtection";

    public static async Task RunAsync(
        PracticeDb owner,
        KeyCertificate certificate,
        CancellationToken cancel
    )
    {
        if (certificate.Current is not { } current)
            return;
        var encryptor = new CertificateXmlEncryptor(current, NullLoggerFactory.Instance);
        foreach (var key in await owner.ProtectionKeys.ToListAsync(cancel))
        {
            var xml = XElement.Parse(key.Xml);
            var secrets = xml.Descendants()
                .Where(e => (bool?)e.Attribute(Protection + "requiresEncryption") == true)
                .ToList();
            foreach (var secret in secrets)
                secret.ReplaceWith(Wrapped(encryptor.Encrypt(secret)));
            if (secrets.Count > 0)
                key.Xml = xml.ToString(SaveOptions.DisableFormatting);
        }

        await owner.SaveChangesAsync(cancel);
    }

    private static XElement Wrapped(EncryptedXmlInfo secret) =>
        new(
            Protection + "encryptedSecret",
            new XAttribute("decryptorType", secret.DecryptorType.AssemblyQualifiedName!),
            secret.EncryptedElement
        );
}
