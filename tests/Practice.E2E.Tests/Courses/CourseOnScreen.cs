using System.Globalization;
using System.Text;
using System.Text.Json;
using Microsoft.Playwright;
using Practice.E2E.Tests.Browsing;
using static Microsoft.Playwright.Assertions;

namespace Practice.E2E.Tests.Courses;

/// <summary>What is taken at one place, as screen, paper and phone say it.</summary>
/// <param name="Km">The place.</param>
/// <param name="Clock">By the race's clock.</param>
/// <param name="Take">What, all of it.</param>
public sealed record StopOnCourse(decimal Km, string Clock, string Take)
{
    /// <summary>The place as paper and phone write it.</summary>
    public string Place => string.Create(CultureInfo.InvariantCulture, $"{Km:0.#} km");
}

/// <summary>The course page under her hands.</summary>
public sealed class CourseOnScreen(Visit visit)
{
    private const float PlanningMs = 60_000;

    private const string Reading = """
        () => {
            const said = (e) => (e?.textContent ?? "").replaceAll("\u00a0", " ").replace(/\s+/g, " ").trim();
            return JSON.stringify([...document.querySelectorAll("table.steps tbody tr")].map((row) => ({
                Km: Number(said(row.cells[0])),
                Clock: said(row.cells[1].querySelector("small")),
                Take: said(row.cells[2].firstChild),
            })));
        }
        """;

    private IPage Page => visit.Page;

    public ILocator PutInPlan => Button("Put in the plan");

    /// <summary>From the page of the race.</summary>
    public Task Open() =>
        visit.Follow(
            Page.GetByRole(AriaRole.Link, new() { Name = "Course", Exact = true }),
            "Course"
        );

    public Task Upload(string name, string text) =>
        Page.Locator("input[type=file]")
            .SetInputFilesAsync(
                new FilePayload
                {
                    Name = name,
                    MimeType = "application/gpx+xml",
                    Buffer = Encoding.UTF8.GetBytes(text),
                }
            );

    /// <summary>A file of an invented line of a marathon's length with one hill.</summary>
    public async Task UploadLakeside()
    {
        await Upload("lake.gpx", Lakeside());
        await Expect(Page.GetByRole(AriaRole.Toolbar, new() { Name = "Course" }))
            .ToBeVisibleAsync();
    }

    /// <summary>Water and a sports drink every five kilometres.</summary>
    public async Task SetOutStations()
    {
        await Page.GetByRole(AriaRole.Link, new() { Name = "Stations" }).ClickAsync();
        await Button("Set out").ClickAsync();
        await Expect(Page.GetByLabel("Place of station 8, km")).ToHaveValueAsync("40");
    }

    /// <summary>One more of the generic products in her pocket.</summary>
    public async Task Carry(string product)
    {
        await Page.GetByRole(AriaRole.Link, new() { Name = "Products" }).ClickAsync();
        var more = Page.Locator(".more");
        await more.GetByRole(AriaRole.Combobox)
            .SelectOptionAsync(new SelectOptionValue { Label = product });
        await more.GetByRole(AriaRole.Button).ClickAsync();
        await Expect(Page.GetByRole(AriaRole.Heading, new() { Name = product, Exact = true }))
            .ToBeVisibleAsync();
    }

    public async Task PlanSteps()
    {
        await Page.GetByRole(AriaRole.Link, new() { Name = "Plan", Exact = true }).ClickAsync();
        await Button("Plan the steps").ClickAsync();
        await Expect(PutInPlan).ToBeEnabledAsync(new() { Timeout = PlanningMs });
        await Expect(Page.GetByText("Not to be issued")).ToHaveCountAsync(0);
    }

    public Task Saved() =>
        Expect(Page.GetByRole(AriaRole.Status).Filter(new() { HasText = "Saved" }))
            .ToBeVisibleAsync();

    /// <summary>The schedule, one stop a place.</summary>
    public async Task<IReadOnlyList<StopOnCourse>> Read()
    {
        var rows = JsonSerializer.Deserialize<IReadOnlyList<StopOnCourse>>(
            await Page.EvaluateAsync<string>(Reading)
        )!;
        return
        [
            .. rows.GroupBy(row => (row.Km, row.Clock))
                .Select(g => new StopOnCourse(
                    g.Key.Km,
                    g.Key.Clock,
                    string.Join(", ", g.Select(row => row.Take))
                )),
        ];
    }

    private ILocator Button(string name) =>
        Page.GetByRole(AriaRole.Button, new() { Name = name, Exact = true });

    private static string Lakeside()
    {
        var body = new StringBuilder();
        for (var i = 0; i <= 844; i++)
            body.Append(
                CultureInfo.InvariantCulture,
                $"<trkpt lat=\"{54 + i * 50 / 111194.93:0.0000000}\" lon=\"-3\"><ele>{80 + 60 * Math.Sin(i / 268.0):0.0}</ele></trkpt>"
            );
        return $"<gpx version=\"1.1\" xmlns=\"http://www.topografix.com/GPX/1/1\"><trk><name>Lakeside</name><trkseg>{body}</trkseg></trk></gpx>";
    }
}
