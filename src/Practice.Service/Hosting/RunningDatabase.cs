using Microsoft.Extensions.Configuration;
using Practice.Store;
using Practice.Store.Sealing;

namespace Practice.Service.Hosting;

/// <summary>The database of this process: the server that was named, or a private one that stops with it.</summary>
public sealed class RunningDatabase : IAsyncDisposable
{
    private readonly Task<PracticeDatabase> _start;

    private RunningDatabase(Task<PracticeDatabase> start, KeyCertificate certificate) =>
        (_start, Certificate) = (start, certificate);

    /// <exception cref="InvalidOperationException">The database is not ready yet.</exception>
    internal string ConnectionString =>
        _start.IsCompletedSuccessfully
            ? _start.Result.ConnectionString
            : throw new InvalidOperationException("The database is not ready yet.");

    /// <summary>What the keys in the database are wrapped with.</summary>
    internal KeyCertificate Certificate { get; }

    /// <summary>
    /// Begins to find or start the server and to bring the database up to date. The application can be put together
    /// meanwhile; nothing in it may ask the database before <see cref="ReadyAsync"/> has ended.
    /// </summary>
    /// <exception cref="PracticeStartException">A certificate cannot be read; the message says which.</exception>
    public static RunningDatabase Start(IConfiguration configuration, string contentRoot)
    {
        try
        {
            var certificate = KeyCertificate.From(configuration);
            return new RunningDatabase(
                Task.Run(() =>
                    PracticeDatabase.StartAsync(configuration, contentRoot, certificate)
                ),
                certificate
            );
        }
        catch (PracticeDatabaseException e)
        {
            throw new PracticeStartException(e.Message, e);
        }
    }

    /// <summary>Waits until the database can be asked.</summary>
    /// <exception cref="PracticeStartException">There is no database to be had; the message says what to do.</exception>
    public async Task ReadyAsync()
    {
        try
        {
            await _start;
        }
        catch (PracticeDatabaseException e)
        {
            throw new PracticeStartException(e.Message, e);
        }
    }

    /// <inheritdoc />
    public async ValueTask DisposeAsync()
    {
        await Task.WhenAny(_start);
        if (_start.IsCompletedSuccessfully)
            await _start.Result.DisposeAsync();
    }
}

/// <summary>The application cannot start; the message says what to do about it.</summary>
public sealed class PracticeStartException(string message, Exception cause)
    : Exception(message, cause);
