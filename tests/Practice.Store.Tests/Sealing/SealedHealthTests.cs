using System.Text;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using Npgsql;
using Practice.Store.Audit;
using Practice.Store.Clients;
using Practice.Store.Debriefs;
using Practice.Store.Plans;
using Practice.Store.Rehearsals;
using Practice.Store.RowSecurity;
using Practice.Store.Screening;
using Practice.Store.Sealing;

namespace Practice.Store.Tests.Sealing;

/// <summary>What a reader of the raw tables finds of somebody's health, and what becomes of it when keys are missing.</summary>
public class SealedHealthTests(TwoPractices practices) : IClassFixture<TwoPractices>
{
    /// <summary>Documents somebody decided to leave readable: none says anything of somebody's health.</summary>
    private static readonly string[] Readable =
    [
        "account_passkey.data",
        "client.consents",
        "client.legal_hold",
        "own_food.sheet",
        "practice.defaults",
        "race.weather",
        "rehearsal_background.long_runs",
    ];

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    private Guid Practice => practices.Ours.PracticeId;

    [Fact]
    public async Task The_record_reads_back_as_it_was()
    {
        var filed = await WholeRecord.File(practices);
        var database = practices.Database;
        var (client, race) = (filed.Client.Id, filed.Race.Id);

        Assert.Equivalent(
            filed.Client,
            (await database.Get<ClientStore>().Find(Practice, client, Cancel))!.Value,
            strict: true
        );
        Assert.Equivalent(
            filed.Screening,
            (await database.Get<ScreeningStore>().Of(Practice, client, Cancel))!.Value,
            strict: true
        );
        Assert.Equivalent(
            filed.Plan,
            (await database.Get<PlanStore>().Find(Practice, filed.Plan.Id, Cancel))!.Value,
            strict: true
        );
        Assert.Equivalent(
            filed.Rehearsal,
            (
                await database.Get<RehearsalStore>().Find(Practice, filed.Rehearsal.Id, Cancel)
            )!.Value,
            strict: true
        );
        Assert.Equivalent(
            filed.Background,
            (await database.Get<BackgroundStore>().Of(Practice, client, Cancel))!.Value,
            strict: true
        );
        Assert.Equivalent(
            filed.Debrief,
            (await database.Get<DebriefStore>().Find(Practice, race, Cancel))!.Value,
            strict: true
        );
        var lines = await database
            .Get<AuditLog>()
            .Search(Practice, new(null, null, client, null, null), 0, 1, Cancel);
        var change = Assert.Single(Assert.Single(lines).Changes);
        Assert.Equal(
            ("answer diabetes", "tablets", "insulin"),
            (change.Field, change.Was, change.Became)
        );
    }

    [Fact]
    public async Task A_reader_of_every_table_finds_names_and_races_and_nothing_of_anybodys_health()
    {
        await WholeRecord.File(practices);
        var all = await EverythingAsync();

        Assert.Contains("Okafor", all, StringComparison.Ordinal);
        Assert.Contains("Harbour Marathon", all, StringComparison.Ordinal);
        string[] words =
        [
            "numberFree",
            "diabetes",
            "insulin",
            "dosing plan",
            "Peanuts",
            "Vegetarian",
            "apple-juice",
            "Fainted",
            "heightCm",
            "61.4",
            "BloodInStool",
            "warningSigns",
            "Never again",
            "One thing at a time",
            "White rice for pasta",
            "Illness",
            "lentils-boiled",
            "Cramps",
            "bagel-plain",
            "Sensitive gut",
        ];
        Assert.DoesNotContain(words, word => Says(all, word));
    }

    [Fact]
    public async Task Every_document_in_plain_words_is_one_somebody_decided_to_leave_so()
    {
        var documents = await AskAsync<string>(
            """
            select table_name || '.' || column_name from information_schema.columns
            where table_schema = 'public' and data_type in ('json', 'jsonb') order by 1
            """
        );
        Assert.Equal(Readable, documents);
    }

