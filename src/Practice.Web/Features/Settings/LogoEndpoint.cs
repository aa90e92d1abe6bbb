using Microsoft.Net.Http.Headers;
using Practice.Service.Desks;
using Practice.Service.Practices;

namespace Practice.Web.Features.Settings;

/// <summary>The practice's logo as an image of its own, so that pages need not carry it.</summary>
internal static class LogoEndpoint
{
    public const string Address = "/practice/logo.png";

    public static void MapLogo(this IEndpointRouteBuilder app) =>
        app.MapGet(
            Address,
            async (HttpContext http, OpenPractice open, CancellationToken cancel) =>
            {
                if (http.Desk() is not { } desk)
                    return Results.NotFound();
                var logo = (await open.Run(desk, cancel)).LogoPng;
                return logo.IsEmpty
                    ? Results.NotFound()
                    : Results.Bytes(
                        logo.ToArray(),
                        "image/png",
                        entityTag: new EntityTagHeaderValue(
                            $"\"{Convert.ToHexString(System.Security.Cryptography.SHA256.HashData(logo.AsSpan()))[..16]}\""
                        )
                    );
            }
        );
}
