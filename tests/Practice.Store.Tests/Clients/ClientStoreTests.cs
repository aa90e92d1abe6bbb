using NodaTime;
using Practice.Domain.Caseload;
using Practice.Domain.Clients;
using Practice.Domain.Plans;
using Practice.Store.Audit;
using Practice.Store.Clients;
using Practice.Store.Plans;
using Practice.Store.Races;
using Practice.Store.Screening;

namespace Practice.Store.Tests.Clients;

public class ClientStoreTests(TwoPractices practices) : IClassFixture<TwoPractices>
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;
    private static readonly LocalDate Today = new(2026, 9, 1);

    private Guid Practice => practices.Ours.PracticeId;
    private ClientStore Clients => practices.Database.Get<ClientStore>();

    [Fact]
    public async Task A_client_reads_back_as_she_was_filed()
    {
        var filed = await AddAsync("Mira", "Filed");
        var read = await Clients.Find(Practice, filed.Value.Id, Cancel);
        Assert.Equivalent(filed.Value, read!.Value, strict: true);
        Assert.Equal(filed.Version, read.Version);
    }

    [Fact]
    public async Task Who_saves_second_is_shown_what_the_first_one_saved_and_overwrites_nothing()
    {
        var filed = await AddAsync("Mira", "Twice");
        var first = (await Clients.Find(Practice, filed.Value.Id, Cancel))!;
        var second = (await Clients.Find(Practice, filed.Value.Id, Cancel))!;

        first.Value.Annotate("from the first");
        var saved = Assert.IsType<Saved<Client>>(await SaveAsync(first));
        second.Value.Annotate("from the second");
        var conflict = Assert.IsType<Conflict<Client>>(await SaveAsync(second));

        Assert.Equal("from the first", conflict.Theirs?.Value.Notes);
        Assert.Equal(saved.Now.Version, conflict.Theirs?.Version);
        saved.Now.Value.Annotate("going on");
        Assert.IsType<Saved<Client>>(await SaveAsync(saved.Now));
    }

    [Fact]
    public async Task A_change_that_was_not_saved_leaves_no_line_in_the_audit()
    {
        var filed = await AddAsync("Mira", "Audited");
        var stale = filed with { Version = filed.Version - 1 };
        Assert.IsType<Conflict<Client>>(await SaveAsync(stale));
        var audit = practices.Database.Get<AuditLog>();
        var line = Assert.Single(await audit.Latest(Practice, filed.Value.Id, 10, Cancel));
        Assert.Equal("client-registered", line.What);
    }

    [Theory]
    [InlineData("svobo", "Jana Svobodová")]
    [InlineData("SVOBODOVÁ ja", "Jana Svobodová")]
    [InlineData("100%", "Percy 100%")]
    [InlineData("o'br", "Una O'Brien")]
    [InlineData("svobodova", "Jana Svobodová")]
    [InlineData("zoe", "Zoë Łukasz")]
    [InlineData("ZOË lukasz", "Zoë Łukasz")]
    [InlineData("soren strasse", "Søren Straße")]
    [InlineData("straße", "Søren Straße")]
    [InlineData("ελενη", "Ελένη Παπαδάκη")]
    public async Task Search_finds_parts_of_names_whatever_their_case_and_accents(
        string text,
        string name
    )
    {
        await AddAsync("Jana", "Svobodová");
        await AddAsync("Percy", "100%");
        await AddAsync("Una", "O'Brien");
        await AddAsync("Zoë", "Łukasz");
        await AddAsync("Søren", "Straße");
        await AddAsync("Ελένη", "Παπαδάκη");
        var rows = await Clients.Search(Practice, text, Today, Cancel);
        Assert.NotEmpty(rows);
        Assert.All(rows, row => Assert.Equal(name, row.Name));
    }

    [Fact]
    public async Task The_list_shows_the_next_race_and_its_latest_plan()
    {
        var client = await AddAsync("Nora", "Nextrace");
        var races = practices.Database.Get<RaceStore>();
        var plans = practices.Database.Get<PlanStore>();
        var audit = Sample.Audit(Practice);
        await races.Add(Sample.Race(client.Value, Today.PlusDays(-1)), audit, Cancel);
        var next = Sample.Race(client.Value, Today.PlusDays(40));
        await races.Add(next, Sample.Audit(Practice), Cancel);
        await races.Add(
            Sample.Race(client.Value, Today.PlusDays(80)),
            Sample.Audit(Practice),
            Cancel
        );
        await plans.Add(Sample.Draft(next, 1), Sample.Audit(Practice), Cancel);
        await plans.Add(Sample.Draft(next, 2), Sample.Audit(Practice), Cancel);

        var row = Assert.Single(await Clients.Search(Practice, "nextrace", Today, Cancel));
        Assert.Equal(next.Id, row.NextRace?.RaceId);
        Assert.Equal(
            (2, PlanStatus.Draft),
            (row.NextRace!.LatestPlan!.Number, row.NextRace.LatestPlan.Status)
        );
        Assert.Equal(3, (await races.OfClient(Practice, client.Value.Id, Cancel)).Length);
        var day = await races.Between(Practice, Today.PlusDays(40), Today.PlusDays(40), Cancel);
        Assert.Equal(["Nora Nextrace"], day.Select(r => r.ClientName));
    }

    [Fact]
    public async Task An_erased_client_takes_everything_along_but_the_audit()
    {
        var client = await AddAsync("Ella", "Erased");
        var race = Sample.Race(client.Value);
        await practices.Database.Get<RaceStore>().Add(race, Sample.Audit(Practice), Cancel);
        var plan = Sample.Draft(race);
        plan.Issue("A. Tester", Sample.Now);
        await practices.Database.Get<PlanStore>().Add(plan, Sample.Audit(Practice), Cancel);
        var screenings = practices.Database.Get<ScreeningStore>();
        await screenings.Add(Sample.Screening(client.Value), Sample.Audit(Practice), Cancel);

        var audit = Sample.Audit(Practice, "client-erased", client.Value.Id);
        Assert.True(await Clients.Erase(client.Value.Id, audit, Cancel));

        Assert.Null(await Clients.Find(Practice, client.Value.Id, Cancel));
        Assert.Null(await practices.Database.Get<PlanStore>().Find(Practice, plan.Id, Cancel));
        Assert.Null(await screenings.Of(Practice, client.Value.Id, Cancel));
        var log = practices.Database.Get<AuditLog>();
        var lines = await log.Latest(Practice, client.Value.Id, 10, Cancel);
        Assert.Equal(["client-erased", "client-registered"], lines.Select(l => l.What));
    }

    [Fact]
    public async Task A_screening_reads_back_with_answers_and_clearances()
    {
        var client = await AddAsync("Sina", "Screened");
        var screenings = practices.Database.Get<ScreeningStore>();
        var filed = await screenings.Add(
            Sample.Screening(client.Value),
            Sample.Audit(Practice),
            Cancel
        );
        var read = await screenings.Of(Practice, client.Value.Id, Cancel);
        Assert.Equivalent(filed.Value, read!.Value, strict: true);
        var several = await screenings.OfSeveral(
            Practice,
            [client.Value.Id, practices.TheirClient.Id],
            Cancel
        );
        Assert.Equal([client.Value.Id], several.Keys);
    }

    private Task<OnFile<Client>> AddAsync(string given, string family)
    {
        var client = Sample.Client(Practice, given, family);
        return Clients.Add(client, Sample.Audit(Practice, "client-registered", client.Id), Cancel);
    }

    private Task<SaveOutcome<Client>> SaveAsync(OnFile<Client> client) =>
        Clients.Save(client, Sample.Audit(Practice, "client-changed", client.Value.Id), Cancel);
}
