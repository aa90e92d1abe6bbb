using System.Security.Claims;
using Microsoft.AspNetCore.Authentication;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Identity;
using Microsoft.Extensions.Logging;
using Microsoft.Extensions.Options;
using Practice.Domain.Practices;
using Practice.Service.Desks;
using Practice.Store.Accounts;
using Practice.Store.Audit;

namespace Practice.Service.Accounts;

/// <summary>
/// Lets members in. Whichever way somebody proves who she is, she comes through here: a session of her own begins, the
/// cookie carries its key, and the audit has a line.
/// </summary>
internal sealed class Door(
    UserManager<Account> accounts,
    IHttpContextAccessor contexts,
    IUserClaimsPrincipalFactory<Account> claims,
    IOptions<IdentityOptions> options,
    ILogger<Door> log,
    IAuthenticationSchemeProvider schemes,
    IUserConfirmation<Account> confirmation,
    SessionStore sessions,
    AuditLog audit,
    PracticeCalendar calendar
) : SignInManager<Account>(accounts, contexts, claims, options, log, schemes, confirmation)
{
    /// <summary>A member who left the team is not let in.</summary>
    public override async Task<bool> CanSignInAsync(Account user) =>
        user.DeactivatedAt is null && await base.CanSignInAsync(user);

    public override async Task SignInWithClaimsAsync(
        Account user,
        AuthenticationProperties? authenticationProperties,
        IEnumerable<Claim> additionalClaims
    )
    {
        var session = new SignInSession
        {
            PracticeId = user.PracticeId,
            AccountId = user.Id,
            From = Whereabouts.Of(Context),
            BegunAt = calendar.Now,
            SeenAt = calendar.Now,
        };
        await sessions.Begin(session, Context.RequestAborted);
        await base.SignInWithClaimsAsync(
            user,
            authenticationProperties,
            additionalClaims.Append(new Claim(DeskClaims.Session, session.Id.ToString()))
        );
        var desk = new Desk(user.PracticeId, user.Id, user.DisplayName, user.Role)
        {
            From = session.From,
        };
        await audit.Note(desk.Note("signed-in", user.Id, calendar.Now), Context.RequestAborted);
    }
}
