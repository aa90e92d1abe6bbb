using Practice.Service.Desks;
using Practice.Store.Accounts;
using Practice.Store.Audit;

namespace Practice.Service.Accounts;

/// <summary>Ends own sessions from elsewhere: a lost phone, a machine one forgot to leave.</summary>
public sealed class EndSession(SessionStore sessions, AuditLog audit, PracticeCalendar calendar)
{
    public async Task Run(Desk desk, Guid sessionId, CancellationToken cancel)
    {
        if (await sessions.End(desk.PracticeId, desk.AccountId, sessionId, calendar.Now, cancel))
            await audit.Note(desk.Note("session-ended", desk.AccountId, calendar.Now), cancel);
    }

    /// <summary>Ends all but one.</summary>
    public async Task Others(Desk desk, Guid? here, CancellationToken cancel)
    {
        await sessions.EndOthers(desk.PracticeId, desk.AccountId, here, calendar.Now, cancel);
        await audit.Note(desk.Note("other-sessions-ended", desk.AccountId, calendar.Now), cancel);
    }
}
