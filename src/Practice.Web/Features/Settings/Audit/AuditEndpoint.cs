using NodaTime;
using Practice.Service.Audit;
using Practice.Service.Desks;

namespace Practice.Web.Features.Settings.Audit;

/// <summary>The audit as a file to download.</summary>
internal static class AuditEndpoint
{
    public const string Address = "/practice/audit.csv";

    public static void MapAudit(this IEndpointRouteBuilder app) =>
        app.MapGet(
            Address,
            async (
                Guid? who,
                string? what,
                Guid? about,
                DateOnly? first,
                DateOnly? last,
                ReadAudit audit,
                HttpContext http
            ) =>
                http.Desk() is { MayRunPractice: true } desk
                    ? Results.File(
                        await audit.Export(
                            desk,
                            new AuditQuestion(
                                who,
                                string.IsNullOrEmpty(what) ? null : what,
                                about,
                                Day(first),
                                Day(last)
                            ),
                            http.RequestAborted
                        ),
                        "text/csv; charset=utf-8",
                        "audit.csv"
                    )
                    : Results.NotFound()
        );

    private static LocalDate? Day(DateOnly? day) =>
        day is { } given ? LocalDate.FromDateOnly(given) : null;
}
