using System.IO.Compression;
using System.Text;
using System.Text.Json;
using NodaTime;
using Practice.Domain.Caseload;
using Practice.Domain.Clients;
using Practice.Domain.Debriefs;
using Practice.Domain.Practices;
using Practice.Domain.Quantities;
using Practice.Domain.Races;
using Practice.Service.Audit;
using Practice.Service.Clients;
using Practice.Service.Debriefs;
using Practice.Service.Desks;
using Practice.Service.Practices;
using Practice.Service.Practices.Brand;
using Practice.Service.Privacy;
using Practice.Service.Races;
using Practice.TestSupport;

namespace Practice.Store.Tests.Service;

public class PrivacyTests(TestPractice practice) : IClassFixture<TestPractice>
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    private Desk Owner => practice.Practitioner with { Role = StaffRole.Owner };

    [Fact]
    public async Task Consent_is_kept_with_the_version_of_its_text_and_can_be_taken_back()
    {
        var id = await practice.NewClient();
        var consents = practice.Get<RecordConsent>();
        await consents.Run(practice.Assistant, await OnFile(id), ConsentWay.OnPaper, Cancel);
        var given = (await OnFile(id)).Value.StandingConsent!;
        Assert.Equal(
            (ConsentText.Current.Version, ConsentWay.OnPaper, "Pat Tester"),
            (given.TextVersion, given.Way, given.RecordedBy)
        );
        await consents.TakeBack(practice.Assistant, await OnFile(id), Cancel);
        var client = (await OnFile(id)).Value;
        Assert.Null(client.StandingConsent);
        Assert.Equal(new LocalDate(2027, 4, 1), Assert.Single(client.Consents).WithdrawnOn);
    }

    [Fact]
    public async Task An_export_tells_how_a_race_went()
    {
        var id = await practice.NewClient();
        var details = new RaceDetails
        {
            Name = "Spring Half",
            DistanceKm = 21.0975m,
            Start = new LocalDateTime(2027, 3, 30, 9, 0),
            ZoneId = "Europe/London",
        };
        var race = await practice.Get<EnterRace>().Run(practice.Practitioner, id, details, Cancel);
        var file = await practice.Get<OpenDebrief>().Run(practice.Practitioner, race, Cancel);
        var report = new DebriefReport
        {
            FinishTime = Duration.FromMinutes(95),
            Symptoms = "Cramps",
        };
        await practice.Get<RecordDebrief>().Run(practice.Practitioner, file!, report, Cancel);

        var export = await practice.Get<ExportClient>().Run(practice.Practitioner, id, Cancel);
        using var zip = new ZipArchive(new MemoryStream(export!.Zip));
        Assert.Contains("\"Cramps\"", Read(zip, "client.json"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task An_export_holds_facts_tables_and_races_and_is_noted()
    {
        var id = await practice.NewClient();
        await practice.NewRace(id);
        var export = await practice.Get<ExportClient>().Run(practice.Practitioner, id, Cancel);
        using var zip = new ZipArchive(new MemoryStream(export!.Zip));
        Assert.Equal(
            ["body-mass.csv", "client.json", "letters.csv", "who-did-what.csv"],
            zip.Entries.Select(e => e.FullName).Order(StringComparer.Ordinal)
        );
        using var facts = JsonDocument.Parse(Read(zip, "client.json"));
        var root = facts.RootElement;
        Assert.Equal("Ines", root.GetProperty("givenName").GetString());
        Assert.Equal(170, root.GetProperty("physique").GetProperty("heightCm").GetDecimal());
        Assert.True(root.GetProperty("screening").TryGetProperty("answers", out _));
        Assert.Equal(
            "Harbour Marathon",
            root.GetProperty("races")[0].GetProperty("name").GetString()
        );
        Assert.Contains(
            "2027-03-30\",\"70\"",
            Read(zip, "body-mass.csv"),
            StringComparison.Ordinal
        );
        Assert.Contains(
            "client-registered",
            Read(zip, "who-did-what.csv"),
            StringComparison.Ordinal
        );
        Assert.Contains("client-exported", Read(zip, "who-did-what.csv"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task An_erased_client_leaves_nothing_but_lines_that_name_nobody()
    {
        var id = await practice.NewClient();
        var race = await practice.NewRace(id);
        Assert.IsType<Erased>(await practice.Get<EraseClient>().Run(Owner, id, Cancel));
        Assert.Null(await practice.Get<OpenClient>().Run(Owner, id, Cancel));
        Assert.Null(await practice.Get<OpenRace>().Run(Owner, race, null, Cancel));
        var lines = await practice
            .Get<ReadAudit>()
            .Run(Owner, new AuditQuestion(About: id), 0, Cancel);
        Assert.Equal("client-erased", lines.Lines[0].What);
        Assert.Empty(lines.Subjects);
        Assert.All(
            lines.Lines,
            line =>
            {
                Assert.Empty(line.Changes);
                Assert.DoesNotContain("Ines", line.Detail, StringComparison.Ordinal);
            }
        );
        Assert.IsType<NoSuchClient>(await practice.Get<EraseClient>().Run(Owner, id, Cancel));
    }

    [Fact]
    public async Task A_record_that_must_be_kept_is_not_erased_until_it_is_released()
    {
        var id = await practice.NewClient();
        var erase = practice.Get<EraseClient>();
        await erase.Keep(Owner, await OnFile(id), "An insurer's claim", Cancel);
        var kept = Assert.IsType<KeptByLaw>(await erase.Run(Owner, id, Cancel));
        Assert.Equal("An insurer's claim", kept.Hold.Reason);
        await erase.Release(Owner, await OnFile(id), Cancel);
        Assert.IsType<Erased>(await erase.Run(Owner, id, Cancel));
    }

    [Fact]
    public async Task Only_the_owner_erases_and_no_assistant_exports()
    {
        var id = await practice.NewClient();
        await Assert.ThrowsAsync<NotAllowedException>(() =>
            practice.Get<EraseClient>().Run(practice.Practitioner, id, Cancel)
        );
        await Assert.ThrowsAsync<NotAllowedException>(() =>
            practice.Get<ExportClient>().Run(practice.Assistant, id, Cancel)
        );
    }

    [Fact]
    public async Task Of_several_replicas_one_does_the_nightly_work()
    {
        var turn = practice.Get<Turn>();
        var second = true;
        var first = await turn.Take(
            "test.work",
            async () => second = await turn.Take("test.work", () => Task.CompletedTask, Cancel),
            Cancel
        );
        Assert.Equal((true, false), (first, second));
    }

    [Fact]
    public async Task New_races_begin_with_what_the_practice_chose()
    {
        var desk = (await practice.FoundPractice("Usual House")) with { Role = StaffRole.Owner };
        var onFile = (await practice.Get<SetBrand>().Open(desk, Cancel))!;
        await practice
            .Get<SetDefaults>()
            .Run(
                desk,
                onFile,
                new PracticeDefaults { CarbohydrateGPerKg = 9, WindowHours = 48 },
                Cancel
            );
        var client = await Registered(desk, new LocalDate(2027, 3, 1));
        var race = await practice
            .Get<EnterRace>()
            .Run(
                desk,
                client,
                new()
                {
                    Name = "Harbour Marathon",
                    DistanceKm = 42.195m,
                    Start = new LocalDateTime(2027, 4, 18, 9, 0),
                    ZoneId = "Europe/London",
                },
                Cancel
            );
        var file = await practice.Get<OpenRace>().Run(desk, race, null, Cancel);
        Assert.Equal((9m, 48), (file!.Choices.CarbohydrateGPerKg, file.Choices.WindowHours));
        await Assert.ThrowsAsync<ArgumentException>(async () =>
            await practice
                .Get<SetDefaults>()
                .Run(desk, onFile, new PracticeDefaults { WindowHours = 500 }, Cancel)
        );
    }

    private async Task<OnFile<Client>> OnFile(Guid id, Desk? desk = null) =>
        (await practice.Get<OpenClient>().Run(desk ?? Owner, id, Cancel))!.Client;

    private Task<Guid> Registered(Desk desk, LocalDate weighed) =>
        practice
            .Get<RegisterClient>()
            .Run(
                desk,
                new ClientDetails
                {
                    GivenName = "Quinn",
                    FamilyName = "Quiet",
                    BirthDate = new LocalDate(1990, 5, 4),
                    Physique = new Physique { Sex = Sex.Male, HeightCm = 180 },
                },
                new BodyMassEntry(weighed, BodyMass.OfKilograms(70)),
                Cancel
            );

    private static string Read(ZipArchive zip, string name)
    {
        using var reader = new StreamReader(zip.GetEntry(name)!.Open(), Encoding.UTF8);
        return reader.ReadToEnd();
    }
}
