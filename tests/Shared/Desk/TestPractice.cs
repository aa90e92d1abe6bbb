using Microsoft.Extensions.Configuration;
using Microsoft.Extensions.DependencyInjection;
using NodaTime;
using NodaTime.Testing;
using Practice.Domain.Caseload;
using Practice.Domain.Clients;
using Practice.Domain.Foods;
using Practice.Domain.Plans;
using Practice.Domain.Practices;
using Practice.Domain.Quantities;
using Practice.Domain.Races;
using Practice.Domain.Screening;
using Practice.Domain.Targets;
using Practice.Service;
using Practice.Service.Clients;
using Practice.Service.Desks;
using Practice.Service.Hosting;
using Practice.Service.Plans;
using Practice.Service.Races;
using Practice.Service.Screening;
using Practice.Store.Practices;

namespace Practice.TestSupport;

/// <summary>A practice on a database of its own, with the tasks on top and a clock that stands still.</summary>
public sealed class TestPractice(PostgresServer server) : IAsyncLifetime
{
    public static readonly Instant Now = Instant.FromUtc(2027, 4, 1, 10, 0);
    private string _connection = "";
    private RunningDatabase? _database;
    private ServiceProvider? _services;

    public Desk Practitioner { get; private set; } = null!;

    public Desk Assistant => Practitioner with { Role = StaffRole.Assistant };

    /// <summary>The tasks and all behind them.</summary>
    public IServiceProvider Services => _services!;

    public T Get<T>()
        where T : class => _services!.GetRequiredService<T>();

    public async ValueTask InitializeAsync()
    {
        _connection = await server.NewDatabaseAsync();
        var configuration = new ConfigurationBuilder()
            .AddInMemoryCollection(
                new Dictionary<string, string?>
                {
                    ["ConnectionStrings:Practice"] = _connection,
                    ["Practice:TimeZone"] = "Europe/London",
                }
            )
            .Build();
        _database = RunningDatabase.Start(configuration, ".");
        await _database.ReadyAsync();
        _services = new ServiceCollection()
            .AddLogging()
            .AddPractice(_database, PracticeSettings.From(configuration))
            .AddSingleton<IClock>(new FakeClock(Now))
            .BuildServiceProvider();
        Practitioner = await FoundPractice("Test Practice");
    }

    /// <summary>New clients wait to be taken in until what is returned is disposed of; reading does not.</summary>
    public Task<HeldUp> HoldUpNewClients() =>
        HeldUp.By(_connection, "lock table client in exclusive mode");

    /// <summary>Changes of clients wait, in their order, until what is returned is disposed of; reading does not.</summary>
    public Task<HeldUp> HoldUpClients() => HeldUp.By(_connection, "select from client for update");

    /// <summary>The database is away until what is returned is disposed of.</summary>
    public Task<DatabaseAway> TakeDatabaseAway() => DatabaseAway.Begin(_connection);

    public async Task<Desk> FoundPractice(string name)
    {
        var desk = new Desk(
            Guid.CreateVersion7(),
            Guid.CreateVersion7(),
            "Pat Tester",
            StaffRole.Practitioner
        );
        await Get<PracticeStore>()
            .Found(
                new PracticeProfile { PracticeId = desk.PracticeId, Name = name },
                new AuditEntry
                {
                    PracticeId = desk.PracticeId,
                    At = Now,
                    By = desk.Name,
                    What = "practice-founded",
                },
                TestContext.Current.CancellationToken
            );
        return desk;
    }

    /// <summary>A healthy client of 70 kg, all questions answered.</summary>
    public async Task<Guid> NewClient(ScreeningAnswers? answers = null, Diet? diet = null)
    {
        var details = new ClientDetails
        {
            GivenName = "Ines",
            FamilyName = "Example",
            BirthDate = new LocalDate(1990, 5, 4),
            Physique = new Physique
            {
                Sex = Sex.Female,
                HeightCm = 170,
                Vo2Max = 50,
            },
            Diet = diet ?? Diet.Unrestricted,
        };
        var mass = new BodyMassEntry(new LocalDate(2027, 3, 30), BodyMass.OfKilograms(70));
        var id = await Get<RegisterClient>().Run(Practitioner, details, mass, Cancel);
        await Get<AnswerScreening>()
            .Run(Practitioner, id, answers ?? Questionnaire.NothingToReport, Cancel);
        return id;
    }

    /// <summary>A marathon on 18 April 2027 at 9:00.</summary>
    public Task<Guid> NewRace(Guid clientId) =>
        Get<EnterRace>()
            .Run(
                Practitioner,
                clientId,
                new RaceDetails
                {
                    Name = "Harbour Marathon",
                    DistanceKm = 42.195m,
                    Start = new LocalDateTime(2027, 4, 18, 9, 0),
                    ZoneId = "Europe/London",
                    GoalTime = Duration.FromMinutes(225),
                },
                Cancel
            );

    /// <summary>A draft on file, with the real planner's first menu.</summary>
    public async Task<PlanFile> NewDraft(Guid raceId)
    {
        var outcome = await Get<DraftPlan>()
            .Run(Practitioner, raceId, new LoadingChoices(), MenuStyle.Vary, Cancel);
        return await Open(Assert.IsType<Drafted>(outcome).VersionId);
    }

    public async Task<PlanFile> Open(Guid versionId) =>
        await Get<OpenPlan>().Run(Practitioner, versionId, Cancel)
        ?? throw new InvalidOperationException("No such version.");

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    public async ValueTask DisposeAsync()
    {
        if (_services is not null)
            await _services.DisposeAsync();
        if (_database is not null)
            await _database.DisposeAsync();
        await server.DropAsync(_connection);
    }
}
