using Bunit;
using Practice.Domain.Plans;
using Practice.Domain.Plans.Weeks;
using Practice.Service.Clients;
using Practice.Service.Plans;
using Practice.TestSupport;
using Practice.Web.Features.Weeks;

namespace Practice.Web.Tests.Features;

[Collection(DeskCollection.Name)]
public class WeekPageTests(TestPractice practice)
    : DeskContext(practice),
        IClassFixture<TestPractice>
{
    private async Task<PlanFile> Draft() =>
        await Practice.NewDraft(await Practice.NewRace(await Practice.NewClient()));

    private IRenderedComponent<WeekPage> OpenWeek(PlanFile file) =>
        Open<WeekPage>(p => p.Add(w => w.Id, file.Version.Value.Id));

    private async Task<RaceWeekPlan> OnFile(PlanFile file) =>
        (await Practice.Open(file.Version.Value.Id)).Version.Value.Plan;

    [Fact]
    public async Task A_new_draft_has_its_week_with_food_for_the_race_day()
    {
        var file = await Draft();
        var week = file.Version.Value.Plan.Week!;
        Assert.All(week.Morning.Occasions, o => Assert.NotEmpty(o.Portions));
        Assert.All(week.Recovery.Occasions, o => Assert.NotEmpty(o.Portions));

        var page = OpenWeek(file);
        Assert.Equal(9, page.WaitForElements(".week > li").Count);
        Assert.Contains("Race morning", page.Markup, StringComparison.Ordinal);
        Assert.Contains("not to prescribe", page.Markup, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_note_is_saved_and_leaves_the_loading_days_alone()
    {
        var file = await Draft();
        var page = OpenWeek(file);
        await page.WaitForElement(".week > li textarea").ChangeAsync(new() { Value = "Buy rice" });

        var plan = await OnFile(file);
        Assert.Equal("Buy rice", plan.Week!.Days[0].Note);
        Assert.Equal(file.Version.Value.Plan.Days, plan.Days);
        Assert.Equal(file.Version.Value.Plan.Week!.Morning, plan.Week.Morning);
    }

    [Fact]
    public async Task Marking_a_day_of_travel_moves_its_meals()
    {
        var file = await Draft();
        var eve = file.Version.Value.Plan.Days[^1];
        var page = OpenWeek(file);
        var cards = page.WaitForElements(".week > li");
        await cards[6].QuerySelector("input[type=checkbox]")!.ChangeAsync(new() { Value = true });

        var plan = await OnFile(file);
        Assert.NotNull(plan.Week![eve.Date].Travel);
        Assert.NotEqual(
            eve.Occasions.Select(o => o.Time),
            plan[eve.Date].Occasions.Select(o => o.Time)
        );
    }

    [Fact]
    public async Task A_draft_follows_where_the_client_lives_and_shows_both_clocks()
    {
        var file = await Draft();
        Assert.Null(file.Version.Value.Plan.Week!.ClientZoneId);
        await MoveTo("America/New_York", file.Client.Id);

        var page = OpenWeek(file);
        page.WaitForElement(".week > li");
        Assert.Contains("01:00 at home", page.Markup, StringComparison.Ordinal);
        page.WaitForAssertion(() =>
            Assert.Contains(":", page.Find(".save.saved").TextContent, StringComparison.Ordinal)
        );
        Assert.Equal("America/New_York", (await OnFile(file)).Week!.ClientZoneId);
    }

    private async Task MoveTo(string zone, Guid clientId)
    {
        var client = (
            await Practice.Get<OpenClient>().Run(Practice.Practitioner, clientId, Cancel)
        )!.Client;
        var details = ClientDetails.Of(client.Value) with { ZoneId = zone };
        await Practice.Get<ReviseClient>().Run(Practice.Practitioner, client, details, Cancel);
    }

    [Fact]
    public async Task A_draft_from_before_there_were_weeks_is_laid_out_on_request()
    {
        var file = await Draft();
        await Practice
            .Get<SaveDraft>()
            .Run(
                Practice.Practitioner,
                file.Version,
                file.Version.Value.Plan with
                {
                    Week = null,
                },
                Cancel
            );
        var page = OpenWeek(file);
        await page.WaitForElement(".empty .button").ClickAsync(new());
        page.WaitForElements(".week > li", TimeSpan.FromSeconds(20));
        Assert.NotNull((await OnFile(file)).Week);
    }
}
