using Practice.Domain.Caseload;
using Practice.Domain.Rehearsals;
using Practice.Service.Audit;
using Practice.Service.Desks;
using Practice.Store.Rehearsals;

namespace Practice.Service.Rehearsals;

/// <summary>Records long-run days, days that do not do, and what a client told of foods.</summary>
public sealed class ReviseBackground(BackgroundStore backgrounds, PracticeCalendar calendar)
{
    /// <summary>Reads the background, changes it and keeps it.</summary>
    /// <returns>Whether it is on file; not when somebody else changed it at the same moment.</returns>
    public async Task<bool> Run(
        Desk desk,
        Guid clientId,
        Action<RehearsalBackground> change,
        CancellationToken cancel
    )
    {
        var onFile = await backgrounds.Of(desk.PracticeId, clientId, cancel);
        var background = onFile?.Value ?? RehearsalBackground.Of(desk.PracticeId, clientId);
        var before = ToldFacts.Of(background);
        change(background);
        var note = desk.Note("rehearsal-background-kept", clientId, calendar.Now)
            .With(clientId, before, ToldFacts.Of(background));
        if (onFile is not null)
            return await backgrounds.Save(onFile, note, cancel) is Saved<RehearsalBackground>;
        await backgrounds.Add(background, note, cancel);
        return true;
    }
}
