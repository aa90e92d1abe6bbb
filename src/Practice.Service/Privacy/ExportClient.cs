using System.Collections.Immutable;
using System.Globalization;
using System.IO.Compression;
using System.Text;
using NodaTime.Text;
using Practice.Domain.Caseload;
using Practice.Domain.Clients;
using Practice.Domain.Plans;
using Practice.Service.Audit;
using Practice.Service.Desks;
using Practice.Service.Plans;
using Practice.Store.Audit;
using Practice.Store.Clients;
using Practice.Store.Courses;
using Practice.Store.Debriefs;
using Practice.Store.Documents;
using Practice.Store.Mail;
using Practice.Store.Plans;
using Practice.Store.Races;
using Practice.Store.Rehearsals;
using Practice.Store.Screening;

namespace Practice.Service.Privacy;

/// <summary>A client's data as one file to hand over.</summary>
/// <param name="Zip">The file.</param>
/// <param name="FileName">Its name.</param>
public sealed record ClientExport(byte[] Zip, string FileName);

/// <summary>
/// Puts all that is kept of a client into one file: JSON for machines, tables for people, and the papers of issued
/// plans.
/// </summary>
public sealed class ExportClient(
    ClientStore clients,
    ScreeningStore screenings,
    RaceStore races,
    CourseStore courses,
    DebriefStore debriefs,
    PlanStore plans,
    RehearsalStore rehearsals,
    BackgroundStore backgrounds,
    LetterStore letters,
    AuditLog audit,
    PrintPlan print,
    PracticeCalendar calendar
)
{
    private const int MostLines = 50_000;

    /// <returns>The file; null when the practice has no such client.</returns>
    public async Task<ClientExport?> Run(Desk desk, Guid clientId, CancellationToken cancel)
    {
        NotAllowedException.Unless(desk.MayDecide);
        if (await clients.Find(desk.PracticeId, clientId, cancel) is not { Value: var client })
            return null;
        await audit.Note(desk.Note("client-exported", clientId, calendar.Now), cancel);
        using var bytes = new MemoryStream();
        await using (var zip = new ZipArchive(bytes, ZipArchiveMode.Create, leaveOpen: true))
        {
            var issued = await Facts(zip, desk, client, cancel);
            await Put(zip, "body-mass.csv", BodyMass(client), cancel);
            await Put(zip, "letters.csv", await Letters(desk, clientId, cancel), cancel);
            await Put(zip, "who-did-what.csv", await Lines(desk, client, cancel), cancel);
            foreach (var version in issued)
                if (await print.Run(desk, version.Id, null, PaperVariant.Full, cancel) is { } paper)
                    await Put(zip, $"plans/{version.Id:N}-{paper.FileName}", paper.Pdf, cancel);
        }
        return new ClientExport(bytes.ToArray(), $"client-{clientId:N}.zip");
    }

    /// <returns>The versions that were issued.</returns>
    private async Task<List<PlanVersion>> Facts(
        ZipArchive zip,
        Desk desk,
        Client client,
        CancellationToken cancel
    )
    {
        var issued = new List<PlanVersion>();
        var allRaces = new List<object>();
        foreach (var row in await races.OfClient(desk.PracticeId, client.Id, cancel))
        {
            if (await races.Find(desk.PracticeId, row.RaceId, cancel) is not { Value: var race })
                continue;
            var versions = new List<object>();
            foreach (var mark in await plans.Versions(desk.PracticeId, race.Id, cancel))
            {
                if (
                    await plans.Find(desk.PracticeId, mark.Id, cancel) is not { Value: var version }
                )
                    continue;
                versions.Add(PlainFacts.Of(version));
                if (version.IssuedAt is not null)
                    issued.Add(version);
            }
            var course = await courses.Find(desk.PracticeId, race.Id, cancel);
            var debrief = await debriefs.Find(desk.PracticeId, race.Id, cancel);
            allRaces.Add(
                new Dictionary<string, object?>(PlainFacts.Of(race))
                {
                    ["course"] = course is null ? null : PlainFacts.Of(course.Value),
                    ["debrief"] = debrief is null ? null : PlainFacts.Of(debrief.Value),
                    ["plans"] = versions,
                }
            );
        }
        var screening = await screenings.Of(desk.PracticeId, client.Id, cancel);
        var background = await backgrounds.Of(desk.PracticeId, client.Id, cancel);
        var facts = new Dictionary<string, object?>(PlainFacts.Of(client))
        {
            ["exportedAt"] = InstantPattern.General.Format(calendar.Now),
            ["screening"] = screening is null ? null : PlainFacts.Of(screening.Value),
            ["rehearsalBackground"] = background is null ? null : PlainFacts.Of(background.Value),
            ["rehearsals"] = (await rehearsals.OfClient(desk.PracticeId, client.Id, cancel))
                .Select(PlainFacts.Of)
                .ToList(),
            ["races"] = allRaces,
        };
        await Put(zip, "client.json", StoredJson.WriteForPeople(facts), cancel);
        return issued;
    }

    private static byte[] BodyMass(Client client) =>
        PlainTable.Write(
            ["day", "body mass, kg"],
            client.BodyMassLog.Select(e =>
                new[]
                {
                    LocalDatePattern.Iso.Format(e.On),
                    e.Mass.Kilograms.ToString("0.###", CultureInfo.InvariantCulture),
                }
            )
        );

    private async Task<byte[]> Letters(Desk desk, Guid clientId, CancellationToken cancel) =>
        PlainTable.Write(
            ["written (UTC)", "sent (UTC)", "to", "kind", "subject", "by"],
            (await letters.ToClient(desk.PracticeId, clientId, cancel)).Select(l =>
                new[]
                {
                    InstantPattern.General.Format(l.WrittenAt),
                    l.SentAt is { } sent ? InstantPattern.General.Format(sent) : "",
                    l.To,
                    $"{l.Kind}",
                    l.Subject,
                    l.WrittenBy,
                }
            )
        );

    private async Task<byte[]> Lines(Desk desk, Client client, CancellationToken cancel) =>
        AuditTable.Write(
            await audit.Search(
                desk.PracticeId,
                new AuditFilter(null, null, client.Id, null, null),
                0,
                MostLines,
                cancel
            ),
            ImmutableDictionary<Guid, AuditSubject>.Empty
        );

    private static async Task Put(
        ZipArchive zip,
        string name,
        byte[] content,
        CancellationToken cancel
    )
    {
        await using var entry = await zip.CreateEntry(name).OpenAsync(cancel);
        await entry.WriteAsync(content, cancel);
    }
}
