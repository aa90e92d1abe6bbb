using Microsoft.EntityFrameworkCore.Infrastructure;
using Microsoft.EntityFrameworkCore.Migrations;
using Microsoft.Extensions.DependencyInjection;
using Npgsql;
using Practice.Domain.Clients;
using Practice.Domain.Plans;
using Practice.Domain.Practices;
using Practice.Domain.Races;
using Practice.Domain.Rehearsals;
using Practice.Domain.Screening;
using Practice.Store.Audit;
using Practice.Store.Clients;
using Practice.Store.Documents;
using Practice.Store.Plans;
using Practice.Store.Rehearsals;
using Practice.Store.Screening;
using Practice.Store.Tests.Rehearsals;
using Practice.TestSupport;

namespace Practice.Store.Tests.Sealing;

/// <summary>
/// A database from before health facts were sealed. Its owner is an ordinary role, as managed servers give out: row security
/// and the freeze of issued plans bind it too.
/// </summary>
public class PlainRecordsTests(PostgresServer server)
{
    private const string LastPlain = "20261128192056_RehearsedGuts";

    private readonly string _name = $"practice_test_upgrade_{Environment.ProcessId}";

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public async Task What_was_kept_in_plain_words_is_sealed_at_the_next_start_and_reads_as_before()
    {
        var owner = new NpgsqlConnectionStringBuilder(server.OwnerConnection(_name));
        // the server's role for the application goes with this password: other tests use it meanwhile
        await server.ExecuteAsync(
            $"create role {_name} login createrole createdb password '{owner.Password}'"
        );
        owner.Username = _name;
        try
        {
            await server.ExecuteAsync($"create database {_name} owner {_name}");
            await server.ExecuteAsync($"grant practice_app to {_name} with admin option");
            var (client, screening, plan, rehearsal) = await KeepPlainAsync(owner.ConnectionString);

            var application = await PracticeDatabase.MigrateAsync(owner.ConnectionString, Cancel);
            // once more: what is done is left alone
            await PracticeDatabase.MigrateAsync(owner.ConnectionString, Cancel);

            await using var store = new ServiceCollection()
                .AddLogging()
                .AddPracticeStore(application)
                .BuildServiceProvider();
            var practice = client.PracticeId;
            var clientRead = await store
                .GetRequiredService<ClientStore>()
                .Find(practice, client.Id, Cancel);
            Assert.Equivalent(client, clientRead!.Value, strict: true);
            var screeningRead = await store
                .GetRequiredService<ScreeningStore>()
                .Of(practice, client.Id, Cancel);
            Assert.Equivalent(screening, screeningRead!.Value, strict: true);
            var planRead = await store
                .GetRequiredService<PlanStore>()
                .Find(practice, plan.Id, Cancel);
            Assert.Equivalent(plan, planRead!.Value, strict: true);
            var rehearsals = store.GetRequiredService<RehearsalStore>();
            Assert.Equivalent(
                rehearsal,
                (await rehearsals.Find(practice, rehearsal.Id, Cancel))!.Value,
                strict: true
            );
            Assert.True(Assert.Single(await rehearsals.ToRead(practice, Cancel)).Warns);
            var lines = await store
                .GetRequiredService<AuditLog>()
                .Search(practice, new(null, null, null, null, null), 0, 10, Cancel);
            Assert.Equal("was \"quoted\"", Assert.Single(lines.Single().Changes).Was);
            await AssertStillForcedAsync(owner.ConnectionString);
        }
        finally
        {
            NpgsqlConnection.ClearAllPools();
            await server.ExecuteAsync($"drop database if exists {_name} with (force)");
            await server.ExecuteAsync($"drop role {_name}");
        }
    }

