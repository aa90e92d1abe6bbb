using System.Threading.RateLimiting;
using Practice.Service.Portal;

namespace Practice.Web.Features.Portal;

/// <summary>
/// How often the phone pages answer: by link, so that one that got about can not be hammered, and by network address,
/// so that nobody can try links. Many phones at a start line may share an address. Own rules.
/// </summary>
internal static class PhoneLimits
{
    /// <summary>Requests of one link at once; one a second comes back.</summary>
    public const int OfLink = 60;

    /// <summary>Requests of one address at once; five a second come back.</summary>
    private const int OfAddress = 600;

    public static void AddPhoneLimits(this IServiceCollection services) =>
        services.AddRateLimiter(limits =>
        {
            limits.RejectionStatusCode = StatusCodes.Status429TooManyRequests;
            limits.OnRejected = async (rejected, cancel) =>
            {
                var response = rejected.HttpContext.Response;
                response.Headers.RetryAfter = "30";
                response.ContentType = "text/plain";
                await response.WriteAsync(
                    "Too often. Wait half a minute and try again; nothing you typed is lost.",
                    cancel
                );
            };
            limits.GlobalLimiter = PartitionedRateLimiter.CreateChained(
                PartitionedRateLimiter.Create<HttpContext, string>(http =>
                    Link(http) is { } link
                        ? Bucket(link, OfLink, perSecond: 1)
                        : RateLimitPartition.GetNoLimiter("")
                ),
                PartitionedRateLimiter.Create<HttpContext, string>(http =>
                    Link(http) is null
                        ? RateLimitPartition.GetNoLimiter("")
                        : Bucket($"{http.Connection.RemoteIpAddress}", OfAddress, perSecond: 5)
                )
            );
        });

    private static string? Link(HttpContext http) =>
        http.Request.Path.StartsWithSegments(PhonePaths.Root, out var rest)
        && rest.Value is ['/', .. { Length: > 0 } inside]
        && inside != "worker.js"
            ? inside.Split('/')[0]
            : null;

    private static RateLimitPartition<string> Bucket(string key, int most, int perSecond) =>
        RateLimitPartition.GetTokenBucketLimiter(
            key,
            _ => new TokenBucketRateLimiterOptions
            {
                TokenLimit = most,
                TokensPerPeriod = perSecond,
                ReplenishmentPeriod = TimeSpan.FromSeconds(1),
                QueueLimit = 0,
            }
        );
}
