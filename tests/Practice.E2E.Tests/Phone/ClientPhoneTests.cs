using System.Net;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using Practice.Domain.Practices;
using Practice.Domain.Rehearsals;
using Practice.Domain.Screening;
using Practice.Domain.Screening.Questions;
using Practice.E2E.Tests.Browsing;
using static Microsoft.Playwright.Assertions;

namespace Practice.E2E.Tests.Phone;

/// <summary>The client's pages on a phone: with signal and without, with script and without.</summary>
[Collection(AppCollection.Name)]
public sealed class ClientPhoneTests(AppFixture app)
{
    private const int FirstLoadMost = 100 * 1024;

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public async Task A_rehearsal_logged_without_signal_is_kept_and_sent_once_when_there_is_some()
    {
        var client = await PhoneClient.Make(app, "Offa");
        await using var visit = await app.Stranger(Look.SmallPhone);
        var page = visit.Page;
        var log = new LogOfRehearsal(page);
        await page.GotoAsync(client.Home);
        await page.GetByRole(AriaRole.Link, new() { Name = "Log this rehearsal" }).TapAsync();
        await page.WaitForURLAsync("**/rehearsals/*");
        await log.IsKept();

        await page.Context.SetOfflineAsync(true);
        await page.ReloadAsync();
        await log.AllOfEveryDay();
        await log.Choose("Breakfast before the run", "Half");
        await log.Choose("Urine", "pale yellow");
        await log.Type("Hours slept", "7,5");
        await log.Type("How far", "32");
        await log.Type("How long: hours", "3");
        await log.Choose("Taken on the run", "All");
        await log.NothingFelt();
        await log.Send();
        await log.Says("Kept on this phone, will be sent");
        await page.ReloadAsync();
        await log.Says("Kept on this phone, will be sent");
        await Expect(page.GetByLabel("How far")).ToHaveValueAsync("32");
        Assert.Null(await client.Told());

        await page.Context.SetOfflineAsync(false);
        await log.Says("Sent");

        var told = (await client.Told())!;
        Assert.Equal(7.5m, told.SleepHours);
        Assert.Equal(3, told.UrineColour);
        Assert.Equal(0.5m, told.BreakfastPart);
        Assert.Equal(180, told.Run!.CarbohydrateG);
        Assert.Equal(TrialVerdict.Pass, TrialVerdicts.Of(told, SymptomThresholds.House));
        Assert.Equal(5, told.Symptoms.Select(s => s.Moment).Distinct().Count());
        await page.ReloadAsync();
        await log.Says("Sent");
        Assert.Equal(1, await client.Arrivals());
    }

    [Fact]
    public async Task Whoever_opened_the_link_once_has_the_plan_and_its_ticks_without_signal()
    {
        var client = await PhoneClient.Make(app, "Petra");
        await using var visit = await app.Stranger(Look.SmallPhone);
        var page = visit.Page;
        await page.GotoAsync(client.Home);
        await new LogOfRehearsal(page).IsKept(client.Plan);
        await page.Context.SetOfflineAsync(true);

        await page.GotoAsync(client.Plan);
        var day = page.Locator("details.day").Filter(new() { Has = page.Locator(".meal") }).First;
        await Open(day);
        await day.GetByRole(AriaRole.Checkbox).First.TapAsync();
        await page.ReloadAsync();

        await Open(day);
        await Expect(day.GetByRole(AriaRole.Checkbox).First).ToBeCheckedAsync();
    }

    /// <summary>The day that comes next stands open by itself; a tap would shut it.</summary>
    private static async Task Open(ILocator day)
    {
        if (await day.GetAttributeAsync("open") is null)
            await day.Locator("summary").TapAsync();
    }

