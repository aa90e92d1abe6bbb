using System.Globalization;
using Microsoft.Playwright;
using Practice.E2E.Tests.Browsing;
using static Microsoft.Playwright.Assertions;

namespace Practice.E2E.Tests.MainJob;

/// <summary>What is done for a client before there is a plan.</summary>
public sealed class CareTaking(Visit visit)
{
    private IPage Page => visit.Page;

    /// <summary>Fills in a new client and lands on the screening.</summary>
    public async Task TakeIntoCare(string givenName, string familyName, string massKg)
    {
        await visit.Go("/clients");
        await visit.Follow(
            Page.GetByRole(AriaRole.Link, new() { Name = "Add a client" }).First,
            "New client"
        );
        await Fill("Given name", givenName);
        await Fill("Family name", familyName);
        await Fill("Born", "1991-04-17");
        await Page.GetByLabel("Sex, as the formulas use it").SelectOptionAsync("Female");
        await Fill("Height, cm", "168");
        await Fill("Body mass, kg", massKg);
        await Fill("Runs a week, km", "55");
        await Fill("Recent race, km", "21.0975");
        await Fill("Its time", "1:44:30");
        await visit.Follow(
            Page.GetByRole(AriaRole.Button, new() { Name = "Take into care" }),
            $"{givenName} {familyName}"
        );
    }

    /// <summary>Answers one question, and nothing to report on all others.</summary>
    public async Task Screen(string question, string answer)
    {
        await Page.GetByRole(AriaRole.Group, new() { Name = question })
            .GetByLabel(answer, new() { Exact = true })
            .CheckAsync();
        await Page.GetByRole(AriaRole.Button, new() { Name = "Nothing else to report" })
            .ClickAsync();
        await Expect(Page.GetByText("All questions are answered.")).ToBeVisibleAsync();
        await Page.GetByRole(AriaRole.Button, new() { Name = "Save the answers" }).ClickAsync();
        await Expect(Page.GetByText("Last gone through on")).ToBeVisibleAsync();
    }

    /// <summary>Enters a marathon from the client's file and lands on it.</summary>
    public async Task EnterMarathon(string race, DateTime start, string goal)
    {
        await Page.GetByRole(AriaRole.Link, new() { Name = "File", Exact = true }).ClickAsync();
        await visit.Follow(
            Page.GetByRole(AriaRole.Link, new() { Name = "Enter a race" }),
            "Enter a race"
        );
        await Page.GetByLabel("Race", new() { Exact = true }).FillAsync(race);
        await Fill("Distance, km", "42.195");
        await Page.GetByLabel("Day", new() { Exact = true })
            .FillAsync(start.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture));
        await Fill(
            "Start, the race's clock",
            start.ToString("HH:mm", CultureInfo.InvariantCulture)
        );
        await Fill("Goal time", goal);
        await visit.Follow(
            Page.GetByRole(AriaRole.Button, new() { Name = "Enter the race" }),
            race
        );
    }

    private Task Fill(string label, string value) => Page.GetByLabel(label).FillAsync(value);
}