    [Fact]
    public async Task The_database_refuses_health_facts_in_plain_words()
    {
        var filed = await WholeRecord.File(practices);
        var refusal = await Assert.ThrowsAsync<PostgresException>(() =>
            DoAsync(
                $"update screening set sealed_answers = convert_to('{{}}', 'UTF8') where id = '{filed.Screening.Id}'"
            )
        );
        Assert.Equal(PostgresErrorCodes.CheckViolation, refusal.SqlState);
        using var db = new DesignTimePracticeDb().CreateDbContext([]);
        var columns = db.Model.GetEntityTypes().Sum(entity => SealedColumn.Of(entity).Length);
        var guarded = await AskAsync<long>(
            "select count(*) from pg_constraint where conname like '%_is_sealed'"
        );
        Assert.Equal([columns], guarded);
    }

    [Fact]
    public async Task Answers_moved_to_another_client_do_not_open()
    {
        var (one, other) = (await WholeRecord.File(practices), await WholeRecord.File(practices));
        await DoAsync(
            $"""
            update screening set sealed_answers =
                (select sealed_answers from screening where id = '{one.Screening.Id}')
            where id = '{other.Screening.Id}'
            """
        );
        await Assert.ThrowsAsync<SealedHealthException>(() =>
            practices.Database.Get<ScreeningStore>().Of(Practice, other.Client.Id, Cancel)
        );
    }

    [Fact]
    public async Task Lost_keys_are_said_and_never_read_as_nothing_to_report()
    {
        var filed = await WholeRecord.File(practices);
        var keys = await AskAsync<string>("select xml from data_protection_key");
        await DoAsync("delete from data_protection_key");
        try
        {
            await using var replica = Replica();
            var screenings = replica.GetRequiredService<ScreeningStore>();
            var lost = await Assert.ThrowsAsync<SealedHealthException>(() =>
                screenings.Of(Practice, filed.Client.Id, Cancel)
            );
            Assert.Contains("screening.sealed_", lost.Message, StringComparison.Ordinal);
            Assert.Contains("data_protection_key", lost.Message, StringComparison.Ordinal);
            await Assert.ThrowsAsync<SealedHealthException>(() =>
                screenings.OfSeveral(Practice, [filed.Client.Id], Cancel)
            );
            await Assert.ThrowsAsync<SealedHealthException>(() =>
                replica
                    .GetRequiredService<RehearsalStore>()
                    .WithWarningSigns(Practice, [filed.Client.Id], Cancel)
            );
        }
        finally
        {
            foreach (var key in keys)
                await DoAsync($"insert into data_protection_key (xml) values ('{key}')");
        }
    }

    /// <summary>Another process on the same database, which has read no key yet.</summary>
    private ServiceProvider Replica() =>
        new ServiceCollection()
            .AddLogging()
            .AddPracticeStore(ApplicationRole.ConnectionFor(practices.Database.OwnerConnection))
            .BuildServiceProvider();

    /// <summary>Whether the word stands in a dump, in words or as bytes.</summary>
    private static bool Says(string dump, string word) =>
        dump.Contains(word, StringComparison.Ordinal)
        || dump.Contains(
            Convert.ToHexStringLower(Encoding.UTF8.GetBytes(word)),
            StringComparison.Ordinal
        );

    /// <summary>Every row of every table as text, as a superuser would dump it.</summary>
    private async Task<string> EverythingAsync()
    {
        var tables = await AskAsync<string>(
            "select table_name::text from information_schema.tables where table_schema = 'public'"
        );
        var all = new StringBuilder();
        foreach (var table in tables)
        foreach (var row in await AskAsync<string>($"select t::text from \"{table}\" t"))
            all.AppendLine(row);
        return all.ToString();
    }

#pragma warning disable CA2100 // the statements are written in this file
    private async Task<List<T>> AskAsync<T>(string question)
    {
        await using var owner = NpgsqlDataSource.Create(practices.Database.OwnerConnection);
        await using var command = owner.CreateCommand(question);
        await using var reader = await command.ExecuteReaderAsync(Cancel);
        var answers = new List<T>();
        while (await reader.ReadAsync(Cancel))
            answers.Add(reader.GetFieldValue<T>(0));
        return answers;
    }

    private async Task DoAsync(string statement)
    {
        await using var owner = NpgsqlDataSource.Create(practices.Database.OwnerConnection);
        await using var command = owner.CreateCommand(statement);
        await command.ExecuteNonQueryAsync(Cancel);
    }
#pragma warning restore CA2100
}
