using System.Collections.Concurrent;
using Microsoft.EntityFrameworkCore;
using NodaTime;
using Practice.Domain.Practices;
using Practice.Store.Mail;
using Practice.TestSupport;

namespace Practice.Store.Tests.Mail;

/// <summary>Letters leave the outbox once each, whoever empties it and whatever goes wrong.</summary>
public sealed class OutboxTests(PostgresServer server) : IAsyncLifetime
{
    private readonly TwoPractices _practices = new(server);

    private LetterStore Letters => _practices.Database.Get<LetterStore>();

    [Fact]
    public async Task Several_senders_at_once_send_each_letter_once_and_see_only_its_own_practice()
    {
        var written = new List<Letter>();
        for (var i = 0; i < 30; i++)
            written.Add(await Post(i % 2 == 0 ? _practices.Ours : _practices.Theirs));
        var sent = new ConcurrentBag<Guid>();

        await Parallel.ForAsync(
            0,
            6,
            new ParallelOptions { MaxDegreeOfParallelism = 6, CancellationToken = Cancel },
            async (_, cancel) =>
            {
                while (
                    await Letters.SendNext(
                        Sample.Now,
                        async (letter, _, _) =>
                        {
                            await Task.Delay(5, cancel);
                            sent.Add(letter.Id);
                            return SendResult.Sent;
                        },
                        cancel
                    )
                ) { }
            }
        );

        Assert.Equal(written.Select(l => l.Id).Order(), sent.Order());
        Assert.Empty(await Letters.Unsent(_practices.Ours.PracticeId, Instant.MinValue, Cancel));
    }

    [Fact]
    public async Task A_failed_letter_waits_longer_each_time_and_is_given_up_in_the_end()
    {
        var letter = await Post(_practices.Ours);
        var now = Sample.Now;
        var waits = new List<Duration>();
        while (await Try(now, new SendResult("No answer")))
        {
            Assert.False(await Try(now, SendResult.Sent)); // not before its time
            var next = await DueAt();
            if (next is null)
                break;
            waits.Add(next.Value - now);
            now = next.Value;
        }
        Assert.Equal(7, waits.Count);
        Assert.Equal(waits.Order(), waits);
        var left = Assert.Single(
            await Letters.Unsent(_practices.Ours.PracticeId, Instant.MinValue, Cancel)
        );
        Assert.Equal((letter.Id, 8, "No answer"), (left.Id, left.FailedTries, left.Problem));
        Assert.NotNull(left.GivenUpAt);
        Assert.Empty(left.Sealed);
    }

    [Fact]
    public async Task Without_a_mail_server_a_letter_waits_and_no_try_is_counted()
    {
        await Post(_practices.Ours);
        Assert.True(await Try(Sample.Now, SendResult.NoServer));
        var letter = Assert.Single(
            await Letters.Unsent(_practices.Ours.PracticeId, Instant.MinValue, Cancel)
        );
        Assert.Equal((true, 0), (letter.IsWaiting, letter.FailedTries));
    }

    [Fact]
    public async Task A_sender_that_dies_leaves_the_letter_to_the_next()
    {
        var letter = await Post(_practices.Theirs);
        await Assert.ThrowsAsync<InvalidOperationException>(() =>
            Letters.SendNext(
                Sample.Now,
                (_, _, _) => throw new InvalidOperationException("gone"),
                Cancel
            )
        );
        Letter? taken = null;
        Assert.True(
            await Letters.SendNext(
                Sample.Now,
                (next, _, _) =>
                {
                    taken = next;
                    return Task.FromResult(SendResult.Sent);
                },
                Cancel
            )
        );
        Assert.Equal(letter.Id, taken?.Id);
    }

    private async Task<Letter> Post(PracticeProfile practice)
    {
        var letter = Letter.Write(
            practice.PracticeId,
            null,
            LetterKind.Test,
            "somebody@example.org",
            "A letter",
            [1, 2, 3],
            "A. Tester",
            Sample.Now
        );
        await Letters.Post(letter, Sample.Audit(practice.PracticeId, "posted"), Cancel);
        return letter;
    }

    private Task<bool> Try(Instant now, SendResult result) =>
        Letters.SendNext(now, (_, _, _) => Task.FromResult(result), Cancel);

    private async Task<Instant?> DueAt()
    {
        await using var db = PracticeDbOptions.Open(_practices.Database.Source);
        return (await db.LettersDue.SingleOrDefaultAsync(Cancel))?.DueAt;
    }

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    public ValueTask InitializeAsync() => _practices.InitializeAsync();

    public ValueTask DisposeAsync() => _practices.DisposeAsync();
}
