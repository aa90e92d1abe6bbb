using System.Collections.Concurrent;
using System.Collections.Immutable;
using Microsoft.Extensions.DependencyInjection;
using NodaTime;
using Npgsql;
using Practice.Domain.Caseload;
using Practice.Domain.Clients;
using Practice.Domain.Practices;
using Practice.Domain.Quantities;
using Practice.Store;
using Practice.Store.Clients;
using Practice.Store.Portal;
using Practice.Store.Practices;

namespace Practice.TestSupport.Attack;

/// <summary>What came of a crowd.</summary>
/// <param name="Reads">Readings that were checked.</param>
/// <param name="Cancelled">Statements cancelled while they ran.</param>
/// <param name="Failed">Statements that failed, some of them within a transaction.</param>
/// <param name="Leaks">Readings that told of another practice, or not of the own one.</param>
internal sealed record CrowdReport(
    int Reads,
    int Cancelled,
    int Failed,
    ImmutableArray<string> Leaks
);

/// <summary>
/// Desks of several practices crowd around three connections, and half of what they do goes wrong: failed statements, cancelled
/// ones, transactions left open. Whoever gets the connection next must see the own practice only.
/// </summary>
internal sealed class CrowdedPool(string connection) : IAsyncDisposable
{
    private const int Connections = 3;
    private const int Practices = 6;
    private const int Desks = 18;

    private static readonly Instant Now = Instant.FromUtc(2027, 4, 1, 10, 0);

    private readonly ServiceProvider _services = new ServiceCollection()
        .AddLogging()
        .AddPracticeStore(
            new NpgsqlConnectionStringBuilder(connection)
            {
                MaxPoolSize = Connections,
                Timeout = 60,
            }.ConnectionString
        )
        .BuildServiceProvider();

    private readonly ConcurrentBag<string> _leaks = [];
    private ImmutableArray<Client> _clients = [];
    private int _reads;
    private int _cancelled;
    private int _failed;

    public async Task<CrowdReport> RunAsync(Duration howLong, CancellationToken cancel)
    {
        _clients = [.. await Task.WhenAll(Enumerable.Range(0, Practices).Select(Found))];
        using var over = CancellationTokenSource.CreateLinkedTokenSource(cancel);
        over.CancelAfter(howLong.ToTimeSpan());
        await Task.WhenAll(
            Enumerable
                .Range(0, Desks)
                .Select(desk =>
                    Task.Run(
                        async () =>
                        {
                            var dice = new Random(desk);
                            while (!over.IsCancellationRequested)
                                await Act(_clients[desk % Practices], dice);
                        },
                        cancel
                    )
                )
        );
        return new CrowdReport(_reads, _cancelled, _failed, [.. _leaks]);
    }

    private async Task Act(Client own, Random dice)
    {
        switch (dice.Next(6))
        {
            case 0:
                await Search(own);
                break;
            case 1:
                await Find(own, _clients[dice.Next(Practices)]);
                break;
            case 2:
                await Fail(own);
                break;
            case 3:
                await Cancel(own, dice);
                break;
            case 4:
                await Knock();
                break;
            default:
                await LookStraight();
                break;
        }
    }

    private async Task Search(Client own)
    {
        var found = await _services
            .GetRequiredService<ClientStore>()
            .Search(own.PracticeId, "", Now.InUtc().Date, default);
        Read(found.Select(c => c.ClientId).SequenceEqual([own.Id]), "a search");
    }

    private async Task Find(Client own, Client any)
    {
        var found = await _services
            .GetRequiredService<ClientStore>()
            .Find(own.PracticeId, any.Id, default);
        // opening it proves more: what is sealed is sealed for the practice
        Read(found?.Value.Notes == (any == own ? own.Notes : null), "a client by key");
    }

    /// <summary>A statement that the database refuses in the midst of a transaction: the same key once more.</summary>
    private async Task Fail(Client own)
    {
        try
        {
            await _services.GetRequiredService<ClientStore>().Add(own, Audit(own), default);
            _leaks.Add("the same client was filed twice");
        }
        catch (Exception e) when (e.InnerException is PostgresException)
        {
            Interlocked.Increment(ref _failed);
        }
    }

    /// <summary>A connection that was told a practice, left in an open transaction by a statement that was cancelled.</summary>
    private async Task Cancel(Client own, Random dice)
    {
        using var soon = new CancellationTokenSource(dice.Next(1, 15));
        try
        {
            await using var raw = await _services
                .GetRequiredService<NpgsqlDataSource>()
                .OpenConnectionAsync(CancellationToken.None);
            await using var open = await raw.BeginTransactionAsync(CancellationToken.None);
            await using var tell = new NpgsqlCommand(
                "select set_config('practice.id', $1, false), pg_sleep(0.05)",
                raw
            )
            {
                Parameters = { new() { Value = own.PracticeId.ToString() } },
            };
            await tell.ExecuteNonQueryAsync(soon.Token);
        }
        catch (OperationCanceledException)
        {
            Interlocked.Increment(ref _cancelled);
        }
    }

    /// <summary>Somebody at the door, of whom no practice is known, with a key that opens nothing.</summary>
    private async Task Knock()
    {
        var link = await _services
            .GetRequiredService<PhoneLinkStore>()
            .AtTheDoor(new string('0', 64), default);
        Read(link is null, "the door");
    }

    /// <summary>A connection straight from the pool, after whoever had it, that nobody told anything.</summary>
    private async Task LookStraight()
    {
        await using var raw = await _services
            .GetRequiredService<NpgsqlDataSource>()
            .OpenConnectionAsync();
        await using var count = new NpgsqlCommand(
            "select (select count(*) from client) + (select count(*) from practice)",
            raw
        );
        Read(await count.ExecuteScalarAsync() is 0L, "a connection that was told nothing");
    }

    private void Read(bool isAsItShouldBe, string what)
    {
        Interlocked.Increment(ref _reads);
        if (!isAsItShouldBe)
            _leaks.Add(what);
    }

    private async Task<Client> Found(int number)
    {
        var profile = new PracticeProfile
        {
            PracticeId = Guid.CreateVersion7(),
            Name = $"Crowd {number}",
        };
        var client = Client.Register(
            profile.PracticeId,
            "Ines",
            $"Of crowd {number}",
            new LocalDate(1990, 5, 4),
            new Physique { Sex = Sex.Female, HeightCm = 170 },
            new BodyMassEntry(new LocalDate(2027, 3, 30), BodyMass.OfKilograms(70))
        );
        client.Annotate($"Notes of crowd {number}");
        await _services.GetRequiredService<PracticeStore>().Found(profile, Audit(client), default);
        await _services.GetRequiredService<ClientStore>().Add(client, Audit(client), default);
        return client;
    }

    private static AuditEntry Audit(Client client) =>
        new()
        {
            PracticeId = client.PracticeId,
            At = Now,
            By = "The crowd",
            What = "tested",
        };

    public ValueTask DisposeAsync() => _services.DisposeAsync();
}
