using Microsoft.AspNetCore.DataProtection;
using Microsoft.AspNetCore.DataProtection.KeyManagement;
using Microsoft.Extensions.DependencyInjection;
using Npgsql;

namespace Practice.Store.Sealing;

/// <summary>The data-protection keys of the installation: they stand in PostgreSQL, so that every replica has the same.</summary>
internal static class KeyRing
{
    public static IServiceCollection AddKeyRing(
        this IServiceCollection services,
        KeyCertificate certificate
    )
    {
        var keys = services.AddDataProtection().SetApplicationName("practice");
        services
            .AddOptions<KeyManagementOptions>()
            .Configure<IServiceProvider>(
                (options, provider) =>
                    options.XmlRepository = new KeyTable(
                        provider.GetRequiredService<NpgsqlDataSource>
                    )
            );
        if (certificate.Current is { } current)
            keys.ProtectKeysWithCertificate(current);
        if (certificate.Former is { } former)
            keys.UnprotectKeysWithAnyCertificate(former);
        return services.AddSingleton<HealthSeal>();
    }
}
