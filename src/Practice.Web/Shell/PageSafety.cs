using System.Security.Cryptography;
using Microsoft.Net.Http.Headers;

namespace Practice.Web.Shell;

/// <summary>
/// What every answer says of how it may be used: only scripts that this answer names run in it, nobody frames it, and
/// pages about people are kept by no cache. An endpoint that says more for itself keeps its own word.
/// </summary>
internal static class PageSafety
{
    private const string Key = "page-nonce";

    private static readonly string[] Private = ["text/html", "application/pdf", "text/csv"];

    /// <summary>The word that scripts of this answer bear.</summary>
    public static string Nonce(this HttpContext http)
    {
        ArgumentNullException.ThrowIfNull(http);
        if (http.Items[Key] is not string nonce)
            http.Items[Key] = nonce = RandomNumberGenerator.GetHexString(32, lowercase: true);
        return nonce;
    }

    public static void UsePageSafety(this IApplicationBuilder app) =>
        app.Use(
            (http, next) =>
            {
                http.Response.OnStarting(() =>
                {
                    Mark(http);
                    return Task.CompletedTask;
                });
                return next(http);
            }
        );

    private static void Mark(HttpContext http)
    {
        var headers = http.Response.Headers;
        if (!headers.ContainsKey(HeaderNames.ContentSecurityPolicy))
            headers.ContentSecurityPolicy = Policy(http.Nonce());
        if (!headers.ContainsKey("Referrer-Policy"))
            headers["Referrer-Policy"] = "same-origin";
        headers.XContentTypeOptions = "nosniff";
        headers.XFrameOptions = "DENY";
        headers["Cross-Origin-Opener-Policy"] = "same-origin";
        headers["Cross-Origin-Resource-Policy"] = "same-origin";
        headers["Permissions-Policy"] =
            "camera=(), microphone=(), geolocation=(), payment=(), usb=(), "
            + "publickey-credentials-get=(self), publickey-credentials-create=(self)";
        if (
            Private.Any(type =>
                http.Response.ContentType?.StartsWith(type, StringComparison.Ordinal) == true
            ) && !headers.CacheControl.ToString().Contains("no-store", StringComparison.Ordinal)
        )
            headers.CacheControl = "no-store";
    }

    /// <summary>
    /// Styles are the exception: the component library sets some as attributes and writes its theme as a style element.
    /// </summary>
    private static string Policy(string nonce) =>
        $"default-src 'self'; script-src 'nonce-{nonce}' 'strict-dynamic'; style-src 'self' 'unsafe-inline'; "
        + "img-src 'self' data:; object-src 'none'; frame-src 'none'; frame-ancestors 'none'; "
        + "base-uri 'self'; form-action 'self'";
}
