using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Routing;

namespace Practice.Web.Shell;

/// <summary>A link of the menu that is marked on every page of its part of the house: a race belongs to a client.</summary>
public sealed class PlaceLink : NavLink
{
    /// <summary>Beginnings of addresses that belong to the place without beginning like it.</summary>
    [Parameter]
    public IReadOnlyList<string> Holds { get; set; } = [];

    [Inject]
    private NavigationManager Navigation { get; set; } = null!;

    /// <inheritdoc />
    protected override bool ShouldMatch(string uriAbsolute) =>
        base.ShouldMatch(uriAbsolute)
        || Holds.Any(start =>
            uriAbsolute.StartsWith(Navigation.BaseUri + start, StringComparison.Ordinal)
        );
}