    private static async Task<(Client, ScreeningRecord, PlanVersion, Rehearsal)> KeepPlainAsync(
        string owner
    )
    {
        await using var source = PracticeDbOptions.Source(owner);
        await using (var db = PracticeDbOptions.Open(source))
            await db.GetService<IMigrator>().MigrateAsync(LastPlain, Cancel);

        var practice = Sample.Practice();
        var client = Sample.Client(practice.PracticeId);
        client.Annotate("A \"quoted\" note,\nof two lines.");
        var screening = Sample.Screening(client);
        var race = Sample.Race(client);
        var plan = Sample.Draft(race);
        plan.Issue("A. Tester", Sample.Now);
        var rehearsal = SampleRehearsal.Booked(race);
        rehearsal.Tell(SampleRehearsal.Feedback());
        var key = practice.PracticeId;

        await using var raw = await source.OpenConnectionAsync(Cancel);
        await Run("select set_config('practice.id', $1, false)", key.ToString());
        await Run(
            """
            insert into practice (practice_id, name, accent, logo_png, footer, registration_line, paper, units, defaults)
            values ($1, 'Old House', '#334455', '', '', '', 'A4', 'Metric', $2::jsonb)
            """,
            key,
            StoredJson.Write(practice.Defaults)
        );
        await Run("insert into registered_practice (id) values ($1)", key);
        await Run(
            """
            insert into client (practice_id, id, given_name, family_name, birth_date, units, notes,
                physique, diet, tastes, body_mass_log, sweat_log, consents)
            values ($1, $2, $3, $4, $5, $6, $7, $8::jsonb, $9::jsonb, $10::jsonb, $11::jsonb, '[]', '[]')
            """,
            key,
            client.Id,
            client.GivenName,
            client.FamilyName,
            client.BirthDate,
            $"{client.Units}",
            client.Notes,
            StoredJson.Write(client.Physique),
            StoredJson.Write(client.Diet),
            StoredJson.Write(client.Tastes),
            StoredJson.Write(client.BodyMassLog)
        );
        await Run(
            """
            insert into screening (practice_id, id, client_id, taken_on, answers, clearances)
            values ($1, $2, $3, $4, $5::jsonb, $6::jsonb)
            """,
            key,
            screening.Id,
            client.Id,
            screening.TakenOn,
            StoredJson.Write(screening.Answers),
            StoredJson.Write(screening.Clearances)
        );
        await Run(
            """
            insert into race (practice_id, id, client_id, name, place, discipline, distance_km, start, zone_id)
            values ($1, $2, $3, $4, $5, 'RoadRunning', 42.195, $6, $7)
            """,
            key,
            race.Id,
            client.Id,
            race.Name,
            race.Place,
            race.Start,
            race.ZoneId
        );
        await Run(
            """
            insert into plan_version
                (practice_id, id, race_id, number, status, plan, created_at, edited_at, issued_by, issued_at, reason)
            values ($1, $2, $3, 1, 'Issued', $4::jsonb, $5, $5, 'A. Tester', $5, $6)
            """,
            key,
            plan.Id,
            race.Id,
            StoredJson.Write(plan.Plan),
            Sample.Now,
            plan.Reason
        );
        await Run(
            """
            insert into rehearsal (practice_id, id, client_id, race_id, run_on, status, details, plan, feedback, cancelled_because)
            values ($1, $2, $3, $4, $5, 'FedBack', $6::jsonb, $7::jsonb, $8::jsonb, '')
            """,
            key,
            rehearsal.Id,
            client.Id,
            race.Id,
            rehearsal.RunOn,
            StoredJson.Write(rehearsal.Details),
            StoredJson.Write(rehearsal.Plan),
            StoredJson.Write(rehearsal.Feedback)
        );
        var line = Sample.Audit(key, "client-revised", client.Id);
        await Run(
            """
            insert into audit_entry (practice_id, id, at, by, what, about, "from", detail)
            values ($1, $2, $3, 'A. Tester', 'client-revised', $4, '', '')
            """,
            key,
            line.Id,
            line.At,
            client.Id
        );
        await Run(
            """
            insert into health_change (practice_id, id, entry_id, client_id, field, was, became)
            values ($1, $2, $3, $4, 'notes', 'was "quoted"', '')
            """,
            key,
            Guid.CreateVersion7(),
            line.Id,
            client.Id
        );
        return (client, screening, plan, rehearsal);

        async Task Run(string sql, params object[] values)
        {
#pragma warning disable CA2100 // the statements are written above
            await using var command = new NpgsqlCommand(sql, raw);
#pragma warning restore CA2100
            foreach (var value in values)
                command.Parameters.Add(new() { Value = value });
            await command.ExecuteNonQueryAsync(Cancel);
        }
    }

    private static async Task AssertStillForcedAsync(string owner)
    {
        await using var source = NpgsqlDataSource.Create(owner);
        await using var command = source.CreateCommand(
            """
            select (select count(*) from pg_class where relname in ('client', 'plan_version', 'health_change')
                    and relforcerowsecurity),
                (select count(*) from pg_trigger where not tgisinternal and tgenabled = 'D')
            """
        );
        await using var reader = await command.ExecuteReaderAsync(Cancel);
        Assert.True(await reader.ReadAsync(Cancel));
        Assert.Equal((3L, 0L), (reader.GetInt64(0), reader.GetInt64(1)));
    }
}
