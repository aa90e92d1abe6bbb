using Practice.Service.Practices;

namespace Practice.Web.Features.Account.Begin;

/// <summary>Where nobody works yet, every page leads to the one that founds the practice.</summary>
internal static class FirstRun
{
    public const string Address = "/begin";

    public static void UseFirstRun(this IApplicationBuilder app) =>
        app.Use(
            async (http, next) =>
            {
                if (
                    HttpMethods.IsGet(http.Request.Method)
                    && http.Request.Path != Address
                    && http.Request.Headers.Accept.ToString()
                        .Contains("text/html", StringComparison.Ordinal)
                    && !await http
                        .RequestServices.GetRequiredService<Installation>()
                        .IsFounded(http.RequestAborted)
                )
                    http.Response.Redirect(Address);
                else
                    await next(http);
            }
        );
}
