using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Practice.E2E.Tests.Rehearsals;

/// <summary>The client's phone pages under a thumb.</summary>
internal sealed class PhoneOfClient(IPage page)
{
    /// <summary>Opens the private link and goes on to the rehearsal.</summary>
    public async Task Open(string address)
    {
        await page.GotoAsync(address);
        await page.GetByRole(AriaRole.Link, new() { Name = "Log this rehearsal" }).TapAsync();
        await Expect(page.GetByRole(AriaRole.Heading, new() { Name = "Your rehearsal" }))
            .ToBeVisibleAsync();
    }

    /// <summary>Two foods of the menu that no other food's name holds.</summary>
    public async Task<(string First, string Second)> TwoFoods()
    {
        var names = await page.Locator(".food")
            .EvaluateAllAsync<string[]>(
                "foods => [...new Set(foods.map(f => f.firstChild.textContent.trim()))]"
            );
        var plain = names
            .Where(n => names.Count(o => o.Contains(n, StringComparison.OrdinalIgnoreCase)) == 1)
            .OrderBy(n => n.Length)
            .ToList();
        return (plain[0], plain[1]);
    }

    public Task LoseSignal() => page.Context.SetOfflineAsync(true);

    public Task FindSignal() => page.Context.SetOfflineAsync(false);

    public async Task AteEverything()
    {
        foreach (
            var all in await page.GetByRole(
                    AriaRole.Button,
                    new() { Name = "I ate all of this day as planned" }
                )
                .AllAsync()
        )
            await all.TapAsync();
    }

    /// <summary>One symptom on the run.</summary>
    public async Task Felt(string symptom, int score)
    {
        var run = page.GetByRole(AriaRole.Group, new() { Name = "On the run" });
        await run.GetByRole(AriaRole.Radio, new() { Name = "Something" }).CheckAsync();
        await run.Locator("label.scale")
            .Filter(new() { HasText = symptom })
            .GetByRole(AriaRole.Slider)
            .EvaluateAsync(
                "(scale, score) => { scale.value = score; scale.dispatchEvent(new Event('input', { bubbles: true })); }",
                score
            );
    }

    public Task Send() =>
        page.GetByRole(AriaRole.Button, new() { Name = "Send", Exact = true }).TapAsync();

    public Task Says(string words) => Expect(page.Locator("#state")).ToHaveTextAsync(words);
}
