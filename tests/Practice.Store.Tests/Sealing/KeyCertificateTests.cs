using System.Security.Cryptography;
using System.Security.Cryptography.X509Certificates;
using Microsoft.AspNetCore.DataProtection;
using Microsoft.Extensions.Configuration;
using Microsoft.Extensions.DependencyInjection;
using Npgsql;
using Practice.Store.Sealing;
using Practice.TestSupport;

namespace Practice.Store.Tests.Sealing;

public sealed class KeyCertificateTests(TestDatabase database)
    : IClassFixture<TestDatabase>,
        IDisposable
{
    private const string Password = "walnut";
    private readonly string _file = NewFile("keys.practice.example");
    private readonly string _next = NewFile("next.practice.example");

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Keys_made_before_the_certificate_are_wrapped_and_open_with_it_alone()
    {
        var letter = Protector(database.Services).Protect("said before");
        Assert.Contains("<value>", await KeysAsync(), StringComparison.Ordinal);

        var certificate = Certificate(("Keys:Certificate", _file));
        var application = await PracticeDatabase.MigrateAsync(
            database.OwnerConnection,
            certificate,
            Cancel
        );

        var keys = await KeysAsync();
        Assert.DoesNotContain("<value>", keys, StringComparison.Ordinal);
        Assert.Contains("encryptedSecret", keys, StringComparison.Ordinal);
        await using (var with = Replica(application, certificate))
            Assert.Equal("said before", Protector(with).Unprotect(letter));
        await using (var without = Replica(application, KeyCertificate.None))
            Assert.Throws<CryptographicException>(() => Protector(without).Unprotect(letter));

        // another certificate takes over: what the former one wrapped still opens while it is named
        var both = Certificate(("Keys:Certificate", _next), ("Keys:FormerCertificate", _file));
        await using (var renewed = Replica(application, both))
            Assert.Equal("said before", Protector(renewed).Unprotect(letter));
    }

    [Fact]
    public void A_certificate_that_cannot_be_read_stops_the_start_and_says_which()
    {
        var missing = Assert.Throws<PracticeDatabaseException>(() =>
            Certificate(("Keys:Certificate", _file + ".not-there"))
        );
        Assert.Contains("not-there", missing.Message, StringComparison.Ordinal);
        var wrong = Assert.Throws<PracticeDatabaseException>(() =>
            Certificate(("Keys:Certificate", _file), ("Keys:CertificatePassword", "hazel"))
        );
        Assert.Contains("Keys:CertificatePassword", wrong.Message, StringComparison.Ordinal);
    }

    public void Dispose()
    {
        File.Delete(_file);
        File.Delete(_next);
    }

    private static KeyCertificate Certificate(params (string Setting, string Value)[] settings)
    {
        var all = new Dictionary<string, string?>
        {
            ["Keys:CertificatePassword"] = Password,
            ["Keys:FormerCertificatePassword"] = Password,
        };
        foreach (var (setting, value) in settings)
            all[setting] = value;
        return KeyCertificate.From(new ConfigurationBuilder().AddInMemoryCollection(all).Build());
    }

    private static string NewFile(string name)
    {
        using var key = RSA.Create(2048);
        var request = new CertificateRequest(
            $"CN={name}",
            key,
            HashAlgorithmName.SHA256,
            RSASignaturePadding.Pkcs1
        );
        using var certificate = request.CreateSelfSigned(
            DateTimeOffset.UnixEpoch,
            DateTimeOffset.UnixEpoch.AddYears(200)
        );
        var file = Path.GetTempFileName();
        File.WriteAllBytes(file, certificate.Export(X509ContentType.Pkcs12, Password));
        return file;
    }

    private static ServiceProvider Replica(string application, KeyCertificate certificate) =>
        new ServiceCollection()
            .AddLogging()
            .AddPracticeStore(application, certificate)
            .BuildServiceProvider();

    private static IDataProtector Protector(IServiceProvider services) =>
        services.GetRequiredService<IDataProtectionProvider>().CreateProtector("test");

    private async Task<string> KeysAsync()
    {
        await using var owner = NpgsqlDataSource.Create(database.OwnerConnection);
        await using var command = owner.CreateCommand(
            "select string_agg(xml, '') from data_protection_key"
        );
        return (string)(await command.ExecuteScalarAsync(Cancel))!;
    }
}
