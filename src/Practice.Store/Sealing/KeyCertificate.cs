using System.Security.Cryptography;
using System.Security.Cryptography.X509Certificates;
using Microsoft.Extensions.Configuration;

namespace Practice.Store.Sealing;

/// <summary>
/// The certificate without which the keys in the database open nothing; none when the operator has set none, and then they
/// lie there readable beside what they seal.
/// </summary>
public sealed class KeyCertificate
{
    private KeyCertificate() { }

    /// <summary>No certificate.</summary>
    public static KeyCertificate None { get; } = new();

    /// <summary>Wraps keys from now on.</summary>
    internal X509Certificate2? Current { get; private init; }

    /// <summary>Still opens keys that were wrapped with it before <see cref="Current"/>.</summary>
    internal X509Certificate2? Former { get; private init; }

    /// <summary>Reads <c>Keys:Certificate</c> and <c>Keys:FormerCertificate</c>, PKCS#12 files with their private keys.</summary>
    /// <exception cref="PracticeDatabaseException">A file cannot be read as such; the message says which.</exception>
    public static KeyCertificate From(IConfiguration configuration)
    {
        ArgumentNullException.ThrowIfNull(configuration);
        return new()
        {
            Current = Read(configuration, "Keys:Certificate"),
            Former = Read(configuration, "Keys:FormerCertificate"),
        };
    }

    private static X509Certificate2? Read(IConfiguration configuration, string setting)
    {
        if (configuration[setting] is not { Length: > 0 } file)
            return null;
        try
        {
            var certificate = X509CertificateLoader.LoadPkcs12FromFile(
                file,
                configuration[$"{setting}Password"]
            );
            return certificate.GetRSAPrivateKey() is not null
                ? certificate
                : throw new PracticeDatabaseException(
                    $"{setting}: {file} holds no RSA certificate with its private key."
                );
        }
        catch (Exception e) when (e is CryptographicException or IOException)
        {
            throw new PracticeDatabaseException(
                $"{setting}: {file} cannot be read as a PKCS#12 file with the password of {setting}Password. {e.Message}"
            );
        }
    }
}
