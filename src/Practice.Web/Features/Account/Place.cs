namespace Practice.Web.Features.Account;

/// <summary>Where somebody wants to go once she is in.</summary>
internal static class Place
{
    /// <summary>Never leads off this site, whatever the address says.</summary>
    public static string OnThisSite(string? destination) =>
        destination is ['/', not ('/' or '\\'), ..] ? destination : "/";
}
