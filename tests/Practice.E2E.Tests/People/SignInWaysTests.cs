using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using Practice.E2E.Tests.Browsing;
using static Microsoft.Playwright.Assertions;
using static Practice.E2E.Tests.People.Owner;

namespace Practice.E2E.Tests.People;

/// <summary>Ways in beside the password, with the browser's own virtual authenticator.</summary>
public sealed class SignInWaysTests(FreshApp app) : IClassFixture<FreshApp>
{
    /// <summary>A passkey belongs to a name; a bare network address has none.</summary>
    private string Home => $"http://localhost:{app.ClientOptions.BaseAddress.Port}";

    [Fact]
    public async Task A_passkey_is_added_signs_in_by_itself_and_opens_nothing_once_removed()
    {
        await using (await Comes(app, Look.Desktop)) { }
        await using var visit = await app.Stranger(Look.Desktop);
        var page = visit.Page;
        await PlugIn(page);
        await page.GotoAsync($"{Home}/sign-in?to=/account");
        await SignIn(page, Email, Password);
        await Expect(Heading(page, "Your sign-in")).ToBeVisibleAsync();
        await page.GetByLabel("What to call it").FillAsync("Test key");
        await page.GetByRole(AriaRole.Button, new() { Name = "Add a passkey" }).ClickAsync();
        await Expect(page.GetByText("Test key")).ToBeVisibleAsync();
        Assert.Empty((await page.RunAxe()).Violations);

        await page.Context.ClearCookiesAsync();
        await page.GotoAsync($"{Home}/sign-in");
        Assert.Empty((await page.RunAxe()).Violations);
        await page.GetByRole(AriaRole.Button, new() { Name = "Sign in with a passkey" })
            .ClickAsync();
        await Expect(Heading(page, "Today")).ToBeVisibleAsync();

        await page.GotoAsync($"{Home}/account");
        await page.GetByRole(AriaRole.Button, new() { Name = "Remove Test key" }).ClickAsync();
        await Expect(page.GetByText("Test key")).ToHaveCountAsync(0);
        await page.Context.ClearCookiesAsync();
        await page.GotoAsync($"{Home}/sign-in");
        await page.GetByRole(AriaRole.Button, new() { Name = "Sign in with a passkey" })
            .ClickAsync();
        await Expect(page.GetByRole(AriaRole.Alert).First).ToContainTextAsync("opens nothing");
    }

    [Fact]
    public async Task After_the_password_a_code_is_asked_for_and_a_recovery_code_works_once()
    {
        await using (await Comes(app, Look.Desktop)) { }
        var aide = await NewAide();
        await using var visit = await app.Stranger(Look.Desktop);
        var page = visit.Page;
        await visit.Go("/sign-in?to=/account/authenticator");
        await SignIn(page, aide.Email, aide.Password);
        await Expect(Heading(page, "Authenticator")).ToBeVisibleAsync();
        Assert.Empty((await page.RunAxe()).Violations);
        var key = await page.Locator("main code").InnerTextAsync();
        await page.GetByLabel("The six digits it shows now").FillAsync(SecondFactor.Code(key));
        await page.GetByRole(AriaRole.Button, new() { Name = "Ask for a code from now on" })
            .ClickAsync();
        await Expect(page.Locator(".codes li")).ToHaveCountAsync(10);
        var recovery = await page.Locator(".codes li").First.InnerTextAsync();

        foreach (
            var (code, isRight) in new[]
            {
                (SecondFactor.Code(key), true),
                (recovery, true),
                (recovery, false),
            }
        )
        {
            await page.Context.ClearCookiesAsync();
            await visit.Go("/sign-in");
            await SignIn(page, aide.Email, aide.Password);
            await Expect(Heading(page, "One more step")).ToBeVisibleAsync();
            await page.GetByLabel("Code").FillAsync(code);
            await page.GetByRole(AriaRole.Button, new() { Name = "Sign in" }).ClickAsync();
            if (isRight)
                await Expect(Heading(page, "Today")).ToBeVisibleAsync();
            else
                await Expect(page.GetByRole(AriaRole.Alert)).ToContainTextAsync("not the one");
        }
    }

    [Fact]
    public async Task A_session_is_seen_and_ended_from_elsewhere()
    {
        await using var here = await Comes(app, Look.Desktop);
        await using var there = await app.Stranger(Look.Phone);
        await there.Go("/sign-in");
        await SignIn(there.Page, Email, Password);
        await Expect(Heading(there.Page, "Today")).ToBeVisibleAsync();

        await here.Go("/account");
        await here
            .Page.GetByRole(AriaRole.Button, new() { Name = "Sign out everywhere else" })
            .ClickAsync();
        await Expect(here.Page.GetByText("(here)")).ToBeVisibleAsync();
        await there.Page.GotoAsync("/clients");
        await Expect(Heading(there.Page, "Sign in")).ToBeVisibleAsync();
        await here.Go("/clients");
        await Expect(Heading(here.Page, "Clients")).ToBeVisibleAsync();
    }

    private async Task<(string Email, string Password)> NewAide()
    {
        const string email = "ava@lindenhof.example";
        await using var owner = await Comes(app, Look.Desktop);
        await owner.Go("/practice/team");
        await owner.Page.GetByLabel("E-mail address").FillAsync(email);
        await owner
            .Page.GetByRole(AriaRole.Button, new() { Name = "Send the invitation" })
            .ClickAsync();
        await Expect(owner.Page.GetByRole(AriaRole.Status).First)
            .ToContainTextAsync("in the outbox");
        await using var aide = await app.Stranger(Look.Desktop);
        await aide.Go(await LinkTo(app, email, "your seat"));
        await aide.Page.GetByLabel("Your name").FillAsync("Ava Aide");
        await aide.Page.GetByLabel("Password").FillAsync("millet and plums");
        await aide.Page.GetByRole(AriaRole.Button, new() { Name = "Take the seat" }).ClickAsync();
        await Expect(Heading(aide.Page, "Today")).ToBeVisibleAsync();
        return (email, "millet and plums");
    }

    private static async Task PlugIn(IPage page)
    {
        var tools = await page.Context.NewCDPSessionAsync(page);
        await tools.SendAsync("WebAuthn.enable");
        await tools.SendAsync(
            "WebAuthn.addVirtualAuthenticator",
            new Dictionary<string, object>
            {
                ["options"] = new Dictionary<string, object>
                {
                    ["protocol"] = "ctap2",
                    ["transport"] = "internal",
                    ["hasResidentKey"] = true,
                    ["hasUserVerification"] = true,
                    ["isUserVerified"] = true,
                    ["automaticPresenceSimulation"] = true,
                },
            }
        );
    }
}
