using System.Globalization;
using System.Text.Json;
using Microsoft.Playwright;
using Practice.E2E.Tests.Browsing;
using static Microsoft.Playwright.Assertions;

namespace Practice.E2E.Tests.Courses;

/// <summary>The race card on the client's phone.</summary>
public sealed class CardOnPhone(Visit visit)
{
    private const string Reading = """
        () => {
            const said = (e) => (e?.textContent ?? "").replaceAll("\u00a0", " ").replace(/\s+/g, " ").trim();
            return JSON.stringify([...document.querySelectorAll("li[data-km]")].map((step) => ({
                Km: Number(step.dataset.place.replace(" km", "")),
                Clock: said(step.querySelector("time")),
                Take: said(step.querySelector(".take")),
            })));
        }
        """;

    private IPage Page => visit.Page;

    /// <summary>Opens the link once with signal, waits until the card is kept, and loses the signal for good.</summary>
    public async Task VisitOnceAndLoseSignal(string address)
    {
        await Page.GotoAsync(address);
        var kept = new Uri(address).AbsolutePath + "/race";
        while (!await Page.EvaluateAsync<bool>("async path => !!(await caches.match(path))", kept))
            await Task.Delay(250, TestContext.Current.CancellationToken);
        await Page.Context.SetOfflineAsync(true);
    }

    public async Task Open()
    {
        await Page.GetByRole(AriaRole.Link, new() { Name = "Race card" }).TapAsync();
        await Expect(Page.GetByRole(AriaRole.Heading, new() { Name = "Race card" }))
            .ToBeVisibleAsync();
    }

    public async Task<IReadOnlyList<StopOnCourse>> Read() =>
        JsonSerializer.Deserialize<IReadOnlyList<StopOnCourse>>(
            await Page.EvaluateAsync<string>(Reading)
        )!;

    /// <summary>The clock alone says that this is next.</summary>
    public async Task SaysNextByClock(StopOnCourse stop)
    {
        ArgumentNullException.ThrowIfNull(stop);
        await Expect(Page.Locator("#by-clock"))
            .ToHaveTextAsync($"{stop.Clock}, {stop.Place}: {stop.Take}");
        await MarksAsNext(stop);
    }

    /// <summary>Ten metres before a stop, by the kilometre typed, that stop is next.</summary>
    public async Task SaysNextByPlace(StopOnCourse stop)
    {
        ArgumentNullException.ThrowIfNull(stop);
        await Page.GetByLabel("I am at kilometre")
            .FillAsync((stop.Km - 0.01m).ToString(CultureInfo.InvariantCulture));
        await Expect(Page.Locator("#by-place")).ToHaveTextAsync($"{stop.Place}: {stop.Take}");
        await MarksAsNext(stop);
    }

    private Task MarksAsNext(StopOnCourse stop) =>
        Expect(Page.Locator("li[aria-current=step]"))
            .ToHaveAttributeAsync("data-place", stop.Place);
}
