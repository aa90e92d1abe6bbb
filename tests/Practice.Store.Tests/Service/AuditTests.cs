using System.Text;
using Microsoft.Extensions.DependencyInjection;
using NodaTime;
using Npgsql;
using Practice.Domain.Caseload;
using Practice.Domain.Clients;
using Practice.Domain.Practices;
using Practice.Domain.Quantities;
using Practice.Domain.Rehearsals;
using Practice.Domain.Screening;
using Practice.Service.Audit;
using Practice.Service.Clients;
using Practice.Service.Courses;
using Practice.Service.Debriefs;
using Practice.Service.Desks;
using Practice.Service.Plans;
using Practice.Service.Races;
using Practice.Service.Rehearsals;
using Practice.Service.Screening;
using Practice.Store.Clients;
using Practice.Store.Tests.Portal;
using Practice.TestSupport;

namespace Practice.Store.Tests.Service;

/// <summary>What the audit keeps of a client's health, and what goes with the client.</summary>
public sealed class AuditTests(TestPractice practice) : IClassFixture<TestPractice>
{
    private Desk Owner =>
        practice.Practitioner with
        {
            Role = StaffRole.Owner,
            From = "203.0.113.7, Firefox on Windows",
        };

    [Fact]
    public async Task A_changed_health_fact_is_kept_as_it_was_and_as_it_became()
    {
        var id = await practice.NewClient();
        var file = await practice.Get<OpenClient>().Run(Owner, id, Cancel);
        var details = ClientDetails.Of(file!.Client.Value) with
        {
            Notes = "Vomits after gels",
            Diet = new Diet { OtherAllergy = "lupin" },
        };
        await practice.Get<ReviseClient>().Run(Owner, file.Client, details, Cancel);

        var line = (await Lines(id)).Single(l => l.What == "client-revised");
        Assert.Equal("203.0.113.7, Firefox on Windows", line.From);
        Assert.Equal(
            [("notes", "", "Vomits after gels"), ("other allergy", "", "lupin")],
            line.Changes.Select(c => (c.Field, c.Was, c.Became)).Order()
        );
    }

    [Fact]
    public async Task What_a_client_tells_of_foods_and_illness_is_kept_as_it_was_and_as_it_became()
    {
        var id = await practice.NewClient();
        await practice
            .Get<ReviseBackground>()
            .Run(
                Owner,
                id,
                b =>
                {
                    b.Remember(new GutHistory { PastTrouble = ["banana"] });
                    b.Block(
                        new LocalDate(2027, 3, 1),
                        new LocalDate(2027, 3, 2),
                        BlockedBy.Illness
                    );
                    b.Block(new LocalDate(2027, 3, 5), new LocalDate(2027, 3, 5), BlockedBy.Travel);
                },
                Cancel
            );
        await practice
            .Get<ReviseBackground>()
            .Run(Owner, id, b => b.Remember(GutHistory.Unknown), Cancel);

        var lines = (await Lines(id)).Where(l => l.What == "rehearsal-background-kept").ToList();
        Assert.Equal(
            [
                ("days of illness", "", "2027-03-01, 2027-03-02"),
                ("foods that gave trouble", "", "banana"),
                ("foods that gave trouble", "banana", ""),
            ],
            lines.SelectMany(l => l.Changes).Select(c => (c.Field, c.Was, c.Became)).Order()
        );
    }

    [Fact]
    public async Task A_weighing_and_an_answer_say_what_they_were_before()
    {
        var id = await practice.NewClient();
        var file = await practice.Get<OpenClient>().Run(Owner, id, Cancel);
        var weighing = new BodyMassEntry(
            file!.Client.Value.LatestMass!.On,
            BodyMass.OfKilograms(71.5m)
        );
        await practice.Get<WeighClient>().Run(Owner, file.Client, weighing, Cancel);
        await practice.Get<AnswerScreening>().Run(Owner, id, ScreeningAnswers.None, Cancel);

        var lines = await Lines(id);
        var weighed = lines.Single(l => l.What == "client-weighed").Changes.Single();
        Assert.Equal(("70", "71.5"), (weighed.Was, weighed.Became));
        Assert.All(
            lines.First(l => l.What == "screening-answered").Changes,
            c => Assert.Equal("", c.Became)
        );
    }

