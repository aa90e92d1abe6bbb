using Microsoft.AspNetCore.Authentication;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Identity;
using Practice.Service.Accounts;

namespace Practice.Web.Features.Account;

/// <summary>Who is there is told by a cookie; without it there is only the sign-in page.</summary>
internal static class SignInCookie
{
    public static void AddSignInCookie(this IServiceCollection services)
    {
        services.AddCascadingAuthenticationState();
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
                })
            );
        services
            .AddAuthorizationBuilder()
            .SetFallbackPolicy(new AuthorizationPolicyBuilder().RequireAuthenticatedUser().Build());
    }

    public static void MapSignOut(this IEndpointRouteBuilder app) =>
        app.MapPost(
            "/sign-out",
            async (SignOut signOut) =>
            {
                await signOut.Run();
                return Results.LocalRedirect("/sign-in");
            }
        );
}
