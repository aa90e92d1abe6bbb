using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using Practice.Service.Demo;
using Practice.Service.Hosting;
using Practice.Service.Practices;
using Practice.Web.Features.Account.Begin;

namespace Practice.Web.Shell;

/// <summary>Says on the console where the practice is open, and how to get in.</summary>
internal static class Welcome
{
    public static async Task SayWelcome(this WebApplication app)
    {
        var isFounded = await app.Services.GetRequiredService<Installation>().IsFounded(default);
        app.Lifetime.ApplicationStarted.Register(() =>
        {
            var addresses = app
                .Services.GetRequiredService<IServer>()
                .Features.Get<IServerAddressesFeature>()
                ?.Addresses;
            Console.WriteLine();
            Console.WriteLine($"  Practice is open at {string.Join(" and ", addresses ?? [])}");
            if (!isFounded)
                Console.WriteLine(
                    $"  Found the practice: {addresses?.FirstOrDefault()}{FirstRun.Address}?code={app.Services.GetRequiredService<SetUpCode>().Text}"
                );
            else if (app.Services.GetRequiredService<PracticeSettings>().Demo)
                Console.WriteLine(
                    $"  Demo sign-in: {DemoAccount.Default.Email}, password {DemoAccount.Default.Password}"
                );
            Console.WriteLine();
        });
    }
}
