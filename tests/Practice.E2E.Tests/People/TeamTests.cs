using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using Practice.E2E.Tests.Browsing;
using static Microsoft.Playwright.Assertions;
using static Practice.E2E.Tests.People.Owner;

namespace Practice.E2E.Tests.People;

/// <summary>Colleagues: invited, let in, held to their role, and let go.</summary>
public sealed class TeamTests(FreshApp app) : IClassFixture<FreshApp>
{
    private const string Aide = "amy@lindenhof.example";

    [Fact]
    public async Task A_colleague_comes_in_by_the_letter_is_held_to_her_role_and_can_be_let_go()
    {
        await using var owner = await Comes(app, Look.Desktop);
        await Invite(owner);
        Assert.Empty((await owner.Page.RunAxe()).Violations);

        await using var aide = await app.Stranger(Look.Desktop);
        var link = await LinkTo(app, Aide, "your seat");
        await aide.Go(link);
        await Expect(Heading(aide.Page, "Your seat at Lindenhof Nutrition")).ToBeVisibleAsync();
        await aide.Page.GetByLabel("Your name").FillAsync("Amy Aide");
        await aide.Page.GetByLabel("Password").FillAsync("oats and sunshine");
        await aide.Page.GetByRole(AriaRole.Button, new() { Name = "Take the seat" }).ClickAsync();
        await Expect(Heading(aide.Page, "Today")).ToBeVisibleAsync();

        await aide.Go("/practice/team");
        await Expect(aide.Page.GetByText("Amy Aide (you)")).ToBeVisibleAsync();
        await Expect(aide.Page.GetByRole(AriaRole.Combobox)).ToHaveCountAsync(1); // the finder
        await aide.Go("/practice/mail");
        await Expect(aide.Page.GetByText("This is the owner's")).ToBeVisibleAsync();

        // the link works once
        await using var second = await app.Stranger(Look.Desktop);
        await second.Go(link);
        await Expect(Heading(second.Page, "This link leads nowhere")).ToBeVisibleAsync();

        await owner.Go("/practice/team");
        await owner
            .Page.GetByRole(AriaRole.Button, new() { Name = "Deactivate Amy Aide" })
            .ClickAsync();
        await Expect(
                owner.Page.GetByRole(AriaRole.Button, new() { Name = "Let in again: Amy Aide" })
            )
            .ToBeVisibleAsync();
        await aide.Go("/clients");
        await Expect(Heading(aide.Page, "Sign in")).ToBeVisibleAsync();
        await SignIn(aide.Page, Aide, "oats and sunshine");
        await Expect(aide.Page.GetByRole(AriaRole.Alert)).ToBeVisibleAsync();
    }

    [Fact]
    public async Task The_only_owner_can_not_leave_the_practice_without_one()
    {
        await using var owner = await Comes(app, Look.Desktop);
        await owner.Go("/practice/team");
        await owner
            .Page.GetByRole(AriaRole.Button, new() { Name = "Deactivate Olive Owner" })
            .ClickAsync();
        await Expect(owner.Page.GetByText("A practice keeps an owner")).ToBeVisibleAsync();
        await owner.Go("/clients");
        await Expect(Heading(owner.Page, "Clients")).ToBeVisibleAsync();
    }

    [Fact]
    public async Task A_forgotten_password_is_replaced_through_a_letter_and_ends_every_session()
    {
        await using var owner = await Comes(app, Look.Desktop);
        await using var elsewhere = await app.Stranger(Look.Phone);
        await elsewhere.Go("/sign-in");
        await elsewhere
            .Page.GetByRole(AriaRole.Link, new() { Name = "Forgot the password?" })
            .ClickAsync();
        // the sign-in has a field of the same name
        await Expect(Heading(elsewhere.Page, "Choose a new password")).ToBeVisibleAsync();
        await elsewhere.Page.GetByLabel("E-mail address").FillAsync(Email);
        await elsewhere
            .Page.GetByRole(AriaRole.Button, new() { Name = "Send the letter" })
            .ClickAsync();
        await elsewhere.Go(await LinkTo(app, Email, "choose a new password"));
        await elsewhere.Page.GetByLabel("New password").FillAsync(Password);
        await elsewhere
            .Page.GetByRole(AriaRole.Button, new() { Name = "Set the password" })
            .ClickAsync();
        await Expect(elsewhere.Page.GetByRole(AriaRole.Status)).ToContainTextAsync("signed out");

        await owner.Page.GotoAsync("/clients");
        await Expect(Heading(owner.Page, "Sign in")).ToBeVisibleAsync();
        await SignIn(owner.Page, Email, Password);
        await Expect(Heading(owner.Page, "Clients")).ToBeVisibleAsync();
    }

    private static async Task Invite(Visit owner)
    {
        await owner.Go("/practice/team");
        await owner.Page.GetByLabel("E-mail address").FillAsync(Aide);
        await owner.Page.GetByLabel("As", new() { Exact = true }).SelectOptionAsync("Assistant");
        await owner
            .Page.GetByRole(AriaRole.Button, new() { Name = "Send the invitation" })
            .ClickAsync();
        await Expect(owner.Page.GetByRole(AriaRole.Status).First)
            .ToContainTextAsync("in the outbox");
    }
}