    [Fact]
    public async Task A_sweat_test_says_what_it_was_before_and_that_it_was_taken_away()
    {
        var id = await practice.NewClient();
        var test = new SweatTest
        {
            On = new LocalDate(2027, 3, 20),
            BeforeKg = 70,
            AfterKg = 69.1m,
            Minutes = 60,
        };
        var tests = practice.Get<RecordSweatTest>();
        await tests.Run(Owner, await OnFile(id), test, Cancel);
        await tests.Run(Owner, await OnFile(id), test with { AfterKg = 68.9m }, Cancel);
        await tests.Forget(Owner, await OnFile(id), test, Cancel);

        const string first = "70 kg to 69.1 kg in 60 min, drunk 0 L, eaten 0 kg, urine 0 L";
        const string second = "70 kg to 68.9 kg in 60 min, drunk 0 L, eaten 0 kg, urine 0 L";
        Assert.Equal(
            [("", first), (first, second), (second, "")],
            (await Lines(id))
                .Where(l => l.What.StartsWith("sweat-test", StringComparison.Ordinal))
                .Reverse()
                .Select(l => Assert.Single(l.Changes))
                .Select(c => (c.Was, c.Became))
        );
    }

    [Fact]
    public async Task What_was_told_of_a_rehearsal_is_kept_as_it_was_told_first_and_corrected_later()
    {
        var booked = await BookedRehearsal.Make(practice);
        var told = new Feedback
        {
            ReceivedAt = default,
            Symptoms = [new Symptom(SymptomItem.Nausea, SymptomMoment.During, 6, 45)],
            UrineColour = 3,
        };
        await booked.Send(practice, Guid.NewGuid(), told);
        var file = await practice.Get<OpenRehearsal>().Run(Owner, booked.Id, null, Cancel);
        await practice
            .Get<RecordFeedback>()
            .Run(
                Owner,
                file!.Rehearsal,
                told with
                {
                    UrineColour = 5,
                    WarningSigns = [WarningSign.ChestPain],
                },
                Cancel
            );

        var lines = await Lines(booked.Id);
        var received = lines.Single(l => l.What == "feedback-received").Changes;
        Assert.Contains(received, c => (c.Field, c.Became) == ("symptom Nausea, During", "6"));
        Assert.All(received, c => Assert.Equal((booked.ClientId, ""), (c.ClientId, c.Was)));
        Assert.Equal(
            [("urine colour", "3", "5"), ("warning signs", "", "ChestPain")],
            lines
                .Single(l => l.What == "feedback-recorded")
                .Changes.Select(c => (c.Field, c.Was, c.Became))
                .Order()
        );
    }

    [Theory]
    [InlineData("race")]
    [InlineData("course")]
    [InlineData("debrief")]
    [InlineData("rehearsal")]
    [InlineData("plan")]
    public async Task Whatever_of_a_record_is_opened_leaves_a_line(string what)
    {
        var booked = await BookedRehearsal.Make(practice);
        var plan = (await practice.Get<OpenRace>().Run(Owner, booked.RaceId, null, Cancel))!
            .Versions[0]
            .Id;
        var reader = Owner with { AccountId = Guid.CreateVersion7(), Name = "Rea Der" };
        object? opened = what switch
        {
            "race" => await practice.Get<OpenRace>().Run(reader, booked.RaceId, null, Cancel),
            "course" => await practice.Get<OpenCourse>().Run(reader, booked.RaceId, Cancel),
            "debrief" => await practice.Get<OpenDebrief>().Run(reader, booked.RaceId, Cancel),
            "rehearsal" => await practice.Get<OpenRehearsal>().Run(reader, booked.Id, null, Cancel),
            _ => await practice.Get<OpenPlan>().Run(reader, plan, Cancel),
        };
        Assert.NotNull(opened);
        Assert.Single(
            await Lines(booked.ClientId),
            l => (l.What, l.By) == ("record-read", "Rea Der")
        );
    }

