using System.Collections.Immutable;
using Practice.Domain.Foods.Own;
using Practice.Domain.Tables;
using Practice.Service.Clients;
using Practice.Service.Desks;
using Practice.Service.Tables;

namespace Practice.Web.Features.Tables;

/// <summary>Tables to begin with, to download.</summary>
internal static class TemplateEndpoints
{
    public const string Foods = "/foods/template.csv";
    public const string Clients = "/clients/template.csv";

    public static void MapTemplates(this IEndpointRouteBuilder app)
    {
        app.MapTemplate(Foods, FoodColumns.All, "foods.csv");
        app.MapTemplate(Clients, ClientColumns.All, "clients.csv");
    }

    private static void MapTemplate(
        this IEndpointRouteBuilder app,
        string address,
        ImmutableArray<ImportColumn> columns,
        string name
    ) =>
        app.MapGet(
            address,
            (HttpContext http) =>
                http.Desk() is null
                    ? Results.NotFound()
                    : Results.File(ImportTemplates.Of(columns), "text/csv; charset=utf-8", name)
        );
}
