using Practice.Domain.Practices;
using Practice.Service.Desks;
using Practice.Service.Plans;

namespace Practice.Web.Features.Plans;

/// <summary>A plan version as a file to download.</summary>
internal static class PaperEndpoint
{
    public static string Address(
        Guid version,
        PaperSize paper,
        PaperVariant variant,
        PaperKind kind = PaperKind.Loading
    ) => $"/plans/{version}/paper?paper={paper}&variant={variant}&kind={kind}";

    public static string CalendarAddress(Guid version) => $"/plans/{version}/calendar.ics";

    public static void MapPapers(this IEndpointRouteBuilder app)
    {
        app.MapGet(
            "/plans/{version:guid}/calendar.ics",
            async (
                Guid version,
                HttpContext http,
                PlanAsCalendar calendar,
                CancellationToken cancel
            ) =>
                http.Desk() is { } desk && await calendar.Run(desk, version, cancel) is { } file
                    ? Results.File(file, "text/calendar; charset=utf-8", "race-week.ics")
                    : Results.NotFound()
        );
        app.MapGet(
            "/plans/{version:guid}/paper",
            async (
                Guid version,
                PaperSize? paper,
                PaperVariant? variant,
                PaperKind? kind,
                HttpContext http,
                PrintPlan print,
                CancellationToken cancel
            ) =>
                http.Desk() is { } desk
                && await print.Run(
                    desk,
                    version,
                    kind ?? PaperKind.Loading,
                    paper,
                    variant ?? PaperVariant.Full,
                    cancel
                )
                    is { } printed
                    ? Results.File(printed.Pdf, "application/pdf", printed.FileName)
                    : Results.NotFound()
        );
    }
}
