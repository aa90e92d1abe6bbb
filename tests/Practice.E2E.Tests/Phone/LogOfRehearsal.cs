using System.Text.RegularExpressions;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Practice.E2E.Tests.Phone;

/// <summary>The page of a rehearsal under a thumb.</summary>
internal sealed class LogOfRehearsal(IPage page)
{
    public ILocator State => page.Locator("#state");

    /// <summary>Only today stands open; the other days are opened with a tap.</summary>
    public async Task AllOfEveryDay()
    {
        foreach (var day in await page.Locator("details.day").AllAsync())
        {
            if (await day.GetAttributeAsync("open") is null)
                await day.Locator("summary").TapAsync();
            await day.GetByRole(
                    AriaRole.Button,
                    new() { Name = "I ate all of this day as planned" }
                )
                .TapAsync();
        }
    }

    public Task NothingFelt() =>
        page.GetByRole(AriaRole.Button, new() { Name = "Nothing at all, at any time" }).TapAsync();

    public Task Choose(string group, string choice) =>
        Choose(page.GetByRole(AriaRole.Group, new() { NameRegex = Starting(group) }).First, choice);

    public static Task Choose(ILocator within, string choice) =>
        within.GetByRole(AriaRole.Radio, new() { Name = choice, Exact = true }).First.TapAsync();

    /// <summary>The first sitting of the day that stands open.</summary>
    public ILocator FirstMeal => page.Locator("details[open] > .meal").First;

    public Task Type(string label, string value) =>
        page.GetByRole(AriaRole.Textbox, new() { NameRegex = Starting(label) }).FillAsync(value);

    public Task Tick(string label) => page.GetByLabel(label, new() { Exact = true }).CheckAsync();

    public Task Send() => page.GetByRole(AriaRole.Button, new() { Name = "Send" }).TapAsync();

    public Task Says(string state) => Expect(State).ToHaveTextAsync(state);

    /// <summary>Waits until the page can open without signal: its worker holds it.</summary>
    public async Task IsKept(string? address = null) =>
        await page.EvaluateAsync(
            """
            async address => {
                const isKept = async () =>
                    navigator.serviceWorker.controller
                    && await caches.match(address ?? location.pathname) !== undefined;
                for (let left = 300; left > 0; left--) {
                    if (await isKept()) return;
                    await new Promise(resolve => setTimeout(resolve, 100));
                }
                throw new Error("The page was not kept.");
            }
            """,
            address
        );

    private static Regex Starting(string words) => new("^" + Regex.Escape(words));
}
