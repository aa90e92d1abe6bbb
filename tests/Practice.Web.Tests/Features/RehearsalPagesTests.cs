using Bunit;
using NodaTime;
using Practice.Domain.Caseload;
using Practice.Domain.Rehearsals;
using Practice.Service.Desks;
using Practice.Service.Plans;
using Practice.Service.Rehearsals;
using Practice.Store.News;
using Practice.TestSupport;
using Practice.Web.Features.Races;
using Practice.Web.Features.Rehearsals;
using Practice.Web.Features.Today;

namespace Practice.Web.Tests.Features;

/// <summary>Today is 1 April 2027, the race on the 18th: Sunday the 4th is the last day of the rehearsal weeks.</summary>
[Collection(DeskCollection.Name)]
public class RehearsalPagesTests(TestPractice practice)
    : DeskContext(practice),
        IClassFixture<TestPractice>
{
    [Fact]
    public async Task What_is_proposed_is_booked_by_one_click_and_stands_on_the_race_line()
    {
        var draft = await DraftAsync();
        var page = Open<RacePage>(p => p.Add(r => r.Id, draft.Race.Id));
        page.WaitForElement(".proposed button");
        Assert.Empty(page.FindAll(".level .trial"));

        await page.Find(".proposed button").ClickAsync();

        page.WaitForAssertion(() => Assert.Single(page.FindAll(".level .trial")));
        Assert.Contains(
            "Sunday 4 April",
            page.Find(".standing").TextContent,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public async Task A_move_to_a_day_that_does_not_do_is_refused_in_words()
    {
        var draft = await DraftAsync();
        await BookAsync(draft);
        var page = Open<RacePage>(p => p.Add(r => r.Id, draft.Race.Id));
        await page.WaitForElement(".standing input[type=date]").ChangeAsync("2027-04-12");

        page.WaitForAssertion(() =>
            Assert.Contains(
                "A full rehearsal is never in the last 10 days",
                page.Find(".refusal").TextContent,
                StringComparison.Ordinal
            )
        );
        Assert.Contains(
            "Sunday 4 April",
            page.Find(".standing").TextContent,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public async Task Feedback_told_by_telephone_is_typed_in_and_read_at_once()
    {
        var page = await RehearsalAsync(await BookAsync(await DraftAsync()));
        await Button(page, "Type feedback in").ClickAsync();
        await Button(page, "All eaten as planned").ClickAsync();
        await Button(page, "Another symptom").ClickAsync();
        await page.Find(".symptom input").ChangeAsync("6");
        await Button(page, "Keep what was told").ClickAsync();

        page.WaitForElement(".verdict.fail");
        Assert.Contains(
            "The worst score was 6",
            page.Find(".verdict").TextContent,
            StringComparison.Ordinal
        );
        Assert.NotEmpty(page.FindAll(".proposals li"));
        Assert.DoesNotContain("read as not eaten", page.Markup, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Feedback_that_meets_a_database_that_is_away_stays_in_its_form_and_can_be_sent_again()
    {
        var page = await RehearsalAsync(await BookAsync(await DraftAsync()));
        await Button(page, "Type feedback in").ClickAsync();
        await Button(page, "All eaten as planned").ClickAsync();
        await Button(page, "Another symptom").ClickAsync();
        await page.Find(".symptom input").ChangeAsync("6");
        await using (await Practice.TakeDatabaseAway())
            await Button(page, "Keep what was told").ClickAsync();
        Assert.Equal("6", page.Find(".symptom input").GetAttribute("value"));

        await Button(page, "Keep what was told").ClickAsync();
        page.WaitForElement(".verdict.fail");
    }

    [Fact]
    public async Task Chances_say_so_when_they_rest_on_meals_that_nobody_told_of()
    {
        var page = await RehearsalAsync(await BookAsync(await DraftAsync()));
        await Button(page, "Type feedback in").ClickAsync();
        await Button(page, "Another symptom").ClickAsync();
        await page.Find(".symptom input").ChangeAsync("6");
        await Button(page, "Keep what was told").ClickAsync();

        page.WaitForElement(".verdict.fail");
        Assert.Contains("read as not eaten", page.Markup, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_is_added_by_telephone_leaves_what_was_asked_and_not_felt_as_it_was()
    {
        var id = await BookAsync(await DraftAsync());
        await TellAsync(id, 0);
        var page = await RehearsalAsync(id);
        await Button(page, "Correct feedback").ClickAsync();
        Assert.Empty(page.FindAll(".symptom"));
        await page.Find("#tell-air").ChangeAsync("28");
        await page.Find("#tell-humidity").ChangeAsync("60");
        await page.Find("#tell-urine").ChangeAsync("4");
        await Button(page, "Keep what was told").ClickAsync();

        page.WaitForAssertion(() =>
        {
            // 0.567 x 28 + 0.393 x 22.6 + 3.94
            Assert.Contains("heat stress about 29\u00A0°C", page.Markup, StringComparison.Ordinal);
            Assert.Contains("urine 4 of 8", page.Markup, StringComparison.Ordinal);
            Assert.Contains("Asked at every time", page.Markup, StringComparison.Ordinal);
        });
    }

    [Fact]
    public async Task An_accepted_change_makes_a_new_version_with_a_diff_to_read()
    {
        var draft = await DraftAsync();
        var id = await BookAsync(draft);
        await TellAsync(id, 6);
        var page = await RehearsalAsync(id);
        await page.Find("button[aria-label='Accept: A quarter less: 7.5 g/kg']").ClickAsync();
        await page.Find("#decision-note").ChangeAsync("Start again lower");
        var deciding = Button(page, "Decide and make the new version").ClickAsync();

        page.WaitForElement("#taken-title");
        await deciding;

        Assert.Contains("Open version 2", page.Markup, StringComparison.Ordinal);
        Assert.Contains("Start again lower", page.Markup, StringComparison.Ordinal);
        Assert.NotEmpty(page.FindAll(".changes li"));
        Assert.Contains("Carbohydrate rate", page.Markup, StringComparison.Ordinal);
    }

    [Fact]
    public async Task An_assistant_reads_it_and_is_told_who_decides()
    {
        var id = await BookAsync(await DraftAsync());
        await TellAsync(id, 1);
        var page = await RehearsalAsync(id, Practice.Assistant);
        Assert.Contains("A practitioner decides", page.Markup, StringComparison.Ordinal);
        Assert.Empty(page.FindAll("input[name=verdict]"));
    }

    [Fact]
    public async Task What_a_client_sends_shows_on_Today_and_on_the_open_page_without_a_reload()
    {
        var news = Practice.Get<PracticeNews>();
        await news.StartAsync(Cancel);
        var id = await BookAsync(await DraftAsync());
        var today = Open<TodayPage>();
        var page = await RehearsalAsync(id);
        Assert.Empty(today.FindAll($"a[href='/rehearsals/{id}']"));

        await TellAsync(id, 3);

        today.WaitForElement($"a[href='/rehearsals/{id}']");
        page.WaitForElement(".verdict.adapt");
        await news.StopAsync(Cancel);
    }

    private async Task<PlanFile> DraftAsync() =>
        await Practice.NewDraft(await Practice.NewRace(await Practice.NewClient()));

    private async Task<Guid> BookAsync(PlanFile draft)
    {
        var outcome = await Practice
            .Get<BookRehearsal>()
            .Run(
                Practice.Practitioner,
                draft.Race.Id,
                RehearsalPlace.On(RehearsalKind.Full, new LocalDate(2027, 4, 4)),
                Cancel
            );
        return Assert.IsType<Booked>(outcome).RehearsalId;
    }

    private async Task TellAsync(Guid id, int score)
    {
        var file = (
            await Practice.Get<OpenRehearsal>().Run(Practice.Practitioner, id, null, Cancel)
        )!;
        var told = await Practice
            .Get<RecordFeedback>()
            .Run(
                Practice.Practitioner,
                file.Rehearsal,
                new Feedback
                {
                    ReceivedAt = default,
                    Occasions =
                    [
                        .. file.Rehearsal.Value.Sittings().Select(EatenOccasion.AsPlanned),
                    ],
                    Symptoms = [new(SymptomItem.Nausea, SymptomMoment.During, score, 45)],
                },
                Cancel
            );
        Assert.IsType<Saved<Rehearsal>>(told);
    }

    private async Task<IRenderedComponent<RehearsalPage>> RehearsalAsync(Guid id, Desk? desk = null)
    {
        var page = Open<RehearsalPage>(p => p.Add(r => r.Id, id), desk);
        await page.WaitForElementAsync("h1");
        return page;
    }

    private static AngleSharp.Dom.IElement Button(
        IRenderedComponent<RehearsalPage> page,
        string words
    ) => page.FindAll("button").First(b => b.TextContent.Contains(words, StringComparison.Ordinal));
}
