using Microsoft.AspNetCore.Components.Authorization;
using Microsoft.AspNetCore.Components.Server;
using Practice.Service.Accounts;

namespace Practice.Web.Features.Account;

/// <summary>A circuit outlives requests: it asks by itself whether its session still lasts.</summary>
internal sealed class SessionWatch(ILoggerFactory log, OngoingSession sessions)
    : RevalidatingServerAuthenticationStateProvider(log)
{
    protected override TimeSpan RevalidationInterval => TimeSpan.FromSeconds(30);

    protected override Task<bool> ValidateAuthenticationStateAsync(
        AuthenticationState authenticationState,
        CancellationToken cancellationToken
    ) => sessions.Lasts(authenticationState.User, cancellationToken);
}
