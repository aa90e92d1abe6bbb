using Microsoft.Extensions.DependencyInjection;
using Npgsql;
using Practice.Store;

namespace Practice.TestSupport;

/// <summary>A database of its own for a test class, with the store on top of it.</summary>
public sealed class TestDatabase(PostgresServer server) : IAsyncLifetime
{
    private ServiceProvider? _services;

    /// <summary>Connection of the role that owns the tables, as an operator would give it.</summary>
    public string OwnerConnection { get; private set; } = "";

    /// <summary>The application's services as far as they touch the database.</summary>
    public IServiceProvider Services => _services!;

    /// <summary>Raw connections of the application's role.</summary>
    public NpgsqlDataSource Source => Get<NpgsqlDataSource>();

    public T Get<T>()
        where T : class => Services.GetRequiredService<T>();

    public async ValueTask InitializeAsync()
    {
        OwnerConnection = await server.NewDatabaseAsync();
        _services = new ServiceCollection()
            .AddLogging()
            .AddPracticeStore(await PracticeDatabase.MigrateAsync(OwnerConnection))
            .BuildServiceProvider();
    }

    public async ValueTask DisposeAsync()
    {
        if (_services is not null)
            await _services.DisposeAsync();
        await server.DropAsync(OwnerConnection);
    }
}
