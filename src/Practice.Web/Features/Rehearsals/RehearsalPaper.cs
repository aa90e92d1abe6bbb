namespace Practice.Web.Features.Rehearsals;

/// <summary>Addresses of a rehearsal's papers.</summary>
internal static class RehearsalPaper
{
    public static string Sheet(Guid rehearsalId) => $"/rehearsals/{rehearsalId}/sheet";

    public static string Report(Guid rehearsalId) => $"/rehearsals/{rehearsalId}/report";
}
