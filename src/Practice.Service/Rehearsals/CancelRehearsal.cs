using Practice.Domain.Caseload;
using Practice.Domain.Rehearsals;
using Practice.Service.Desks;
using Practice.Store.Rehearsals;

namespace Practice.Service.Rehearsals;

/// <summary>Records that a rehearsal does not take place.</summary>
public sealed class CancelRehearsal(RehearsalStore rehearsals, PracticeCalendar calendar)
{
    /// <returns>Whether it is cancelled; not once the client told of it.</returns>
    public async Task<bool> Run(
        Desk desk,
        Guid rehearsalId,
        string because,
        CancellationToken cancel
    )
    {
        if (
            await rehearsals.Find(desk.PracticeId, rehearsalId, cancel)
            is not { Value.Status: RehearsalStatus.Booked } booked
        )
            return false;
        booked.Value.Cancel(because);
        var note = desk.Note("rehearsal-cancelled", rehearsalId, calendar.Now);
        return await rehearsals.Save(booked, note, cancel) is Saved<Rehearsal>;
    }
}
