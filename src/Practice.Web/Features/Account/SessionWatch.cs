using Microsoft.AspNetCore.Components.Authorization;
using Microsoft.AspNetCore.Components.Server;
using Practice.Service.Accounts;
using Practice.Web.Parts.Saving;

namespace Practice.Web.Features.Account;

/// <summary>A circuit outlives requests: it asks by itself whether its session still lasts.</summary>
internal sealed class SessionWatch(ILoggerFactory log, OngoingSession sessions)
    : RevalidatingServerAuthenticationStateProvider(log)
{
    protected override TimeSpan RevalidationInterval => TimeSpan.FromSeconds(30);

    protected override async Task<bool> ValidateAuthenticationStateAsync(
        AuthenticationState authenticationState,
        CancellationToken cancellationToken
    )
    {
        try
        {
            return await sessions.Lasts(authenticationState.User, cancellationToken);
        }
        catch (Exception e) when (Outage.IsBehind(e) || e is ObjectDisposedException)
        {
            // without a database the page can do nothing and may stand until the next question; so it may while the program ends
            return true;
        }
    }
}
