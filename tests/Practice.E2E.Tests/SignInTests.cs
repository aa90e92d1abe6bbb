using Microsoft.Playwright;
using Practice.E2E.Tests.Browsing;
using Practice.Service.Demo;
using static Microsoft.Playwright.Assertions;

namespace Practice.E2E.Tests;

/// <summary>The door.</summary>
[Collection(AppCollection.Name)]
public sealed class SignInTests(AppFixture app)
{
    [Fact]
    public async Task A_stranger_is_led_to_the_sign_in_and_then_to_where_she_was_going()
    {
        await using var visit = await app.Stranger(Look.Desktop);
        await visit.Go("/clients");
        await SignIn(visit.Page, DemoAccount.Default.Password);

        await Expect(visit.Page.GetByRole(AriaRole.Heading, new() { Name = "Clients" }))
            .ToBeVisibleAsync();
        Assert.Empty(visit.Faults);
    }

    [Fact]
    public async Task A_wrong_password_is_refused_in_words()
    {
        await using var visit = await app.Stranger(Look.Desktop);
        await visit.Go("/sign-in");
        await SignIn(visit.Page, "rice-and-jam");

        await Expect(visit.Page.GetByRole(AriaRole.Alert)).ToContainTextAsync("do not go together");
    }

    [Fact]
    public async Task After_signing_out_the_door_is_shut()
    {
        await using var visit = await app.Stranger(Look.Desktop);
        await visit.OpenDemo();
        var page = visit.Page;
        await page.GetByRole(AriaRole.Button, new() { Name = "Sign Robin Larkfield out" })
            .ClickAsync();
        await Expect(page.GetByLabel("Password")).ToBeVisibleAsync();

        await page.GotoAsync("/clients");
        await Expect(page.GetByLabel("Password")).ToBeVisibleAsync();
    }

    private static async Task SignIn(IPage page, string password)
    {
        await page.GetByLabel("E-mail address").FillAsync(DemoAccount.Default.Email);
        await page.GetByLabel("Password").FillAsync(password);
        await page.GetByRole(AriaRole.Button, new() { Name = "Sign in", Exact = true })
            .ClickAsync();
    }
}
