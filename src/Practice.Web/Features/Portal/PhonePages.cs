using Microsoft.AspNetCore.ResponseCompression;
using Practice.Service.Portal;

namespace Practice.Web.Features.Portal;

/// <summary>What the phone pages need of the application around them.</summary>
internal static class PhonePages
{
    public static void AddPhonePages(this IServiceCollection services, IConfiguration settings)
    {
        services.AddPhoneLimits();
        services.AddSingleton(new EmergencyCall(settings["Phone:EmergencyNumber"]));
        services.AddResponseCompression(compression =>
        {
            compression.EnableForHttps = true;
            compression.Providers.Add<BrotliCompressionProvider>();
            compression.Providers.Add<GzipCompressionProvider>();
        });
    }

    /// <summary>
    /// Compressed, since a phone at a start line has little signal. It gives nothing away over HTTPS: these pages repeat
    /// nothing that a stranger could put into them.
    /// </summary>
    public static void UsePhonePages(this IApplicationBuilder app)
    {
        app.UseRateLimiter();
        app.UseWhen(
            http => http.Request.Path.StartsWithSegments(PhonePaths.Root),
            phone => phone.UseResponseCompression()
        );
    }
}