    [Fact]
    public async Task A_read_record_leaves_one_line_a_sitting_for_each_reader()
    {
        var id = await practice.NewClient();
        var colleague = Owner with { AccountId = Guid.CreateVersion7(), Name = "Col League" };
        foreach (var reader in new[] { Owner, Owner, colleague })
            await practice.Get<OpenClient>().Run(reader, id, Cancel);
        Assert.Equal(
            ["Col League", "Pat Tester"],
            (await Lines(id)).Where(l => l.What == "record-read").Select(l => l.By).Order()
        );
    }

    [Fact]
    public async Task Erasing_a_client_takes_the_health_facts_along_and_leaves_the_lines()
    {
        var id = await practice.NewClient();
        Assert.Contains(await Lines(id), l => l.Changes.Count > 0);
        await practice
            .Get<ClientStore>()
            .Erase(id, Owner.Note("client-erased", id, TestPractice.Now), Cancel);

        var left = await Lines(id);
        Assert.NotEmpty(left);
        Assert.All(left, l => Assert.Empty(l.Changes));
    }

    [Fact]
    public async Task The_application_can_neither_change_nor_remove_a_line_or_a_fact()
    {
        await practice.NewClient();
        var source = practice.Services.GetRequiredService<NpgsqlDataSource>();
        foreach (var table in new[] { "audit_entry", "health_change" })
        foreach (var attack in new[] { $"delete from {table}", $"update {table} set id = id" })
        {
            await using var command = source.CreateCommand(attack);
            var refusal = await Assert.ThrowsAsync<PostgresException>(() =>
                command.ExecuteNonQueryAsync(Cancel)
            );
            Assert.Equal(PostgresErrorCodes.InsufficientPrivilege, refusal.SqlState);
        }
    }

    [Fact]
    public async Task The_export_runs_nothing_in_a_spreadsheet()
    {
        var id = await practice.NewClient();
        var file = await practice.Get<OpenClient>().Run(Owner, id, Cancel);
        var details = ClientDetails.Of(file!.Client.Value) with
        {
            Notes = "=HYPERLINK(\"http://evil.example\")",
        };
        await practice.Get<ReviseClient>().Run(Owner, file.Client, details, Cancel);
        var csv = Encoding.UTF8.GetString(
            await practice.Get<ReadAudit>().Export(Owner, new AuditQuestion(About: id), Cancel)
        );
        Assert.Contains(
            "\"notes\",\"\",\"'=HYPERLINK(\"\"http://evil.example\"\")\"",
            csv,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public async Task What_is_asked_is_what_is_shown()
    {
        var id = await practice.NewClient();
        var read = practice.Get<ReadAudit>();
        var today = TestPractice.Now.InUtc().Date;
        var question = new AuditQuestion(Owner.AccountId, "client-registered", id, today, today);
        var found = await read.Run(Owner, question, 0, Cancel);
        Assert.Equal("Ines Example", found.Subjects[id].Name);
        Assert.Single(found.Lines);
        Assert.False(found.HasMore);
        foreach (
            var other in new[]
            {
                question with
                {
                    AccountId = Guid.NewGuid(),
                },
                question with
                {
                    What = "plan-issued",
                },
                question with
                {
                    Last = today.PlusDays(-1),
                },
                question with
                {
                    First = today.PlusDays(1),
                },
            }
        )
            Assert.Empty((await read.Run(Owner, other, 0, Cancel)).Lines);
    }

    private async Task<OnFile<Client>> OnFile(Guid clientId) =>
        (await practice.Get<OpenClient>().Run(Owner, clientId, Cancel))!.Client;

    private async Task<IReadOnlyList<AuditEntry>> Lines(Guid about) =>
        (
            await practice.Get<ReadAudit>().Run(Owner, new AuditQuestion(About: about), 0, Cancel)
        ).Lines;

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;
}
