using System.IO.Compression;
using System.Text;
using System.Text.Json;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using Practice.E2E.Tests.Browsing;
using Practice.E2E.Tests.MainJob;
using static Microsoft.Playwright.Assertions;
using static Practice.E2E.Tests.People.Owner;

namespace Practice.E2E.Tests.People;

/// <summary>What is kept of a client: handed over as one file, kept where it must be, and erased for good.</summary>
public sealed class ClientDataTests(FreshApp app) : IClassFixture<FreshApp>
{
    private const string GivenName = "Tilda";
    private const string FamilyName = "Eschenbach";
    private const string Name = $"{GivenName} {FamilyName}";
    private const string Race = "Eschenbach Autumn Marathon";
    private const string Address = "tilda@example.org";

    [Fact]
    public async Task Everything_of_a_client_is_exported_kept_by_law_and_at_last_erased_without_a_trace_of_her_name()
    {
        await using var owner = await Comes(app, Look.Desktop);
        var client = await IssuePlan(owner);
        await Write(owner, client);

        var export = await Export(owner, client);
        IsHers(export);

        await KeepByLaw(owner);
        await Erase(owner, client);
        await NamesNobody(owner);
    }

    /// <summary>Takes a client into care and issues a plan for her race.</summary>
    /// <returns>Where her page is.</returns>
    private static async Task<string> IssuePlan(Visit owner)
    {
        var page = owner.Page;
        var care = new CareTaking(owner);
        await care.TakeIntoCare(GivenName, FamilyName, "58.5");
        var client = new Uri(page.Url).AbsolutePath.Replace(
            "/screening",
            "",
            StringComparison.Ordinal
        );
        await care.Screen("Do you have coeliac disease?", "Yes");
        await care.EnterMarathon(Race, DateTime.Today.AddDays(20).AddHours(9), "4:00:00");
        await page.GetByRole(AriaRole.Button, new() { Name = "Build plan" }).ClickAsync();
        var bench = new Workbench(page);
        await bench.Appears();
        await bench.Issue("Olive Owner");
        return client;
    }

    /// <summary>Records address and consent, and writes her a letter.</summary>
    private static async Task Write(Visit owner, string client)
    {
        var page = owner.Page;
        await owner.Go($"{client}/details");
        await page.GetByLabel("E-mail").FillAsync(Address);
        await owner.Follow(page.GetByRole(AriaRole.Button, new() { Name = "Save" }), Name);
        await owner.Go(client);
        await page.GetByRole(AriaRole.Button, new() { Name = "Record consent" }).ClickAsync();
        await Expect(page.GetByText("Recorded by Olive Owner")).ToBeVisibleAsync();
        await owner.Follow(page.GetByRole(AriaRole.Link, new() { Name = Race }), Race);
        await page.GetByRole(AriaRole.Button, new() { Name = $"Send {GivenName} a link" })
            .ClickAsync();
        await Expect(page.GetByText("not opened yet")).ToBeVisibleAsync();
    }

    private static async Task<Dictionary<string, byte[]>> Export(Visit owner, string client)
    {
        var page = owner.Page;
        await owner.Go(client);
        Assert.Empty((await page.RunAxe()).Violations);
        var download = await page.RunAndWaitForDownloadAsync(() =>
            page.GetByRole(AriaRole.Link, new() { Name = "Export all data" }).ClickAsync()
        );
        await using var file = File.OpenRead(await download.PathAsync());
        await using var zip = new ZipArchive(file, ZipArchiveMode.Read);
        var export = new Dictionary<string, byte[]>();
        foreach (var entry in zip.Entries)
        {
            await using var content = await entry.OpenAsync();
            using var bytes = new MemoryStream();
            await content.CopyToAsync(bytes);
            export[entry.FullName] = bytes.ToArray();
        }
        return export;
    }

