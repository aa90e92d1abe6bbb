using System.Security.Claims;
using Microsoft.AspNetCore.Identity;
using Practice.Service.Desks;
using Practice.Store.Accounts;

namespace Practice.Service.Accounts;

/// <summary>Signs out: the session ends, so that a copy of the cookie is worth nothing.</summary>
public sealed class SignOut(
    SignInManager<Account> manager,
    SessionStore sessions,
    PracticeCalendar calendar
)
{
    public async Task Run(ClaimsPrincipal user, CancellationToken cancel)
    {
        if (user.Desk() is { } desk && user.SessionId() is { } session)
            await sessions.End(desk.PracticeId, desk.AccountId, session, calendar.Now, cancel);
        await manager.SignOutAsync();
    }
}
