using Microsoft.AspNetCore.Components.Endpoints;
using Microsoft.AspNetCore.Routing;
using Microsoft.AspNetCore.Routing.Patterns;
using Microsoft.Extensions.DependencyInjection;
using Practice.Service.Portal;

namespace Practice.E2E.Tests.Attacks;

/// <summary>The addresses that bear a key, read off the running application: a new one is attacked without anybody thinking of it.</summary>
internal static class Addresses
{
    /// <summary>
    /// Papers, tables, calendars and exports of the practice. Its pages tell nothing to a plain request: what they show comes
    /// through the circuit, out of the tasks.
    /// </summary>
    public static RoutePattern[] OfTheDesk(IServiceProvider services) =>
        [
            .. All(services)
                .Where(r =>
                    !IsOfThePhone(r)
                    && r.Parameters.Any(p =>
                        p.ParameterPolicies.Any(policy => policy.Content == "guid")
                    )
                ),
        ];

    /// <summary>What lies below a phone link.</summary>
    public static RoutePattern[] OfThePhone(IServiceProvider services) =>
        [.. All(services).Where(r => IsOfThePhone(r) && r.Parameters.Count > 0)];

    public static string With(this RoutePattern route, Func<string, string> value) =>
        "/"
        + string.Join(
            '/',
            route.PathSegments.Select(segment =>
                string.Concat(
                    segment.Parts.Select(part =>
                        part switch
                        {
                            RoutePatternLiteralPart literal => literal.Content,
                            RoutePatternSeparatorPart separator => separator.Content,
                            RoutePatternParameterPart parameter => value(parameter.Name),
                            _ => "",
                        }
                    )
                )
            )
        );

    private static IEnumerable<RoutePattern> All(IServiceProvider services) =>
        services
            .GetRequiredService<EndpointDataSource>()
            .Endpoints.OfType<RouteEndpoint>()
            .Where(e => e.Metadata.GetMetadata<ComponentTypeMetadata>() is null)
            .Select(e => e.RoutePattern)
            .DistinctBy(r => r.RawText);

    private static bool IsOfThePhone(RoutePattern route) =>
        route.RawText!.StartsWith($"{PhonePaths.Root}/", StringComparison.Ordinal);
}
