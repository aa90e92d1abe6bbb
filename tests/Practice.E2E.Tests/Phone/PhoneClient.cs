using Microsoft.Extensions.DependencyInjection;
using NodaTime;
using Practice.Domain.Clients;
using Practice.Domain.Plans;
using Practice.Domain.Practices;
using Practice.Domain.Quantities;
using Practice.Domain.Races;
using Practice.Domain.Rehearsals;
using Practice.Domain.Screening;
using Practice.Domain.Targets;
using Practice.Service.Clients;
using Practice.Service.Desks;
using Practice.Service.Plans;
using Practice.Service.Portal;
using Practice.Service.Races;
using Practice.Service.Rehearsals;
using Practice.Service.Screening;
using Practice.Store.Audit;
using Practice.Store.Practices;

namespace Practice.E2E.Tests.Phone;

/// <summary>
/// A client of the demo practice with an issued plan, a rehearsal whose first day of eating is today, and a link on her phone.
/// </summary>
internal sealed class PhoneClient
{
    private readonly IServiceProvider _services;

    private PhoneClient(IServiceProvider services, Desk desk)
    {
        _services = services;
        Desk = desk;
    }

    public Desk Desk { get; }

    public required GivenLink Link { get; init; }

    public required Guid RehearsalId { get; init; }

    public string Home => Link.Path;

    public string Log => $"{Link.Path}/rehearsals/{RehearsalId}";

    public string Plan => $"{Link.Path}/plan";

    public string RaceCard => $"{Link.Path}/race";

    /// <summary>All of them.</summary>
    public string[] Pages => [Home, Plan, RaceCard, Log];

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    public static async Task<PhoneClient> Make(
        AppFixture app,
        string name,
        ScreeningAnswers? answers = null
    )
    {
        var services = app.Services;
        T Get<T>()
            where T : class => services.GetRequiredService<T>();
        var practice = (await Get<PracticeStore>().All(Cancel))[0];
        var desk = new Desk(practice, Guid.NewGuid(), "Robin Larkfield", StaffRole.Owner);
        var today = Get<PracticeCalendar>().Today;
        var client = await Get<RegisterClient>()
            .Run(desk, Details(name), new(today, BodyMass.OfKilograms(62)), Cancel);
        await Get<AnswerScreening>()
            .Run(desk, client, answers ?? Questionnaire.NothingToReport, Cancel);
        var race = await Get<EnterRace>().Run(desk, client, Race(today.PlusDays(21)), Cancel);
        var drafted = (Drafted)
            await Get<DraftPlan>().Run(desk, race, new LoadingChoices(), MenuStyle.Vary, Cancel);
        var file = (await Get<OpenPlan>().Run(desk, drafted.VersionId, Cancel))!;
        if (file.StandingHolds.IsEmpty)
            Assert.IsType<Issued>(await Get<IssuePlan>().Run(desk, file.Version, Cancel));
        var booked = (Booked)
            await Get<BookRehearsal>()
                .Run(desk, race, Rehearsal(today.PlusDays(2), drafted.VersionId), Cancel);
        return new PhoneClient(services, desk)
        {
            RehearsalId = booked.RehearsalId,
            Link = (await Get<GiveLink>().Run(desk, race, Cancel))!,
        };
    }

    /// <summary>What the practitioner finds.</summary>
    public async Task<Feedback?> Told() =>
        (
            await _services
                .GetRequiredService<OpenLink>()
                .Rehearsal(
                    Link.Path[(PhonePaths.Root.Length + 1)..],
                    RehearsalId,
                    isOpening: false,
                    Cancel
                )
        )!
            .Rehearsal
            .Feedback;

    /// <summary>How often feedback was taken in.</summary>
    public async Task<int> Arrivals() =>
        (
            await _services
                .GetRequiredService<AuditLog>()
                .Latest(Desk.PracticeId, RehearsalId, 100, Cancel)
        ).Count(a => a.What == "feedback-received");

    public Task<bool> Revoke() =>
        _services.GetRequiredService<RevokeLink>().Run(Desk, Link.Link.Id, Cancel);

    private static ClientDetails Details(string name) =>
        new()
        {
            GivenName = name,
            FamilyName = "Phoneless",
            BirthDate = new LocalDate(1991, 3, 2),
            Physique = new Physique { Sex = Sex.Female, HeightCm = 168 },
        };

    private static RaceDetails Race(LocalDate day) =>
        new()
        {
            Name = "Saltmere Harbour Marathon",
            DistanceKm = 42.195m,
            Start = day + new LocalTime(9, 0),
            ZoneId = "Europe/London",
            GoalTime = Duration.FromMinutes(230),
        };

    private static RehearsalDetails Rehearsal(LocalDate run, Guid version) =>
        new()
        {
            RunOn = run,
            Kind = RehearsalKind.Full,
            Part = new RehearsedPart(version, 2),
            Breakfast = new BreakfastTrial(3, 130, "Porridge with 40 g honey. A banana."),
            RunFuel = new RunFuelTrial(60, 500, "A gel every half hour. Each has 25 g."),
        };
}
