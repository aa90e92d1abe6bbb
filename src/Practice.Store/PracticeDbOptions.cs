using Microsoft.AspNetCore.Identity;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Design;
using Microsoft.Extensions.DependencyInjection;
using Npgsql;
using Practice.Store.RowSecurity;
using Practice.Store.Sealing;

namespace Practice.Store;

/// <summary>The one way in which a context is set up, whether the application, a migration or a test asks for it.</summary>
internal static class PracticeDbOptions
{
    // Identity reads the version of its tables (3 has the passkeys) from the application's services and nowhere else
    private static readonly ServiceProvider IdentityServices = new ServiceCollection()
        .Configure<IdentityOptions>(SetIdentityVersion)
        .BuildServiceProvider();

    public static void SetIdentityVersion(IdentityOptions options) =>
        options.Stores.SchemaVersion = IdentitySchemaVersions.Version3;

    public static NpgsqlDataSource Source(string connectionString)
    {
        var builder = new NpgsqlDataSourceBuilder(connectionString);
        builder.UseNodaTime();
        return builder.Build();
    }

    /// <summary>For the application: rows of one practice.</summary>
    public static void UsePractice(this DbContextOptionsBuilder options, NpgsqlDataSource source) =>
        options
            .UseNpgsql(source, npgsql => npgsql.UseNodaTime())
            .UseSnakeCaseNamingConvention()
            .AddInterceptors(new TenantConnection(), SealedDocuments.Interceptor);

    /// <summary>Builds the model, which all contexts of this process share, and compiles a first query. Needs no server.</summary>
    public static void WarmUp()
    {
        using var source = Source("Host=none-is-needed");
        using var db = Open(source);
        _ = db.Register.ToQueryString();
    }

    /// <summary>A context outside the application's services: for migrations and tests.</summary>
    public static PracticeDb Open(NpgsqlDataSource source)
    {
        var options = new DbContextOptionsBuilder<PracticeDb>();
        options.UseApplicationServiceProvider(IdentityServices);
        options.UsePractice(source);
        return new PracticeDb(options.Options);
    }
}

/// <summary>Lets <c>dotnet ef</c> make migrations without a server.</summary>
internal sealed class DesignTimePracticeDb : IDesignTimeDbContextFactory<PracticeDb>
{
    public PracticeDb CreateDbContext(string[] args) =>
        PracticeDbOptions.Open(PracticeDbOptions.Source("Host=none-is-needed"));
}
