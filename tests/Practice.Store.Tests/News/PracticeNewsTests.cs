using System.Threading.Channels;
using Microsoft.Extensions.Logging.Abstractions;
using Npgsql;
using Practice.Store.Audit;
using Practice.Store.News;

namespace Practice.Store.Tests.News;

/// <summary>Two server processes on one database, each with its own listener.</summary>
public class PracticeNewsTests(TwoPractices practices) : IClassFixture<TwoPractices>
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public async Task What_one_process_writes_every_process_hears_of()
    {
        await using var here = await ListenAsync();
        await using var there = await ListenAsync();
        var about = Guid.CreateVersion7();

        await WriteAsync(practices.Ours.PracticeId, "feedback-told", about);

        var expected = new NewsItem(practices.Ours.PracticeId, "feedback-told", about);
        Assert.Equal(expected, await here.NextAsync());
        Assert.Equal(expected, await there.NextAsync());
    }

    [Fact]
    public async Task A_practice_hears_nothing_of_another()
    {
        await using var listener = await ListenAsync();

        await WriteAsync(practices.Theirs.PracticeId, "theirs", null);
        await WriteAsync(practices.Ours.PracticeId, "ours", null);

        Assert.Equal("ours", (await listener.NextAsync()).What);
    }

    [Fact]
    public async Task After_a_lost_connection_readers_are_told_of_a_gap_and_then_hear_again()
    {
        await using var listener = await ListenAsync();

        await CutListenersAsync();

        Assert.True((await listener.NextAsync()).IsGap);
        await WriteAsync(practices.Ours.PracticeId, "after-the-gap", null);
        Assert.Equal("after-the-gap", (await listener.NextAsync()).What);
    }

    private Task WriteAsync(Guid practiceId, string what, Guid? about) =>
        practices.Database.Get<AuditLog>().Note(Sample.Audit(practiceId, what, about), Cancel);

    private async Task<Listener> ListenAsync()
    {
        var listener = new Listener(
            await PracticeDatabase.MigrateAsync(practices.Database.OwnerConnection, Cancel),
            practices.Ours.PracticeId
        );
        // the first connection is told as a gap: from here on it listens
        Assert.True((await listener.NextAsync()).IsGap);
        return listener;
    }

    private async Task CutListenersAsync()
    {
        await using var owner = NpgsqlDataSource.Create(practices.Database.OwnerConnection);
        await using var cut = owner.CreateCommand(
            "select pg_terminate_backend(pid) from pg_stat_activity"
                + " where datname = current_database() and query ilike 'listen %'"
        );
        Assert.NotNull(await cut.ExecuteScalarAsync(Cancel));
    }

    private sealed class Listener : IAsyncDisposable
    {
        private readonly PracticeNews _news;
        private readonly Channel<NewsItem> _heard = Channel.CreateUnbounded<NewsItem>();
        private readonly CancellationTokenSource _leaving = new();
        private readonly Task _reading;

        public Listener(string connection, Guid practiceId)
        {
            _news = new PracticeNews(connection, NullLogger<PracticeNews>.Instance);
            _reading = ReadAsync(practiceId);
            _ = _news.StartAsync(_leaving.Token);
        }

        public ValueTask<NewsItem> NextAsync() => _heard.Reader.ReadAsync(Cancel);

        private async Task ReadAsync(Guid practiceId)
        {
            await foreach (var news in _news.Of(practiceId, _leaving.Token))
            foreach (var item in news)
                await _heard.Writer.WriteAsync(item);
        }

        public async ValueTask DisposeAsync()
        {
            await _leaving.CancelAsync();
            await _news.StopAsync(CancellationToken.None);
            await Assert.ThrowsAnyAsync<OperationCanceledException>(() => _reading);
            _news.Dispose();
            _leaving.Dispose();
        }
    }
}
