namespace Practice.Web.Shell;

/// <summary>How much the server takes at once, and what it tells of itself.</summary>
internal static class ServerLimits
{
    /// <summary>A form is some kilobytes; files come through the circuit, in pieces and with limits of their own.</summary>
    private const long LargestRequest = 2 * 1024 * 1024;

    public static void SetServerLimits(this WebApplicationBuilder builder)
    {
        builder.WebHost.ConfigureKestrel(server =>
        {
            server.AddServerHeader = false;
            server.Limits.MaxRequestBodySize = LargestRequest;
        });
        builder.Services.AddHsts(hsts => hsts.MaxAge = TimeSpan.FromDays(365));
        builder.Services.AddAntiforgery(antiforgery =>
        {
            antiforgery.Cookie.Name = "practice-form";
            antiforgery.SuppressXFrameOptionsHeader = true; // every answer has a stricter one
        });
    }
}
