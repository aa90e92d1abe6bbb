using AngleSharp.Dom;
using Bunit;
using Practice.Domain.Plans;
using Practice.Domain.Screening;
using Practice.Domain.Screening.Questions;
using Practice.Service.Plans;
using Practice.TestSupport;
using Practice.Web.Features.Plans;
using Practice.Web.Features.Plans.Workbench;
using Practice.Web.Parts.Plates;

namespace Practice.Web.Tests.Features;

[Collection(DeskCollection.Name)]
public class WorkbenchTests(TestPractice practice)
    : DeskContext(practice),
        IClassFixture<TestPractice>
{
    [Fact]
    public async Task A_step_moves_the_meters_is_saved_by_itself_and_can_be_undone()
    {
        var (id, page) = await Bench();
        var before = (await OnFile(id)).Days;
        var glance = Glance(page);

        await AnyStep(page).ClickAsync();
        Assert.NotEqual(glance, Glance(page));
        page.WaitForAssertion(() =>
            Assert.Contains("Saved", Saving(page), StringComparison.Ordinal)
        );
        Assert.NotEqual(before, (await OnFile(id)).Days);

        await page.Find("button[aria-label=Undo]").ClickAsync();
        page.WaitForAssertion(() =>
            Assert.Contains("Saved", Saving(page), StringComparison.Ordinal)
        );
        Assert.Equal(glance, Glance(page));
        Assert.Equal(before, (await OnFile(id)).Days);
    }

    [Fact]
    public async Task What_was_changed_while_the_database_was_away_stays_on_the_bench_and_is_saved_when_tried_again()
    {
        var (id, page) = await Bench();
        var before = (await OnFile(id)).Days;
        string glance;
        await using (await Practice.TakeDatabaseAway())
        {
            await AnyStep(page).ClickAsync();
            glance = Glance(page);
            page.WaitForAssertion(() =>
                Assert.Contains("Not saved", Saving(page), StringComparison.Ordinal)
            );
        }
        Assert.Equal(before, (await OnFile(id)).Days);

        await page.FindAll(".save button")[0].ClickAsync();
        page.WaitForAssertion(() =>
            Assert.Contains("Saved", Saving(page), StringComparison.Ordinal)
        );
        Assert.Equal(glance, Glance(page));
        Assert.NotEqual(before, (await OnFile(id)).Days);
    }

    [Fact]
    public async Task A_locked_portion_is_left_alone_by_rebalancing_which_tells_what_it_changed()
    {
        var (id, page) = await Bench();
        var day = page.FindComponents<DayColumn>()[^1];
        await AnyStep(page, day).ClickAsync();
        await day.FindAll("button[aria-label^='Lock ']")[0].ClickAsync();
        var locked = Locked((await Saved(id, page)).Days);
        Assert.NotEmpty(locked);

        await day.FindAll("button")
            .Single(b => b.TextContent.Contains("Rebalance", StringComparison.Ordinal))
            .ClickAsync();
        page.WaitForElement(
            "section[aria-label='What rebalancing changed']",
            TimeSpan.FromSeconds(20)
        );
        Assert.Equal(locked, Locked((await Saved(id, page)).Days));
    }

    [Fact]
    public async Task A_food_is_swapped_for_one_that_brings_the_same_carbohydrate()
    {
        var (id, page) = await Bench();
        var row = page.FindComponents<PortionRow>()
            .OrderByDescending(r => r.Instance.Portion.Nutrients.CarbohydrateG)
            .First();
        var gone = row.Instance.Portion;
        await row.Find("button[aria-label^='Swap ']").ClickAsync();
        await page.WaitForElement("dialog li button", TimeSpan.FromSeconds(20)).ClickAsync();

        var portions = (await Saved(id, page))
            .Days.SelectMany(d => d.Occasions)
            .SelectMany(o => o.Portions);
        Assert.Contains(portions, p => p.IsLocked && p.FoodId != gone.FoodId);
        Assert.Empty(page.FindAll("dialog"));
    }

    [Fact]
    public async Task A_plan_that_is_held_cannot_be_issued_and_says_why()
    {
        var (_, page) = await Bench(
            Questionnaire.NothingToReport.With(Diabetes.Kind, Diabetes.Type1)
        );
        Assert.NotEmpty(page.FindAll("section[aria-label=Holds]"));
        Assert.True(Button(page, "Issue").HasAttribute("disabled"));
    }

    [Fact]
    public async Task An_issued_plan_can_only_be_read_until_a_new_version_is_begun()
    {
        var (id, page) = await Bench();
        await Button(page, "Issue").ClickAsync();
        page.WaitForAssertion(() =>
            Assert.Contains("issued by Pat Tester", page.Markup, StringComparison.Ordinal)
        );
        Assert.Empty(page.FindAll(".stepper button"));
        Assert.Equal(PlanStatus.Issued, (await Practice.Open(id)).Version.Value.Status);
        Assert.Contains(
            page.FindAll("button"),
            b => b.TextContent.Contains("Begin a new version", StringComparison.Ordinal)
        );
    }

    [Fact]
    public async Task An_issued_plan_is_taken_back_only_for_a_reason_that_is_kept()
    {
        var (id, page) = await Bench();
        await Button(page, "Issue").ClickAsync();
        page.WaitForAssertion(() => Button(page, "Withdraw"));
        await Button(page, "Withdraw").ClickAsync();

        await page.Find("form.reason").SubmitAsync();
        Assert.NotEmpty(page.FindAll("form.reason [role=alert]"));
        Assert.Equal(PlanStatus.Issued, (await Practice.Open(id)).Version.Value.Status);

        await page.Find("#reason").ChangeAsync("Race put off");
        await page.Find("form.reason").SubmitAsync();
        page.WaitForAssertion(() => Assert.Empty(page.FindAll("form.reason")));
        var withdrawn = (await Practice.Open(id)).Version.Value;
        Assert.Equal((PlanStatus.Withdrawn, "Race put off"), (withdrawn.Status, withdrawn.Reason));
    }

    [Fact]
    public async Task What_somebody_else_changed_meanwhile_is_told_and_nothing_is_overwritten()
    {
        var (id, page) = await Bench();
        var theirs = await Practice.Open(id);
        var note = theirs.Version.Value.Plan with { Note = "Theirs" };
        await Practice.Get<SaveDraft>().Run(Practice.Practitioner, theirs.Version, note, Cancel);

        await AnyStep(page).ClickAsync();

        page.WaitForElement("section[role=alert]");
        Assert.Equal("Theirs", (await OnFile(id)).Note);
    }

    [Fact]
    public async Task Papers_can_be_had_for_every_reader()
    {
        var (_, page) = await Bench();
        var papers = page.FindAll("#papers a").Select(a => a.GetAttribute("href")!).ToList();
        Assert.Contains(papers, p => p.Contains("paper=A4&variant=Full", StringComparison.Ordinal));
        Assert.Contains(papers, p => p.Contains("paper=Letter", StringComparison.Ordinal));
        Assert.Contains(papers, p => p.Contains("variant=NumberFree", StringComparison.Ordinal));
    }

    private async Task<(Guid Id, IRenderedComponent<PlanPage> Page)> Bench(
        ScreeningAnswers? answers = null
    )
    {
        var draft = await Practice.NewDraft(
            await Practice.NewRace(await Practice.NewClient(answers))
        );
        var id = draft.Version.Value.Id;
        var page = Open<PlanPage>(p => p.Add(b => b.Id, id));
        page.WaitForElement(".occasion");
        return (id, page);
    }

    private async Task<RaceWeekPlan> OnFile(Guid id) =>
        (await Practice.Open(id)).Version.Value.Plan;

    private async Task<RaceWeekPlan> Saved(Guid id, IRenderedComponent<PlanPage> page)
    {
        page.WaitForAssertion(
            () => Assert.StartsWith("Saved", Saving(page), StringComparison.Ordinal),
            TimeSpan.FromSeconds(5)
        );
        return await OnFile(id);
    }

    private static List<Portion> Locked(IEnumerable<PlanDay> days) =>
        [.. days.SelectMany(d => d.Occasions).SelectMany(o => o.Portions).Where(p => p.IsLocked)];

    private static IElement AnyStep(
        IRenderedComponent<PlanPage> page,
        IRenderedComponent<DayColumn>? day = null
    ) =>
        (
            day?.FindAll(".stepper button:not([disabled])")
            ?? page.FindAll(".stepper button:not([disabled])")
        )[0];

    private static string Glance(IRenderedComponent<PlanPage> page) =>
        page.Find(".glance").TextContent;

    private static string Saving(IRenderedComponent<PlanPage> page) =>
        page.Find(".save").TextContent.Trim();

    private static IElement Button(IRenderedComponent<PlanPage> page, string text) =>
        page.FindAll("button").Single(b => b.TextContent.Trim() == text);
}
