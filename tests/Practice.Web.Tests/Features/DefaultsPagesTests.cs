using Bunit;
using Practice.Domain.Practices;
using Practice.Service.Desks;
using Practice.Service.Practices;
using Practice.Service.Practices.Brand;
using Practice.TestSupport;
using Practice.Web.Features.Settings.Defaults;
using Practice.Web.Features.Settings.Texts;
using Practice.Web.Features.Weeks;

namespace Practice.Web.Tests.Features;

[Collection(DeskCollection.Name)]
public class DefaultsPagesTests(TestPractice practice)
    : DeskContext(practice),
        IClassFixture<TestPractice>
{
    private Desk Owner => Practice.Practitioner with { Role = StaffRole.Owner };

    [Fact]
    public async Task A_spread_that_makes_no_whole_day_is_told_and_not_saved_until_it_does()
    {
        var page = Open<DefaultsPage>(desk: Owner);
        await page.WaitForElement("[aria-label='Breakfast, share in %']").ChangeAsync("30");
        Assert.Contains("105 %", page.Find(".together").TextContent, StringComparison.Ordinal);
        await page.Find("form").SubmitAsync();
        Assert.Contains(
            "have to make 100 %",
            string.Join(' ', page.FindAll(".validation-message").Select(m => m.TextContent)),
            StringComparison.Ordinal
        );
        Assert.Empty((await OnFile()).Sittings);

        await page.Find("[aria-label='Lunch, share in %']").ChangeAsync("20");
        await page.Find("form").SubmitAsync();
        Assert.Equal(0.30m, (await OnFile()).Sittings[0].Share);
    }

    [Fact]
    public async Task Words_and_ideas_are_saved_and_an_idea_goes_into_the_note_of_an_ordinary_day()
    {
        var page = Open<TextsPage>(desk: Owner);
        await page.WaitForElement("#closing").ChangeAsync("Good legs!");
        await page.Find("#ideas").ChangeAsync("Rice with roast vegetables\nPorridge");
        await page.Find("form").SubmitAsync();
        var saved = await OnFile();
        Assert.Equal("Good legs!", saved.Texts.Closing);

        var draft = await Practice.NewDraft(await Practice.NewRace(await Practice.NewClient()));
        var week = Open<WeekPage>(p => p.Add(w => w.Id, draft.Version.Value.Id));
        var days = week.WaitForElements(".week > li");
        Assert.Null(days[^2].QuerySelector("select")); // race day: its meals are planned
        await days[0].QuerySelector("select")!.ChangeAsync(new() { Value = "Porridge" });
        var plan = (await Practice.Open(draft.Version.Value.Id)).Version.Value.Plan;
        Assert.Equal("Porridge", plan.Week!.Days[0].Note);
    }

    [Fact]
    public void Nobody_but_an_owner_is_shown_the_forms()
    {
        Assert.Empty(Open<DefaultsPage>().FindAll("form"));
        Assert.Empty(Open<TextsPage>().FindAll("form"));
    }

    private async Task<PracticeDefaults> OnFile() =>
        (await Practice.Get<SetBrand>().Open(Owner, Cancel))!.Value.Defaults;
}
