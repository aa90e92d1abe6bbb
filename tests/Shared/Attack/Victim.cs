using Microsoft.Extensions.DependencyInjection;
using NodaTime;
using Practice.Domain.Clients;
using Practice.Domain.Foods;
using Practice.Domain.Plans;
using Practice.Domain.Practices;
using Practice.Domain.Quantities;
using Practice.Domain.Races;
using Practice.Domain.Rehearsals;
using Practice.Domain.Screening;
using Practice.Domain.Targets;
using Practice.Service.Clients;
using Practice.Service.Desks;
using Practice.Service.Foods;
using Practice.Service.Plans;
using Practice.Service.Portal;
using Practice.Service.Races;
using Practice.Service.Screening;
using Practice.Store.Practices;
using Practice.Store.Rehearsals;

namespace Practice.TestSupport.Attack;

/// <summary>A client with everything that somebody else might be after, and all the keys to it.</summary>
/// <param name="Desk">The practitioner she is in care of.</param>
/// <param name="Secret">What stands in the address of her phone link.</param>
/// <param name="Mark">In the names of what must stay unseen, and nowhere else.</param>
internal sealed record Victim(
    Desk Desk,
    Guid ClientId,
    Guid RaceId,
    Guid PlanId,
    Guid RehearsalId,
    Guid FoodId,
    Guid LinkId,
    string Secret,
    string Mark
)
{
    public Guid[] Keys =>
        [ClientId, RaceId, PlanId, RehearsalId, FoodId, LinkId, Desk.AccountId, Desk.PracticeId];

    public static async Task<Desk> FoundPractice(IServiceProvider services, string name)
    {
        var desk = new Desk(
            Guid.CreateVersion7(),
            Guid.CreateVersion7(),
            "Pat Tester",
            StaffRole.Practitioner
        );
        await services
            .GetRequiredService<PracticeStore>()
            .Found(
                new PracticeProfile { PracticeId = desk.PracticeId, Name = name },
                Audit(services, desk, "practice-founded"),
                default
            );
        return desk;
    }

    /// <summary>Takes a client into the desk's care: screened, with a race, an issued plan, a rehearsal she told of, and a phone link.</summary>
    public static async Task<Victim> TakeIn(IServiceProvider services, Desk desk, string mark)
    {
        var today = services.GetRequiredService<PracticeCalendar>().Today;
        var client = await services
            .GetRequiredService<RegisterClient>()
            .Run(
                desk,
                new ClientDetails
                {
                    GivenName = "Ines",
                    FamilyName = mark,
                    BirthDate = new LocalDate(1990, 5, 4),
                    Physique = new Physique
                    {
                        Sex = Sex.Female,
                        HeightCm = 170,
                        Vo2Max = 50,
                    },
                    Diet = Diet.Unrestricted,
                },
                new BodyMassEntry(today, BodyMass.OfKilograms(70)),
                default
            );
        await services
            .GetRequiredService<AnswerScreening>()
            .Run(desk, client, Questionnaire.NothingToReport, default);
        var race = await services
            .GetRequiredService<EnterRace>()
            .Run(
                desk,
                client,
                new RaceDetails
                {
                    Name = $"{mark} Marathon",
                    DistanceKm = 42.195m,
                    Start = today.PlusDays(17).At(new LocalTime(9, 0)),
                    ZoneId = "Europe/London",
                    GoalTime = Duration.FromMinutes(225),
                },
                default
            );
        var drafted = (Drafted)
            await services
                .GetRequiredService<DraftPlan>()
                .Run(desk, race, new LoadingChoices(), MenuStyle.Vary, default);
        var plan = (
            await services.GetRequiredService<OpenPlan>().Run(desk, drafted.VersionId, default)
        )!.Version;
        if (await services.GetRequiredService<IssuePlan>().Run(desk, plan, default) is not Issued)
            throw new InvalidOperationException("The plan could not be issued.");
        var rehearsal = Rehearsal.Book(
            desk.PracticeId,
            client,
            race,
            new RehearsalDetails
            {
                RunOn = today.PlusDays(2),
                Kind = RehearsalKind.Partial,
                Part = new RehearsedPart(plan.Value.Id, FirstDay: 1),
            },
            plan.Value.Plan
        );
        await services
            .GetRequiredService<RehearsalStore>()
            .Add(rehearsal, Audit(services, desk, "rehearsal-booked"), default);
        var food = await services
            .GetRequiredService<KeepFood>()
            .Run(desk, SampleFood.Bar with { Name = $"{mark} bar" }, default);
        var link = (await services.GetRequiredService<GiveLink>().Run(desk, race, default))!;
        var secret = link.Path.Split('/')[^1];
        var told = new Feedback
        {
            ReceivedAt = services.GetRequiredService<PracticeCalendar>().Now,
            Note = "It sat well.",
        };
        await services
            .GetRequiredService<SubmitFeedback>()
            .Run(secret, rehearsal.Id, Guid.NewGuid(), told, default);
        return new Victim(
            desk,
            client,
            race,
            plan.Value.Id,
            rehearsal.Id,
            ((FoodKept)food).Key,
            link.Link.Id,
            secret,
            mark
        );
    }

    private static AuditEntry Audit(IServiceProvider services, Desk desk, string what) =>
        new()
        {
            PracticeId = desk.PracticeId,
            At = services.GetRequiredService<PracticeCalendar>().Now,
            By = desk.Name,
            What = what,
        };
}