    [Fact]
    public async Task Without_script_the_page_is_a_plain_form_that_can_be_corrected()
    {
        var client = await PhoneClient.Make(app, "Plano");
        await using var visit = await app.Stranger(Look.SmallPhone with { HasScript = false });
        var page = visit.Page;
        var log = new LogOfRehearsal(page);
        await page.GotoAsync(client.Log);
        await LogOfRehearsal.Choose(log.FirstMeal, "All of it");
        await log.Type("Hours slept", "seven");
        await log.Type("Anything else you", "Felt strong");
        await log.Send();

        await Expect(page.GetByText("Type a number from 0 to 24")).ToBeVisibleAsync();
        await Expect(page.GetByLabel("Anything else you")).ToHaveValueAsync("Felt strong");
        Assert.Null(await client.Told());

        await log.Type("Hours slept", "7");
        await log.Send();
        await Expect(page.GetByText("Sent. Thank you.")).ToBeVisibleAsync();
        Assert.Equal("Felt strong", (await client.Told())!.Note);

        await log.Type("Anything else you", "Felt strong, slept badly");
        await log.Send();
        await Expect(page.GetByText("Sent. Thank you.")).ToBeVisibleAsync();
        var told = (await client.Told())!;
        Assert.Equal("Felt strong, slept badly", told.Note);
        Assert.Single(told.Occasions);
    }

    [Fact]
    public async Task A_refused_number_is_told_beside_its_field_and_nothing_typed_is_lost()
    {
        var client = await PhoneClient.Make(app, "Fielda");
        await using var visit = await app.Stranger(Look.SmallPhone);
        var page = visit.Page;
        var log = new LogOfRehearsal(page);
        await page.GotoAsync(client.Log);
        await LogOfRehearsal.Choose(log.FirstMeal, "Partly");
        await LogOfRehearsal.Choose(log.FirstMeal.Locator(".portion").First, "Other");
        await log.Type("Hours slept", "90");
        await log.Send();

        await log.Says("Not sent: something is marked above");
        await Expect(page.GetByText("Type a number from 0 to 24")).ToBeVisibleAsync();
        await Expect(page.GetByText("Choose how much, or say what you ate instead."))
            .ToBeVisibleAsync();

        await log.FirstMeal.GetByPlaceholder("What, and how much").First.FillAsync("Two rolls");
        await log.Type("Hours slept", "9");
        await log.Send();
        await log.Says("Sent");
        var portion = (await client.Told())!.Occasions[0].Portions[0];
        Assert.Equal(EatenHow.SomethingElse, portion.How);
        Assert.Equal("Two rolls", portion.Words);
    }

    [Fact]
    public async Task A_warning_sign_shows_medical_advice_at_once_even_without_signal()
    {
        var client = await PhoneClient.Make(app, "Sanna");
        await using var visit = await app.Stranger(Look.SmallPhone);
        var page = visit.Page;
        var log = new LogOfRehearsal(page);
        await page.GotoAsync(client.Log);
        await log.IsKept();
        await page.Context.SetOfflineAsync(true);
        var advice = page.GetByRole(AriaRole.Alert);
        await Expect(advice).ToHaveCountAsync(0);

        await log.Tick("Chest pain");

        await Expect(advice).ToContainTextAsync("get emergency help now");
        await Expect(advice).ToContainTextAsync("your local emergency number");
        await log.Send();
        await page.Context.SetOfflineAsync(false);
        await log.Says("Sent");
        Assert.Equal([WarningSign.ChestPain], (await client.Told())!.WarningSigns);
        await page.ReloadAsync();
        await Expect(advice.First).ToContainTextAsync("See a doctor");
    }

