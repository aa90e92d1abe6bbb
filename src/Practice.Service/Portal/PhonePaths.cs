namespace Practice.Service.Portal;

/// <summary>Where the phone pages are, below the root of the site.</summary>
public static class PhonePaths
{
    /// <summary>All of them lie under it.</summary>
    public const string Root = "/p";

    /// <summary>The pages of a link.</summary>
    public static string Home(string secret) => $"{Root}/{secret}";
}
