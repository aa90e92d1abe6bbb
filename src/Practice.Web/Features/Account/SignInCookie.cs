using Microsoft.AspNetCore.Authentication;
using Microsoft.AspNetCore.Authentication.Cookies;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Components.Authorization;
using Microsoft.AspNetCore.Identity;
using Practice.Service.Accounts;
using Practice.Web.Features.Account.Own;

namespace Practice.Web.Features.Account;

/// <summary>Who is there is told by a cookie; without it there is only the sign-in page.</summary>
internal static class SignInCookie
{
    public static void AddSignInCookie(this IServiceCollection services)
    {
        services.AddCascadingAuthenticationState();
        services.AddScoped<AuthenticationStateProvider, SessionWatch>();
        services
            .AddAuthentication(IdentityConstants.ApplicationScheme)
            .AddIdentityCookies(cookies =>
                cookies.ApplicationCookie!.Configure(cookie =>
                {
                    cookie.Cookie.Name = "practice";
                    cookie.LoginPath = cookie.AccessDeniedPath = "/sign-in";
                    cookie.ReturnUrlParameter = "to";
                    cookie.ExpireTimeSpan = TimeSpan.FromDays(14);
                    cookie.SlidingExpiration = true;
                    cookie.Cookie.SameSite = SameSiteMode.Lax;
                    cookie.Events.OnValidatePrincipal = EndWithItsSession;
                })
            );
        services
            .AddAuthorizationBuilder()
            .SetFallbackPolicy(new AuthorizationPolicyBuilder().RequireAuthenticatedUser().Build());
    }

    private static async Task EndWithItsSession(CookieValidatePrincipalContext context)
    {
        var http = context.HttpContext;
        var sessions = http.RequestServices.GetRequiredService<OngoingSession>();
        if (context.Principal is { } user && await sessions.Lasts(user, http.RequestAborted))
            return;
        context.RejectPrincipal();
        await http.SignOutAsync(IdentityConstants.ApplicationScheme);
    }

    public static void MapSignOut(this IEndpointRouteBuilder app) =>
        app.MapPost(
                "/sign-out",
                async (SignOut signOut, HttpContext http) =>
                {
                    await signOut.Run(http.User, http.RequestAborted);
                    return Results.LocalRedirect("/sign-in");
                }
            )
            .OnlyFromOurForms();
}
