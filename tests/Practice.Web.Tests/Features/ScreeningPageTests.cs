using AngleSharp.Dom;
using Bunit;
using Practice.Domain.Screening;
using Practice.Domain.Screening.Questions;
using Practice.Service.Clients;
using Practice.TestSupport;
using Practice.Web.Features.Clients.Screening;

namespace Practice.Web.Tests.Features;

[Collection(DeskCollection.Name)]
public class ScreeningPageTests(TestPractice practice)
    : DeskContext(practice),
        IClassFixture<TestPractice>
{
    [Fact]
    public async Task An_answer_shows_its_hold_at_once_and_is_on_file_only_when_saved()
    {
        var id = await Practice.NewClient();
        var page = Screening(id);
        Assert.Contains("No hold stands", page.Markup, StringComparison.Ordinal);

        await Choose(page, Diabetes.Kind, Diabetes.Type1);

        Assert.Contains("blocks issuing", page.Find("aside").TextContent, StringComparison.Ordinal);
        Assert.Empty((await OnFile(id)).StandingHolds);

        await page.Find("form").SubmitAsync();
        Assert.NotEmpty((await OnFile(id)).StandingHolds);
    }

    [Fact]
    public async Task A_follow_up_is_asked_only_after_the_answer_that_leads_to_it()
    {
        var page = Screening(await Practice.NewClient());
        Assert.DoesNotContain(
            FoodAndTheBody.CertifiedOats.Text,
            page.Markup,
            StringComparison.Ordinal
        );
        await Choose(page, FoodAndTheBody.Coeliac, Choice.Yes);
        Assert.Contains(FoodAndTheBody.CertifiedOats.Text, page.Markup, StringComparison.Ordinal);
        Assert.Contains("1 question is open", page.Markup, StringComparison.Ordinal);
        Assert.Contains("Never served: ", page.Find("aside").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Nothing_else_to_report_answers_only_what_is_open()
    {
        var answers = ScreeningAnswers.None.With(Diabetes.Kind, Diabetes.Type2);
        var id = await Practice.NewClient(answers);
        var page = Screening(id);
        await Button(page, "Nothing else to report").ClickAsync();
        await page.Find("form").SubmitAsync();
        var saved = (await OnFile(id)).Screening.Answers;
        Assert.Empty(Questionnaire.Open(saved));
        Assert.True(saved.Says(Diabetes.Kind, Diabetes.Type2));
    }

    [Fact]
    public async Task A_clearance_lifts_the_hold_and_stands_in_the_list()
    {
        var id = await Practice.NewClient(
            Questionnaire.NothingToReport.With(Diabetes.Kind, Diabetes.Type1)
        );
        var page = Screening(id);
        while (page.FindAll("button").Any(b => b.TextContent == "Record a clearance"))
        {
            await Button(page, "Record a clearance").ClickAsync();
            await page.Find("#by").ChangeAsync("Dr A. Weaver");
            await page.Find("#profession").ChangeAsync("diabetologist");
            await page.Find("#said").ChangeAsync("Doses agreed for loading and race day");
            await page.Find("#said").Closest("form")!.SubmitAsync();
            page.WaitForAssertion(() => Assert.Empty(page.FindAll("#said")));
        }
        Assert.Contains("No hold stands", page.Markup, StringComparison.Ordinal);
        Assert.Contains("Dr A. Weaver, diabetologist", page.Markup, StringComparison.Ordinal);
        Assert.Empty((await OnFile(id)).StandingHolds);
    }

    [Fact]
    public async Task An_assistant_sees_the_hold_but_no_way_to_clear_it()
    {
        var id = await Practice.NewClient(
            Questionnaire.NothingToReport.With(Diabetes.Kind, Diabetes.Type1)
        );
        var page = Open<ScreeningPage>(p => p.Add(s => s.Id, id), Practice.Assistant);
        page.WaitForElement("fieldset");
        Assert.Contains("block", page.Find("aside").TextContent, StringComparison.Ordinal);
        Assert.DoesNotContain(page.FindAll("button"), b => b.TextContent == "Record a clearance");
    }

    private IRenderedComponent<ScreeningPage> Screening(Guid id)
    {
        var page = Open<ScreeningPage>(p => p.Add(s => s.Id, id));
        page.WaitForElement("fieldset");
        return page;
    }

    private static Task Choose(
        IRenderedComponent<ScreeningPage> page,
        Question question,
        Choice choice
    ) =>
        page.FindAll("fieldset")
            .Single(f => f.QuerySelector("legend")!.TextContent == question.Text)
            .QuerySelectorAll("label")
            .Single(l => l.TextContent.Trim() == choice.Text)
            .QuerySelector("input")!
            .ChangeAsync(new() { Value = true });

    private static IElement Button(IRenderedComponent<ScreeningPage> page, string text) =>
        page.FindAll("button").First(b => b.TextContent == text);

    private async Task<ClientFile> OnFile(Guid id) =>
        (await Practice.Get<OpenClient>().Run(Practice.Practitioner, id, Cancel))!;
}
