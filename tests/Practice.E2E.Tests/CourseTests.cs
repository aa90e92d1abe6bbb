using Microsoft.Playwright;
using Practice.E2E.Tests.Browsing;
using Practice.E2E.Tests.Courses;
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
        var course = new CourseOnScreen(visit);
        await care.TakeIntoCare("Linnea", "Ashgrove", "64");
        await care.Screen("Do you have coeliac disease?", "Yes");
        await care.EnterMarathon(
            "Lakeside Marathon",
            DateTime.Today.AddDays(24).AddHours(9),
            "3:30:00"
        );
        await course.Open();

        await course.Upload("broken.gpx", "<gpx><trk><trkseg><trkpt lat='1'");
        await Expect(page.GetByRole(AriaRole.Alert).Filter(new() { HasText = "well-formed" }))
            .ToBeVisibleAsync();
        await course.UploadLakeside();
        await course.SetOutStations();
        await course.PlanSteps();

        await AddAndDrag(page);
        await course.Saved();
        await course.PutInPlan.ClickAsync();
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
}
