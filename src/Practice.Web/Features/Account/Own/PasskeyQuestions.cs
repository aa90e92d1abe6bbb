using Microsoft.AspNetCore.Antiforgery;
using Practice.Service.Accounts;
using Practice.Service.Desks;

namespace Practice.Web.Features.Account.Own;

/// <summary>What a browser is asked before it shows a passkey or makes one.</summary>
internal static class PasskeyQuestions
{
    public const string ToSignIn = "/passkeys/sign-in";
    public const string ToAdd = "/passkeys/add";

    public static void MapPasskeyQuestions(this IEndpointRouteBuilder app)
    {
        app.MapPost(ToSignIn, async (SignInWithPasskey passkeys) => Json(await passkeys.Question()))
            .AllowAnonymous()
            .RequireRateLimiting(DoorLimits.Policy)
            .OnlyFromOurForms();
        app.MapPost(
                ToAdd,
                async (AddPasskey passkeys, HttpContext http) =>
                    http.Desk() is { } desk
                        ? Json(await passkeys.Question(desk))
                        : Results.Unauthorized()
            )
            .OnlyFromOurForms();
    }

    private static IResult Json(string json) => Results.Content(json, "application/json");

    /// <summary>Refuses what no form of ours sent.</summary>
    public static RouteHandlerBuilder OnlyFromOurForms(this RouteHandlerBuilder endpoint) =>
        endpoint.AddEndpointFilter(
            async (context, next) =>
            {
                var http = context.HttpContext;
                var antiforgery = http.RequestServices.GetRequiredService<IAntiforgery>();
                return await antiforgery.IsRequestValidAsync(http)
                    ? await next(context)
                    : Results.Text("Load the page again, then try once more.", statusCode: 400);
            }
        );
}
