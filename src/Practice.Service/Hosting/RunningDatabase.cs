using Microsoft.Extensions.Configuration;
using Practice.Store;
using Practice.Store.Sealing;

namespace Practice.Service.Hosting;

/// <summary>The database of this process: the server that was named, or a private one that stops with it.</summary>
public sealed class RunningDatabase : IAsyncDisposable
{
    private readonly PracticeDatabase _database;

    private RunningDatabase(PracticeDatabase database) => _database = database;

    internal string ConnectionString => _database.ConnectionString;

    internal KeyCertificate Certificate => _database.Certificate;

    /// <summary>Finds or starts the server and brings the database up to date.</summary>
    /// <exception cref="PracticeStartException">There is no database to be had; the message says what to do.</exception>
    public static async Task<RunningDatabase> StartAsync(
        IConfiguration configuration,
        string contentRoot
    )
    {
        try
        {
            return new RunningDatabase(
                await PracticeDatabase.StartAsync(configuration, contentRoot)
            );
        }
        catch (PracticeDatabaseException e)
        {
            throw new PracticeStartException(e.Message, e);
        }
    }

    /// <inheritdoc />
    public ValueTask DisposeAsync() => _database.DisposeAsync();
}

/// <summary>The application cannot start; the message says what to do about it.</summary>
public sealed class PracticeStartException(string message, Exception cause)
    : Exception(message, cause);
