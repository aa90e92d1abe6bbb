using Practice.Service.Desks;
using Practice.Service.Privacy;

namespace Practice.Web.Features.Clients.Privacy;

/// <summary>All that is kept of a client as a file to download.</summary>
internal static class ExportEndpoint
{
    public static string Address(Guid client) => $"/clients/{client}/export.zip";

    public static void MapClientExport(this IEndpointRouteBuilder app) =>
        app.MapGet(
            "/clients/{client:guid}/export.zip",
            async (Guid client, ExportClient export, HttpContext http) =>
                http.Desk() is { MayDecide: true } desk
                && await export.Run(desk, client, http.RequestAborted) is { } file
                    ? Results.File(file.Zip, "application/zip", file.FileName)
                    : Results.NotFound()
        );
}
