using System.Collections.Concurrent;
using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using System.Threading.Channels;
using Microsoft.Extensions.Hosting;
using Microsoft.Extensions.Logging;
using Npgsql;
using Practice.Store.Documents;

namespace Practice.Store.News;

/// <summary>
/// What changes in practices, whichever server process changed it. One connection of the process listens; readers are
/// told what concerns their practice, and that there was a gap after every new connection.
/// </summary>
public sealed partial class PracticeNews : BackgroundService
{
    private static readonly TimeSpan FirstPause = TimeSpan.FromSeconds(1);
    private static readonly TimeSpan LongestPause = TimeSpan.FromSeconds(30);

    private readonly string _connectionString;
    private readonly ILogger<PracticeNews> _log;
    private readonly ConcurrentDictionary<Channel<NewsItem>, Guid> _readers = new();

    internal PracticeNews(string connectionString, ILogger<PracticeNews> log)
    {
        _connectionString = new NpgsqlConnectionStringBuilder(connectionString)
        {
            // a connection that listens for good is none for the pool, and has to notice by itself that it is dead
            Pooling = false,
            KeepAlive = 30,
        }.ConnectionString;
        _log = log;
    }

    /// <summary>News of a practice from now on, as often as there is some: all that came since the reader last asked.</summary>
    public async IAsyncEnumerable<ImmutableArray<NewsItem>> Of(
        Guid practiceId,
        [EnumeratorCancellation] CancellationToken cancel
    )
    {
        var reader = Channel.CreateUnbounded<NewsItem>();
        _readers[reader] = practiceId;
        try
        {
            while (await reader.Reader.WaitToReadAsync(cancel))
            {
                var news = ImmutableArray.CreateBuilder<NewsItem>();
                while (reader.Reader.TryRead(out var item))
                    news.Add(item);
                yield return news.ToImmutable();
            }
        }
        finally
        {
            _readers.TryRemove(reader, out _);
        }
    }

    /// <inheritdoc />
    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        for (var pause = FirstPause; ; pause = Longer(pause))
        {
            try
            {
                await ListenAsync(() => pause = FirstPause, stoppingToken);
            }
            catch (OperationCanceledException) when (stoppingToken.IsCancellationRequested)
            {
                return;
            }
            catch (NpgsqlException e)
            {
                Lost(e, pause);
            }

            await Task.Delay(pause, stoppingToken);
        }
    }

    private async Task ListenAsync(Action connected, CancellationToken cancel)
    {
        await using var connection = new NpgsqlConnection(_connectionString);
        connection.Notification += (_, told) => Tell(StoredJson.Read<NewsItem>(told.Payload));
        await connection.OpenAsync(cancel);
        await using (var listen = new NpgsqlCommand($"listen {NewsTrigger.Channel}", connection))
            await listen.ExecuteNonQueryAsync(cancel);
        connected();
        foreach (var practice in _readers.Values.Distinct())
            Tell(new NewsItem(practice, null, null));
        while (true)
            await connection.WaitAsync(cancel);
    }

    private void Tell(NewsItem item)
    {
        foreach (var (reader, practice) in _readers)
        {
            if (practice == item.PracticeId)
                reader.Writer.TryWrite(item);
        }
    }

    private static TimeSpan Longer(TimeSpan pause) =>
        pause * 2 < LongestPause ? pause * 2 : LongestPause;

    [LoggerMessage(
        LogLevel.Warning,
        "The connection that listens for news was lost; it is made again in {Pause}. Pages show changes by others later."
    )]
    private partial void Lost(Exception cause, TimeSpan pause);
}
