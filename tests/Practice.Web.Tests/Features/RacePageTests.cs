using Bunit;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.DependencyInjection;
using Practice.Domain.Screening;
using Practice.Domain.Screening.Questions;
using Practice.TestSupport;
using Practice.Web.Features.Races;

namespace Practice.Web.Tests.Features;

[Collection(DeskCollection.Name)]
public class RacePageTests(TestPractice practice)
    : DeskContext(practice),
        IClassFixture<TestPractice>
{
    [Fact]
    public async Task Another_rate_changes_the_targets_at_once()
    {
        var page = await Race();
        Assert.Contains(
            "700 g/day",
            Target(page, "Carbohydrate, full day"),
            StringComparison.Ordinal
        );
        await page.Find("#rate").ChangeAsync("8");
        page.WaitForAssertion(() =>
            Assert.Contains(
                "560 g/day",
                Target(page, "Carbohydrate, full day"),
                StringComparison.Ordinal
            )
        );
    }

    [Fact]
    public async Task Her_own_value_needs_a_reason_and_can_be_taken_back()
    {
        var page = await Race();
        await page.Find("#own-fibre").ChangeAsync("20");
        await page.Find("#own-fibre").Closest("form")!.SubmitAsync();
        Assert.Contains(
            "Say why",
            page.Find("#own-fibre").Closest("form")!.TextContent,
            StringComparison.Ordinal
        );

        await page.Find("#why-fibre").ChangeAsync("Eats more every day");
        await page.Find("#own-fibre").Closest("form")!.SubmitAsync();
        page.WaitForAssertion(() =>
            Assert.Contains(
                "at most 20 g/day",
                Target(page, "Fibre, full day"),
                StringComparison.Ordinal
            )
        );
        Assert.Contains(
            "Set by Pat Tester on 1 Apr 2027: “Eats more every day”",
            page.Markup,
            StringComparison.Ordinal
        );

        await page.FindAll("button")
            .Single(b => b.TextContent == "Back to the computed value")
            .ClickAsync();
        page.WaitForAssertion(() =>
            Assert.Contains(
                "at most 15 g/day",
                Target(page, "Fibre, full day"),
                StringComparison.Ordinal
            )
        );
    }

    [Fact]
    public async Task Building_shows_how_far_it_is_and_ends_on_the_workbench()
    {
        var page = await Race();
        var building = page.FindAll("button")
            .Single(b => b.TextContent == "Build plan")
            .ClickAsync();
        page.WaitForElement("progress");
        // stop at once: the best so far is a plan too
        await page.FindAll(".building button").Single().ClickAsync();
        await building;
        page.WaitForAssertion(
            () =>
                Assert.Contains(
                    "/plans/",
                    Services.GetRequiredService<NavigationManager>().Uri,
                    StringComparison.Ordinal
                ),
            TimeSpan.FromSeconds(20)
        );
    }

    [Fact]
    public async Task A_standing_hold_is_on_the_page_of_the_race()
    {
        var page = await Race(Questionnaire.NothingToReport.With(Diabetes.Kind, Diabetes.Type1));
        Assert.Contains(
            "issuing",
            page.Find("section[aria-label=Holds]").TextContent,
            StringComparison.Ordinal
        );
    }

    private async Task<IRenderedComponent<RacePage>> Race(ScreeningAnswers? answers = null)
    {
        var id = await Practice.NewRace(await Practice.NewClient(answers));
        var page = Open<RacePage>(p => p.Add(r => r.Id, id));
        page.WaitForElement(".target-line");
        return page;
    }

    private static string Target(IRenderedComponent<RacePage> page, string name) =>
        page.FindAll(".target-line")
            .Single(l =>
                l.QuerySelector(".why")!.TextContent.StartsWith(name, StringComparison.Ordinal)
            )
            .QuerySelector(".aim")!
            .TextContent;
}
