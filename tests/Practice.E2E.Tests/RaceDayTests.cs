using System.Globalization;
using Microsoft.Playwright;
using Practice.E2E.Tests.Browsing;
using Practice.E2E.Tests.Courses;
using Practice.E2E.Tests.MainJob;
using static Microsoft.Playwright.Assertions;

namespace Practice.E2E.Tests;

/// <summary>The race day of an issued plan: the card on paper, and on a phone that was online once.</summary>
[Collection(AppCollection.Name)]
public sealed class RaceDayTests(AppFixture app)
{
    private const string Runner = "Maren Holloway";

    [Fact]
    public async Task From_a_GPX_file_to_a_card_on_paper_and_a_phone_without_signal_that_all_say_the_same()
    {
        await using var visit = await app.Practitioner(Look.Desktop);
        var start = DateTime.Today.AddDays(19).AddHours(9);
        var race = await TakeUpMarathon(visit, start);
        var plan = await BuildPlan(visit.Page);
        await visit.Go(race);
        var planned = await PutCourseInPlan(visit);
        await visit.Go(plan);
        await new Workbench(visit.Page).Issue();
        CardOnPaper.Read(await DownloadCard(visit.Page)).Says(planned);

        await visit.Go(race);
        var address = await GiveLink(visit.Page);
        await using var client = await app.Stranger(Look.Phone);
        var phone = new CardOnPhone(client);
        var third = planned[2];
        await client.Page.Clock.SetFixedTimeAsync(MinuteBefore(third, start));
        await phone.VisitOnceAndLoseSignal(address);
        await phone.Open();

        Assert.Equal(planned, await phone.Read());
        await phone.SaysNextByClock(third);
        await phone.SaysNextByPlace(planned[^2]);
        Assert.Empty(visit.Faults);
    }

    [Fact]
    public async Task The_race_card_opens_without_signal_after_one_visit_and_counts_from_the_client_s_own_start()
    {
        await using var visit = await app.Practitioner(Look.Desktop);
        var places = await ClientPlaces.Of(visit, Runner);
        await visit.Go(places.Race);
        var address = await GiveLink(visit.Page);

        await using var client = await app.Stranger(Look.Phone);
        var phone = new CardOnPhone(client);
        // her race is this weekend: on the eve the card would count the hours already
        await client.Page.Clock.SetFixedTimeAsync(DateTime.Now.AddDays(-2));
        await phone.VisitOnceAndLoseSignal(address);
        await phone.Open();
        await Expect(client.Page.Locator("#by-clock")).ToContainTextAsync("First: ");

        await client.Page.GetByRole(AriaRole.Button, new() { Name = "I start now" }).TapAsync();
        await Expect(client.Page.Locator("#started")).ToContainTextAsync("Started at");
        await phone.SaysNextByClock((await phone.Read())[0]);
    }

    private static async Task<string> TakeUpMarathon(Visit visit, DateTime start)
    {
        var care = new CareTaking(visit);
        await care.TakeIntoCare("Sunniva", "Brackenridge", "58");
        await care.Screen("Do you have coeliac disease?", "Yes");
        await care.EnterMarathon("Fellwater Marathon", start, "3:35:00");
        return visit.Page.Url;
    }

    private static async Task<string> BuildPlan(IPage page)
    {
        await page.GetByRole(AriaRole.Button, new() { Name = "Build plan" }).ClickAsync();
        await new Workbench(page).Appears();
        return page.Url;
    }

    private static async Task<IReadOnlyList<StopOnCourse>> PutCourseInPlan(Visit visit)
    {
        var course = new CourseOnScreen(visit);
        await course.Open();
        await course.UploadLakeside();
        await course.SetOutStations();
        await course.Carry("Chews, four");
        await course.PlanSteps();
        var planned = await course.Read();
        Assert.True(planned.Count > 4, "A marathon has more than four stops.");
        await course.PutInPlan.ClickAsync();
        await Expect(visit.Page.GetByText("Version 1 of the plan carries this course now."))
            .ToBeVisibleAsync();
        return planned;
    }

    private static async Task<byte[]> DownloadCard(IPage page)
    {
        await page.GetByRole(AriaRole.Button, new() { Name = "Paper", Exact = true }).ClickAsync();
        var file = await page.RunAndWaitForDownloadAsync(() =>
            page.GetByRole(AriaRole.Link, new() { Name = "Race card, to fold, A4", Exact = true })
                .ClickAsync()
        );
        return await File.ReadAllBytesAsync(await file.PathAsync());
    }

    private static async Task<string> GiveLink(IPage page)
    {
        await page.GetByRole(AriaRole.Button, new() { NameRegex = new("Give a(nother)? link") })
            .ClickAsync();
        return await page.GetByLabel("Address of the phone pages").InputValueAsync();
    }

    // the race's clock and the phone's are both London's
    private static DateTime MinuteBefore(StopOnCourse stop, DateTime start)
    {
        var clock = TimeOnly.Parse(stop.Clock, CultureInfo.InvariantCulture);
        var at = DateOnly.FromDateTime(start).ToDateTime(clock);
        var london = TimeZoneInfo.FindSystemTimeZoneById("Europe/London");
        return TimeZoneInfo.ConvertTimeToUtc(at, london).AddMinutes(-1);
    }
}