    [Fact]
    public async Task Who_is_to_see_no_numbers_sees_none_with_a_unit_on_any_page()
    {
        var answers = Questionnaire.NothingToReport.With(
            EatingAndEnergy.EatingDisorder,
            EatingAndEnergy.InThePast
        );
        var client = await PhoneClient.Make(app, "Noora", answers);
        await using var visit = await app.Stranger(Look.SmallPhone);
        var page = visit.Page;
        foreach (var address in client.Pages)
        {
            await page.GotoAsync(address);
            // text also of what is folded away, and what a screen reader is told
            var text = await page.EvaluateAsync<string>(
                """
                () => [document.title, document.body.textContent,
                    ...[...document.querySelectorAll("*")].flatMap(e => ["aria-label", "placeholder", "aria-valuetext", "alt"]
                        .map(a => e.getAttribute(a) ?? ""))].join("\n")
                """
            );
            Assert.Empty(NumberFree.Violations(text));
        }
        await Expect(page.GetByText("Weight")).ToHaveCountAsync(0);
        await LogOfRehearsal.Choose(page.Locator(".felt").First, "Something");
        var scale = page.GetByRole(AriaRole.Slider, new() { Name = "Heartburn" }).First;
        await scale.FillAsync("6");
        await Expect(scale).ToHaveAttributeAsync("aria-valuetext", "disturbed me");
    }

    [Fact]
    public async Task Every_page_is_accessible_fits_360_pixels_and_can_be_hit_with_a_thumb()
    {
        var client = await PhoneClient.Make(app, "Axel");
        foreach (var scheme in new[] { ColorScheme.Light, ColorScheme.Dark })
        {
            await using var visit = await app.Stranger(Look.SmallPhone with { Scheme = scheme });
            var page = visit.Page;
            foreach (var address in client.Pages)
            {
                await page.GotoAsync(address);
                if (address == client.Log)
                    await Unfold(page);
                var findings = (await page.RunAxe()).Violations;
                Assert.True(
                    findings.Length == 0,
                    string.Join("\n", findings.Select(f => $"{address} {f.Id}: {f.Nodes[0].Html}"))
                );
                Assert.Equal(
                    0,
                    await page.EvaluateAsync<int>(
                        "document.documentElement.scrollWidth - innerWidth"
                    )
                );
                Assert.Empty(await TooSmall(page));
            }
            Assert.Empty(visit.Faults);
            Assert.Empty(visit.FetchedOutside);
        }
    }

    [Theory]
    [InlineData("home")]
    [InlineData("log")]
    [InlineData("plan")]
    public async Task The_first_load_stays_under_100_kilobytes(string which)
    {
        var client = await PhoneClient.Make(app, "Lita");
        await using var visit = await app.Stranger(Look.SmallPhone);
        var page = visit.Page;
        var network = await page.Context.NewCDPSessionAsync(page);
        await network.SendAsync("Network.enable");
        var bytes = 0L;
        network.Event("Network.loadingFinished").OnEvent += (_, told) =>
            bytes += (long)told!.Value.GetProperty("encodedDataLength").GetDouble();
        await page.GotoAsync(
            which switch
            {
                "home" => client.Home,
                "log" => client.Log,
                _ => client.Plan,
            },
            new() { WaitUntil = WaitUntilState.NetworkIdle }
        );
        TestContext.Current.TestOutputHelper?.WriteLine($"{which}: {bytes} bytes");
        Assert.InRange(bytes, 5_000, FirstLoadMost);
    }

    [Fact]
    public async Task A_link_that_never_was_and_one_taken_back_answer_alike_and_say_nothing()
    {
        var client = await PhoneClient.Make(app, "Reva");
        using var browser = app.CreateClient();
        using var open = await browser.GetAsync(client.Log, Cancel);
        Assert.Equal(HttpStatusCode.OK, open.StatusCode);
        Assert.Equal("no-referrer", open.Headers.GetValues("Referrer-Policy").Single());
        Assert.Contains(
            "noindex",
            open.Headers.GetValues("X-Robots-Tag").Single(),
            StringComparison.Ordinal
        );
        Assert.True(open.Headers.CacheControl is { NoStore: true, Private: true });
        Assert.DoesNotContain(
            "unsafe-inline",
            open.Headers.GetValues("Content-Security-Policy").Single(),
            StringComparison.Ordinal
        );
        await client.Revoke();

        var never = client.Home[..^6] + "AAAAAA";
        var answers = new List<string>();
        foreach (
            var address in new[]
            {
                client.Home,
                client.Log,
                never,
                $"{never}/plan",
                $"{never}/what/ever",
                client.Home + "/logo.png",
            }
        )
        {
            using var closed = await browser.GetAsync(address, Cancel);
            Assert.Equal(HttpStatusCode.NotFound, closed.StatusCode);
            answers.Add(await closed.Content.ReadAsStringAsync(Cancel));
        }
        Assert.Single(answers.Distinct());
        Assert.Contains("This link is closed", answers[0], StringComparison.Ordinal);
    }

