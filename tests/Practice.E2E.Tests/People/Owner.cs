using Microsoft.Extensions.DependencyInjection;
using Microsoft.Playwright;
using MimeKit;
using Practice.E2E.Tests.Browsing;
using Practice.Service.Hosting;
using static Microsoft.Playwright.Assertions;

namespace Practice.E2E.Tests.People;

/// <summary>What the tests of people have in common: an owner, and a look into the letters.</summary>
internal static class Owner
{
    public const string Email = "olive@lindenhof.example";
    public const string Password = "barley and lemon";

    /// <summary>Comes as the owner; founds the practice where nobody works yet.</summary>
    public static async Task<Visit> Comes(FreshApp app, Look look)
    {
        var visit = await app.Stranger(look);
        await visit.Go("/");
        if (await visit.Page.GetByLabel("Set-up code").CountAsync() > 0)
            await Found(visit.Page, app.Services.GetRequiredService<SetUpCode>().Text);
        else
            await SignIn(visit.Page, Email, Password);
        await Expect(Heading(visit.Page, "Today")).ToBeVisibleAsync();
        await visit.Settle();
        return visit;
    }

    public static async Task Found(IPage page, string code)
    {
        await page.GetByLabel("Set-up code").FillAsync(code);
        await page.GetByLabel("Name of the practice").FillAsync("Lindenhof Nutrition");
        await page.GetByLabel("Your name").FillAsync("Olive Owner");
        await page.GetByLabel("Your e-mail address").FillAsync(Email);
        await page.GetByLabel("Password").FillAsync(Password);
        await page.GetByRole(AriaRole.Button, new() { Name = "Found the practice" }).ClickAsync();
    }

    public static async Task SignIn(IPage page, string email, string password)
    {
        await page.GetByLabel("E-mail address").FillAsync(email);
        await page.GetByLabel("Password", new() { Exact = true }).FillAsync(password);
        await page.GetByRole(AriaRole.Button, new() { Name = "Sign in", Exact = true })
            .ClickAsync();
    }

    public static ILocator Heading(IPage page, string name) =>
        page.GetByRole(AriaRole.Heading, new() { Name = name, Level = 1 });

    /// <summary>The link in the letter to an address, as soon as the letter is there.</summary>
    public static async Task<string> LinkTo(FreshApp app, string address, string subject)
    {
        for (var left = 60; ; left--)
        {
            if (Directory.Exists(app.MailFolder))
                foreach (var file in Directory.GetFiles(app.MailFolder, "*.eml"))
                {
                    var letter = await MimeMessage.LoadAsync(file);
                    if (
                        letter.To.Mailboxes.Single().Address == address
                        && letter.Subject!.Contains(subject, StringComparison.Ordinal)
                    )
                        return letter
                            .TextBody!.Split('\n')
                            .Single(l => l.StartsWith("http", StringComparison.Ordinal))
                            .Trim();
                }
            Assert.True(left > 0, "The letter did not come.");
            await Task.Delay(TimeSpan.FromSeconds(1), TestContext.Current.CancellationToken);
        }
    }
}
