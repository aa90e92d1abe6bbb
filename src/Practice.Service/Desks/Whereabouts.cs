using Microsoft.AspNetCore.Http;

namespace Practice.Service.Desks;

/// <summary>From where somebody acts: network address and kind of browser, no more than a reader of the audit can use.</summary>
public static class Whereabouts
{
    private static readonly (string Mark, string Name)[] Browsers =
    [
        ("Edg/", "Edge"),
        ("OPR/", "Opera"),
        ("Firefox/", "Firefox"),
        ("Chrome/", "Chrome"),
        ("Safari/", "Safari"),
    ];

    private static readonly (string Mark, string Name)[] Systems =
    [
        ("Android", "Android"),
        ("iPhone", "iPhone"),
        ("iPad", "iPad"),
        ("Windows", "Windows"),
        ("Mac OS", "macOS"),
        ("Linux", "Linux"),
    ];

    /// <summary>203.0.113.7, Firefox on Windows</summary>
    public static string Of(HttpContext http)
    {
        ArgumentNullException.ThrowIfNull(http);
        var address = http.Connection.RemoteIpAddress;
        if (address?.IsIPv4MappedToIPv6 == true)
            address = address.MapToIPv4();
        return $"{address?.ToString() ?? "unknown address"}, {Browser(http.Request.Headers.UserAgent.ToString())}";
    }

    private static string Browser(string agent)
    {
        var browser = Find(Browsers, agent) ?? "another program";
        return Find(Systems, agent) is { } system ? $"{browser} on {system}" : browser;
    }

    private static string? Find((string Mark, string Name)[] known, string agent) =>
        known.FirstOrDefault(k => agent.Contains(k.Mark, StringComparison.Ordinal)).Name;
}
