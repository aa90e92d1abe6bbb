using System.Threading.RateLimiting;

namespace Practice.Web.Features.Account;

/// <summary>
/// How often one network address may knock: what is sent to the pages at the door counts, looking at them does not. A
/// team behind one address signs in together in the morning. Own rule; lockout counts wrong passwords beside it.
/// </summary>
internal static class DoorLimits
{
    public const string Policy = "door";

    private const int AtOnce = 30;

    public static void AddDoorLimits(this IServiceCollection services) =>
        services.AddRateLimiter(limits =>
            limits.AddPolicy(
                Policy,
                http =>
                    HttpMethods.IsPost(http.Request.Method)
                        ? RateLimitPartition.GetTokenBucketLimiter(
                            $"{http.Connection.RemoteIpAddress}",
                            _ => new TokenBucketRateLimiterOptions
                            {
                                TokenLimit = AtOnce,
                                TokensPerPeriod = 1,
                                ReplenishmentPeriod = TimeSpan.FromSeconds(4),
                                QueueLimit = 0,
                            }
                        )
                        : RateLimitPartition.GetNoLimiter("")
            )
        );
}
