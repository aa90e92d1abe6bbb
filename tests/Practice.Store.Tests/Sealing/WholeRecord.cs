using NodaTime;
using Practice.Domain.Caseload;
using Practice.Domain.Clients;
using Practice.Domain.Debriefs;
using Practice.Domain.Plans;
using Practice.Domain.Practices;
using Practice.Domain.Races;
using Practice.Domain.Rehearsals;
using Practice.Domain.Screening;
using Practice.Store.Clients;
using Practice.Store.Debriefs;
using Practice.Store.Plans;
using Practice.Store.Races;
using Practice.Store.Rehearsals;
using Practice.Store.Screening;
using Practice.Store.Tests.Rehearsals;

namespace Practice.Store.Tests.Sealing;

/// <summary>A client of whom everything is on file that can be said of somebody's health.</summary>
internal sealed record WholeRecord(
    Client Client,
    ScreeningRecord Screening,
    Race Race,
    PlanVersion Plan,
    Rehearsal Rehearsal,
    RehearsalBackground Background,
    Debrief Debrief
)
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    public static async Task<WholeRecord> File(TwoPractices practices)
    {
        var record = Make(practices.OurClient.PracticeId);
        var database = practices.Database;
        await database.Get<ClientStore>().Add(record.Client, Audit(record), Cancel);
        await database.Get<ScreeningStore>().Add(record.Screening, Audit(record), Cancel);
        await database.Get<RaceStore>().Add(record.Race, Audit(record), Cancel);
        await database.Get<PlanStore>().Add(record.Plan, Audit(record), Cancel);
        await database.Get<RehearsalStore>().Add(record.Rehearsal, Audit(record), Cancel);
        await database.Get<BackgroundStore>().Add(record.Background, Audit(record), Cancel);
        await database.Get<DebriefStore>().Add(record.Debrief, Audit(record), Cancel);
        return record;
    }

    private static WholeRecord Make(Guid practiceId)
    {
        var client = Sample.Client(practiceId);
        client.Annotate("Fainted at the spring race.");
        client.Record(
            new SweatTest
            {
                On = new LocalDate(2026, 8, 2),
                BeforeKg = 61.4m,
                AfterKg = 60.6m,
                Minutes = 60,
            }
        );
        var race = Sample.Race(client);
        var rehearsal = SampleRehearsal.Booked(race);
        rehearsal.Tell(SampleRehearsal.Feedback());
        rehearsal.Review(SampleRehearsal.Decision());
        var background = RehearsalBackground.Of(practiceId, client.Id);
        background.Block(new(2026, 9, 6), new(2026, 9, 6), BlockedBy.Illness);
        background.Remember(new GutHistory { PastTrouble = ["lentils-boiled"] });
        var debrief = Debrief.Of(
            race,
            new DebriefReport
            {
                FinishTime = Duration.FromMinutes(228),
                Symptoms = "Cramps from the half on",
                NextTime = "Leave the gels out.",
            },
            "A. Tester",
            Instant.FromUtc(2026, 10, 12, 8, 0)
        );
        return new WholeRecord(
            client,
            Sample.Screening(client),
            race,
            Sample.Draft(race),
            rehearsal,
            background,
            debrief
        );
    }

    private static AuditEntry Audit(WholeRecord record)
    {
        var audit = Sample.Audit(record.Client.PracticeId, about: record.Client.Id);
        audit.Changes.Add(
            new HealthChange
            {
                PracticeId = audit.PracticeId,
                ClientId = record.Client.Id,
                Field = "answer diabetes",
                Was = "tablets",
                Became = "insulin",
            }
        );
        return audit;
    }
}
