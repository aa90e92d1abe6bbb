using Practice.Benchmarks;
using Practice.Domain.Clients;
using Practice.Domain.Foods;
using Practice.Domain.Plans;
using Practice.Domain.Screening;
using Practice.Domain.Targets;
using Practice.Planner;
using Practice.Planner.Search;

namespace Practice.Domain.Tests.Planner;

/// <summary>A client of 70 kg at 9 g/kg with the eve alone to fill, and menus for it that tests may share.</summary>
internal static class Sample
{
    private static readonly Lazy<MenuRequest> FilledOnce = new(() => Filled(Eve()));

    public static MenuPlanner Planner { get; } = new();

    /// <summary>The eve, still empty.</summary>
    public static MenuRequest Eve(
        Diet? diet = null,
        Adjustments? adjustments = null,
        Tastes? tastes = null
    )
    {
        var request = GeneratedClients.Request(
            70,
            new LoadingChoices { CarbohydrateGPerKg = 9, WindowHours = 32 },
            diet,
            adjustments,
            tastes
        );
        return request with { Days = [request.Days[^1]] };
    }

    /// <summary>The eve with a menu that keeps its limits.</summary>
    public static MenuRequest FilledEve => FilledOnce.Value;

    /// <summary>A request with a menu on its days, improved only a little, to save time.</summary>
    public static MenuRequest Filled(MenuRequest request) =>
        request with
        {
            Days = Quick(request).Days,
        };

    public static MenuResult Quick(MenuRequest request) =>
        MenuBuild.Of(
            request,
            null,
            CancellationToken.None,
            solves: request.Days.Sum(d => d.Occasions.Length) / 2
        );

    /// <summary>The request with one plate of its first day changed.</summary>
    public static MenuRequest With(
        this MenuRequest request,
        OccasionKind kind,
        Func<Occasion, Occasion> change
    ) =>
        request with
        {
            Days = request.Days.SetItem(0, request.Days[0].With(change(request.Days[0][kind]))),
        };
}
