using System.Data.Common;

namespace Practice.Web.Parts.Saving;

/// <summary>Tells a database that is away from everything else that can go wrong.</summary>
internal static class Outage
{
    public const string Words =
        "The database cannot be reached just now. Nothing is lost: what you typed is still here. Send it again in a moment.";

    /// <summary>Whether something failed only because the database is away or too slow: it may work the next time.</summary>
    public static bool IsBehind(Exception failure) =>
        failure is DbException { IsTransient: true } or TimeoutException
        || failure.InnerException is { } cause && IsBehind(cause);
}
