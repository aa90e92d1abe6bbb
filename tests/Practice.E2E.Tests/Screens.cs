using Microsoft.Playwright;
using Practice.E2E.Tests.Browsing;

namespace Practice.E2E.Tests;

/// <summary>Where the screens of one client of the demo practice are.</summary>
public sealed record ClientPlaces(string Client, string Race, string Plan, string Rehearsal)
{
    private const int Tries = 60;

    /// <summary>Looks them up as she would; her plan may still be in the making.</summary>
    public static async Task<ClientPlaces> Of(Visit visit, string name)
    {
        ArgumentNullException.ThrowIfNull(visit);
        var page = visit.Page;
        await visit.Go("/clients");
        var client = await Address(page.GetByRole(AriaRole.Link, new() { Name = name }));
        await visit.Go(client);
        var races = page.GetByRole(AriaRole.Region, new() { Name = "Races" });
        var race = await Address(races.GetByRole(AriaRole.Link));
        await visit.Go(race);
        var plan = page.GetByRole(AriaRole.Link, new() { Name = "Open version" });
        for (var left = Tries; left > 0 && await plan.CountAsync() == 0; left--)
        {
            await Task.Delay(TimeSpan.FromSeconds(2), TestContext.Current.CancellationToken);
            await visit.Go(race);
        }
        var rehearsals = page.GetByRole(AriaRole.Region, new() { Name = "Rehearsals" });
        await rehearsals.WaitForAsync();
        var rehearsal = rehearsals.Locator(".standing a");
        return new ClientPlaces(
            client,
            race,
            await Address(plan),
            await rehearsal.CountAsync() > 0 ? await Address(rehearsal.First) : "/"
        );
    }

    private static async Task<string> Address(ILocator link) =>
        await link.GetAttributeAsync("href")
        ?? throw new InvalidOperationException("A link without an address.");
}

/// <summary>The screens, by the name they have in the documentation.</summary>
public static class Screens
{
    /// <summary>A client of the demo practice with a plan in the making: coeliac disease, a race next weekend.</summary>
    public const string DemoClient = "Owen Tregarth";

    /// <summary>The demo's plans are made one after the other: when hers is there, nobody works on the one before.</summary>
    public const string NextDemoClient = "Bethan Morcroft";

    private static readonly Dictionary<string, Func<ClientPlaces, string>> Addresses = new()
    {
        ["today"] = _ => "/",
        ["clients"] = _ => "/clients",
        ["new-client"] = _ => "/clients/new",
        ["client"] = at => at.Client,
        ["screening"] = at => $"{at.Client}/screening",
        ["details"] = at => $"{at.Client}/details",
        ["new-race"] = at => $"{at.Client}/races/new",
        ["race"] = at => at.Race,
        ["course"] = at => $"{at.Race}/course",
        ["workbench"] = at => at.Plan,
        ["race-week"] = at => $"{at.Plan}/week",
        ["debrief"] = at => $"{at.Race}/debrief",
        ["rehearsal"] = at => at.Rehearsal,
        ["foods"] = _ => "/foods",
        ["our-foods"] = _ => "/foods/ours",
        ["new-food"] = _ => "/foods/ours/new",
        ["measures"] = _ => "/foods/measures",
        ["import-foods"] = _ => "/foods/import",
        ["import-clients"] = _ => "/clients/import",
        ["practice"] = _ => "/practice",
        ["team"] = _ => "/practice/team",
        ["face"] = _ => "/practice/brand",
        ["defaults"] = _ => "/practice/defaults",
        ["texts"] = _ => "/practice/texts",
        ["account"] = _ => "/account",
        ["mail"] = _ => "/practice/mail",
        ["audit"] = _ => "/practice/audit",
    };

    /// <summary>Those behind the sign-in.</summary>
    public static IEnumerable<string> Inside => Addresses.Keys;

    public static string Address(string screen, ClientPlaces places) => Addresses[screen](places);
}