    [Fact]
    public async Task One_link_can_not_be_hammered()
    {
        using var browser = app.CreateClient();
        var address = $"/p/{new string('B', 43)}";
        var answers = new HashSet<HttpStatusCode>();
        for (var i = 0; i < 200 && !answers.Contains(HttpStatusCode.TooManyRequests); i++)
        {
            using var answer = await browser.GetAsync(address, Cancel);
            answers.Add(answer.StatusCode);
        }
        Assert.Equal([HttpStatusCode.NotFound, HttpStatusCode.TooManyRequests], answers);
    }

    [Fact]
    public async Task The_practitioner_sees_a_new_link_once_and_takes_it_back()
    {
        await using var visit = await app.Practitioner(Look.Desktop);
        await using var phone = await app.Stranger(Look.SmallPhone);
        var page = visit.Page;
        await visit.Go((await app.DemoClient()).Race);
        var panel = page.GetByRole(AriaRole.Region, new() { Name = "Phone link" });
        await panel.GetByRole(AriaRole.Button, new() { Name = "Give" }).ClickAsync();
        var address = await panel.GetByLabel("Address of the phone pages").InputValueAsync();
        await Expect(panel.GetByRole(AriaRole.Img)).ToBeVisibleAsync();

        await phone.Page.GotoAsync(address);
        await Expect(phone.Page.GetByRole(AriaRole.Heading, new() { Name = "Your plan" }))
            .ToBeVisibleAsync();

        await visit.Go(page.Url);
        await Expect(panel).ToContainTextAsync("opened");
        await Expect(panel).Not.ToContainTextAsync(address);
        await panel.GetByRole(AriaRole.Button, new() { Name = "Take back" }).First.ClickAsync();
        await Expect(panel.GetByRole(AriaRole.Listitem)).ToHaveCountAsync(0);
        await phone.Page.ReloadAsync();
        await Expect(phone.Page.GetByRole(AriaRole.Heading, new() { Name = "This link is closed" }))
            .ToBeVisibleAsync();
    }

    /// <summary>Opens all that is folded away, so that it is looked at too.</summary>
    private static async Task Unfold(IPage page) =>
        await page.EvaluateAsync(
            """
            () => {
                for (const fold of document.querySelectorAll("details")) fold.open = true;
                for (const choice of document.querySelectorAll(".some input, .opens input")) choice.click();
                document.querySelector(".sign").click();
            }
            """
        );

    /// <summary>What is to be tapped and is lower or narrower than 44 pixels.</summary>
    private static async Task<string[]> TooSmall(IPage page) =>
        await page.EvaluateAsync<string[]>(
            """
            () => [...document.querySelectorAll("main a, button, select, textarea, input:not([type=hidden]), summary")]
                .map(e => e.matches("[type=checkbox], [type=radio], [type=range]") ? e.closest("label") : e)
                .map(e => [e, e.getBoundingClientRect()])
                .filter(([, r]) => r.width > 0 && (r.height < 44 || r.width < 44))
                .map(([e, r]) => `${e.outerHTML.slice(0, 80)} ${r.width}x${r.height}`)
            """
        );
}
