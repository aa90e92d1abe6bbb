using Practice.Domain.Caseload;
using Practice.Domain.Debriefs;
using Practice.Service.Audit;
using Practice.Service.Desks;
using Practice.Store.Clients;
using Practice.Store.Debriefs;

namespace Practice.Service.Debriefs;

/// <summary>What became of writing a debrief down.</summary>
public enum DebriefOutcome
{
    /// <summary>It is on file.</summary>
    Recorded,

    /// <summary>The race has not started yet.</summary>
    TooEarly,

    /// <summary>Somebody else changed it meanwhile.</summary>
    ChangedElsewhere,
}

/// <summary>
/// Writes down how a race went. A finish on the road becomes the client's recent result, from which the next plan
/// estimates speed. Assistants may.
/// </summary>
public sealed class RecordDebrief(
    DebriefStore debriefs,
    ClientStore clients,
    PracticeCalendar calendar
)
{
    /// <exception cref="ArgumentException">A figure is out of range.</exception>
    public async Task<DebriefOutcome> Run(
        Desk desk,
        DebriefFile file,
        DebriefReport report,
        CancellationToken cancel
    )
    {
        ArgumentNullException.ThrowIfNull(file);
        if (calendar.Now < file.Race.ZonedStart.ToInstant())
            return DebriefOutcome.TooEarly;
        var note = desk.Note("race-debriefed", file.Race.Id, calendar.Now)
            .With(
                file.Race.ClientId,
                ToldFacts.Of(file.Debrief?.Value.Report),
                ToldFacts.Of(report)
            );
        if (file.Debrief is { } written)
        {
            written.Value.Correct(file.Race, report, desk.Name, calendar.Now);
            if (await debriefs.Save(written, note, cancel) is not Saved<Debrief>)
                return DebriefOutcome.ChangedElsewhere;
            await Teach(desk, file, written.Value, cancel);
            return DebriefOutcome.Recorded;
        }
        if (await debriefs.Find(desk.PracticeId, file.Race.Id, cancel) is not null)
            return DebriefOutcome.ChangedElsewhere;
        var debrief = Debrief.Of(file.Race, report, desk.Name, calendar.Now);
        await debriefs.Add(debrief, note, cancel);
        await Teach(desk, file, debrief, cancel);
        return DebriefOutcome.Recorded;
    }

    /// <summary>A client changed meanwhile keeps that change: the result can be typed on her page.</summary>
    private async Task Teach(Desk desk, DebriefFile file, Debrief debrief, CancellationToken cancel)
    {
        var client = file.Client;
        if (debrief.Teaches(file.Race, client.Value.Physique) is not { } learned)
            return;
        client.Value.Measure(learned);
        await clients.Save(
            client,
            desk.Note("client-result-learned", client.Value.Id, calendar.Now),
            cancel
        );
    }
}
