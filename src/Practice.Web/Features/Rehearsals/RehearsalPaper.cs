using System.Security.Claims;
using Practice.Domain.Practices;
using Practice.Service.Desks;
using Practice.Service.Plans;
using Practice.Service.Rehearsals;

namespace Practice.Web.Features.Rehearsals;

/// <summary>A rehearsal's papers as files to download.</summary>
internal static class RehearsalPaper
{
    public static string Sheet(Guid rehearsalId, bool numberFree = false) =>
        $"/rehearsals/{rehearsalId}/sheet{(numberFree ? "?numberFree=true" : "")}";

    public static string Report(Guid rehearsalId) => $"/rehearsals/{rehearsalId}/report";

    public static void MapRehearsalPapers(this IEndpointRouteBuilder app)
    {
        app.MapGet(
            "/rehearsals/{id:guid}/sheet",
            async (
                Guid id,
                PaperSize? paper,
                bool? numberFree,
                HttpRequest request,
                ClaimsPrincipal user,
                PrintRehearsal print,
                CancellationToken cancel
            ) =>
                File(
                    user.Desk() is { } desk
                        ? await print.Sheet(
                            desk,
                            id,
                            new Uri($"{request.Scheme}://{request.Host}"),
                            numberFree ?? false,
                            paper,
                            cancel
                        )
                        : null
                )
        );
        app.MapGet(
            "/rehearsals/{id:guid}/report",
            async (
                Guid id,
                PaperSize? paper,
                ClaimsPrincipal user,
                PrintRehearsal print,
                CancellationToken cancel
            ) => File(user.Desk() is { } desk ? await print.Report(desk, id, paper, cancel) : null)
        );
    }

    private static IResult File(PrintedPlan? printed) =>
        printed is null
            ? Results.NotFound()
            : Results.File(printed.Pdf, "application/pdf", printed.FileName);
}