    private static void IsHers(Dictionary<string, byte[]> export)
    {
        using var facts = JsonDocument.Parse(export["client.json"]);
        var root = facts.RootElement;
        Assert.Equal(GivenName, root.GetProperty("givenName").GetString());
        Assert.Equal(Address, root.GetProperty("email").GetString());
        Assert.Single(root.GetProperty("consents").EnumerateArray());
        var race = Assert.Single(root.GetProperty("races").EnumerateArray());
        Assert.Single(race.GetProperty("plans").EnumerateArray());

        Assert.Contains("58.5", Table("body-mass.csv")[1], StringComparison.Ordinal);
        var letter = Table("letters.csv")[1];
        Assert.Contains(Address, letter, StringComparison.Ordinal);
        Assert.Contains("PhoneLink", letter, StringComparison.Ordinal);
        Assert.Contains(
            Table("who-did-what.csv"),
            l => l.Contains("client-exported", StringComparison.Ordinal)
        );

        var papers = export
            .Keys.Where(name => name.EndsWith(".pdf", StringComparison.Ordinal))
            .ToList();
        var paper = PlanOnPaper.Read(export[Assert.Single(papers)]);
        paper.Names(Name);
        paper.Names(Race);

        string[] Table(string name) =>
            Encoding
                .UTF8.GetString(export[name])
                .Split('\n', StringSplitOptions.RemoveEmptyEntries);
    }

    private static async Task KeepByLaw(Visit owner)
    {
        var page = owner.Page;
        await page.GetByRole(AriaRole.Button, new() { Name = "Must be kept" }).ClickAsync();
        Assert.Empty((await page.RunAxe()).Violations);
        await page.GetByLabel("Why the record must be kept").FillAsync("A claim is open.");
        await page.GetByRole(AriaRole.Button, new() { Name = "Keep the record" }).ClickAsync();
        await Expect(page.GetByText("A claim is open.")).ToBeVisibleAsync();
        await Expect(page.GetByRole(AriaRole.Button, new() { Name = "Erase…" }))
            .ToHaveCountAsync(0);
        await page.GetByRole(AriaRole.Button, new() { Name = "It may be erased again" })
            .ClickAsync();
    }

    private static async Task Erase(Visit owner, string client)
    {
        var page = owner.Page;
        await page.GetByRole(AriaRole.Button, new() { Name = "Erase…" }).ClickAsync();
        var forGood = page.GetByRole(AriaRole.Button, new() { Name = "Erase for good" });
        var typed = page.GetByLabel("to erase the client");
        await typed.FillAsync("Tilda Eschenbah");
        await Expect(forGood).ToBeDisabledAsync();
        await typed.FillAsync(Name);
        await Expect(forGood).ToBeEnabledAsync();
        Assert.Empty((await page.RunAxe()).Violations);
        await owner.Follow(forGood, "Clients");
        await Expect(page.GetByText(FamilyName)).ToHaveCountAsync(0);

        Assert.Empty(owner.Faults);
        await owner.Go(client);
        await Expect(Heading(page, "There is no such page")).ToBeVisibleAsync();
    }

    /// <summary>The audit says what was done, and to nobody any more: on the screen and in its own export.</summary>
    private static async Task NamesNobody(Visit owner)
    {
        var page = owner.Page;
        await owner.Go("/practice/audit");
        await Expect(page.GetByText("Client erased", new() { Exact = true })).ToBeVisibleAsync();
        await Expect(page.GetByText("Plan issued", new() { Exact = true }).Last).ToBeVisibleAsync();
        foreach (var trace in new[] { GivenName, FamilyName, Address, Race })
            await Expect(page.Locator(".lines").GetByText(trace)).ToHaveCountAsync(0);

        var download = await page.RunAndWaitForDownloadAsync(() =>
            page.GetByRole(AriaRole.Link, new() { Name = "Export as CSV" }).ClickAsync()
        );
        var lines = await File.ReadAllTextAsync(await download.PathAsync());
        Assert.Contains("client-erased", lines, StringComparison.Ordinal);
        foreach (var trace in new[] { GivenName, FamilyName, Address, Race })
            Assert.DoesNotContain(trace, lines, StringComparison.Ordinal);
    }
}
