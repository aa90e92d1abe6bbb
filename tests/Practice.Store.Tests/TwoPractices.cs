using Practice.Domain.Clients;
using Practice.Domain.Practices;
using Practice.Store.Clients;
using Practice.Store.Practices;
using Practice.TestSupport;

namespace Practice.Store.Tests;

/// <summary>A database with two practices, each with one client.</summary>
public sealed class TwoPractices(PostgresServer server) : IAsyncLifetime
{
    public TestDatabase Database { get; } = new(server);
    public PracticeProfile Ours { get; } = Sample.Practice("Larch House");
    public PracticeProfile Theirs { get; } = Sample.Practice("Birch Yard");
    public Client OurClient { get; private set; } = null!;
    public Client TheirClient { get; private set; } = null!;

    public async ValueTask InitializeAsync()
    {
        await Database.InitializeAsync();
        OurClient = await FoundAsync(Ours, "Ida");
        TheirClient = await FoundAsync(Theirs, "Bo");
    }

    private async Task<Client> FoundAsync(PracticeProfile practice, string given)
    {
        var audit = Sample.Audit(practice.PracticeId, "founded");
        await Database.Get<PracticeStore>().Found(practice, audit, CancellationToken.None);
        var client = Sample.Client(practice.PracticeId, given);
        audit = Sample.Audit(practice.PracticeId, "client-registered", client.Id);
        await Database.Get<ClientStore>().Add(client, audit, CancellationToken.None);
        return client;
    }

    public ValueTask DisposeAsync() => Database.DisposeAsync();
}
