using System.Globalization;
using System.Text;
using Microsoft.Playwright;
using Practice.E2E.Tests.Browsing;
using Practice.E2E.Tests.MainJob;
using static Microsoft.Playwright.Assertions;

namespace Practice.E2E.Tests;

/// <summary>The course of a race, from the organiser's file to the steps in the plan.</summary>
[Collection(AppCollection.Name)]
public sealed class CourseTests(AppFixture app)
{
    [Fact]
    public async Task From_a_GPX_file_to_steps_that_can_be_dragged_and_put_in_the_plan()
    {
        await using var visit = await app.Practitioner(Look.Desktop);
        var page = visit.Page;
        var care = new CareTaking(visit);
        await care.TakeIntoCare("Linnea", "Ashgrove", "64");
        await care.Screen("Do you have coeliac disease?", "Yes");
        await care.EnterMarathon(
            "Lakeside Marathon",
            DateTime.Today.AddDays(24).AddHours(9),
            "3:30:00"
        );
        await visit.Follow(
            page.GetByRole(AriaRole.Link, new() { Name = "Course", Exact = true }),
            "Course"
        );

        await Upload(page, "broken.gpx", "<gpx><trk><trkseg><trkpt lat='1'");
        await Expect(page.GetByRole(AriaRole.Alert).Filter(new() { HasText = "well-formed" }))
            .ToBeVisibleAsync();
        await Upload(page, "lake.gpx", Gpx());
        await Expect(page.GetByRole(AriaRole.Toolbar, new() { Name = "Course" }))
            .ToBeVisibleAsync();

        await page.GetByRole(AriaRole.Link, new() { Name = "Stations" }).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Set out" }).ClickAsync();
        await Expect(page.GetByLabel("Place of station 8, km")).ToHaveValueAsync("40");
        await page.GetByRole(AriaRole.Link, new() { Name = "Plan", Exact = true }).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Plan the steps" }).ClickAsync();
        var put = page.GetByRole(AriaRole.Button, new() { Name = "Put in the plan" });
        await Expect(put).ToBeEnabledAsync();
        await Expect(page.GetByText("Not to be issued")).ToHaveCountAsync(0);

        await AddAndDrag(page);
        await Expect(page.GetByRole(AriaRole.Status).Filter(new() { HasText = "Saved" }))
            .ToBeVisibleAsync();
        await put.ClickAsync();
        await Expect(page.GetByRole(AriaRole.Alert).Filter(new() { HasText = "no open draft" }))
            .ToBeVisibleAsync();

        await page.ReloadAsync();
        await visit.Settle();
        await Expect(page.Locator(".step.locked")).ToHaveCountAsync(1);
        Assert.Empty(visit.Faults);
    }

    /// <summary>A gel put at 20 km, dragged to 30 km with the mouse, and a hundred metres on with a key.</summary>
    private static async Task AddAndDrag(IPage page)
    {
        await page.GetByLabel("Add", new() { Exact = true }).SelectOptionAsync("gel-isotonic");
        await page.GetByLabel("at km").FillAsync("20");
        await page.GetByRole(AriaRole.Button, new() { Name = "Add", Exact = true }).ClickAsync();
        var mark = page.Locator(".step.locked");
        await Expect(mark).ToHaveAttributeAsync("data-step-km", "20");

        var ground =
            await page.Locator(".ground").BoundingBoxAsync()
            ?? throw new InvalidOperationException();
        var box = await mark.BoundingBoxAsync() ?? throw new InvalidOperationException();
        await page.Mouse.MoveAsync(box.X + box.Width / 2, box.Y + box.Height / 2);
        await page.Mouse.DownAsync();
        await page.Mouse.MoveAsync(ground.X + ground.Width * 0.5f, box.Y + 20);
        await page.Mouse.MoveAsync(ground.X + ground.Width * 30f / 42.195f, box.Y + 20);
        await page.Mouse.UpAsync();
        await Expect(mark).ToHaveAttributeAsync("data-step-km", "30");
        await mark.PressAsync("ArrowRight");
        await Expect(mark).ToHaveAttributeAsync("data-step-km", "30.1");
    }

    private static Task Upload(IPage page, string name, string text) =>
        page.Locator("input[type=file]")
            .SetInputFilesAsync(
                new FilePayload
                {
                    Name = name,
                    MimeType = "application/gpx+xml",
                    Buffer = Encoding.UTF8.GetBytes(text),
                }
            );

    /// <summary>An invented line of a marathon's length with one hill.</summary>
    private static string Gpx()
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
