namespace Practice.Web.Features.Portal;

/// <summary>
/// What every answer below a link bears: the address is a secret, so it goes to nobody else; the page is one person's,
/// so nobody between here and the phone keeps it; and nothing runs in it that is not ours.
/// </summary>
internal sealed class PhoneHeaders : IEndpointFilter
{
    private const string Policy =
        "default-src 'none'; script-src 'self'; worker-src 'self'; connect-src 'self'; img-src 'self'; "
        + "form-action 'self'; base-uri 'none'; frame-ancestors 'none'; style-src 'self'";

    public ValueTask<object?> InvokeAsync(
        EndpointFilterInvocationContext context,
        EndpointFilterDelegate next
    )
    {
        var headers = context.HttpContext.Response.Headers;
        headers.CacheControl = "private, no-store";
        headers["Referrer-Policy"] = "no-referrer";
        headers["X-Robots-Tag"] = "noindex, nofollow";
        headers.XContentTypeOptions = "nosniff";
        headers.ContentSecurityPolicy = Policy;
        return next(context);
    }

    /// <summary>Lets a page bring its practice's colours.</summary>
    public static void Allow(HttpResponse response, PhoneLook look) =>
        response.Headers.ContentSecurityPolicy = $"{Policy} {look.Hash}";
}
