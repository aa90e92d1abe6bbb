using System.Security.Claims;
using NodaTime;
using Practice.Service.Desks;
using Practice.Store.Accounts;

namespace Practice.Service.Accounts;

/// <summary>Whether a cookie still speaks for somebody: its session may have been ended from elsewhere.</summary>
public sealed class OngoingSession(SessionStore sessions, PracticeCalendar calendar)
{
    private static readonly Duration Marked = Duration.FromMinutes(5);

    public async Task<bool> Lasts(ClaimsPrincipal user, CancellationToken cancel)
    {
        if (user.Desk() is not { } desk || user.SessionId() is not { } id)
            return false;
        if (
            await sessions.Lasting(desk.PracticeId, id, cancel) is not { } session
            || session.AccountId != desk.AccountId
        )
            return false;
        if (calendar.Now - session.SeenAt > Marked)
            await sessions.Seen(session, calendar.Now, cancel);
        return true;
    }
}
