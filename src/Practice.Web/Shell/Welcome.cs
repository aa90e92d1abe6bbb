using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using Practice.Service.Demo;
using Practice.Service.Hosting;

namespace Practice.Web.Shell;

/// <summary>Says on the console where the practice is open, and how to get in where it is the demo.</summary>
internal static class Welcome
{
    public static void SayWelcome(this WebApplication app) =>
        app.Lifetime.ApplicationStarted.Register(() =>
        {
            var addresses = app
                .Services.GetRequiredService<IServer>()
                .Features.Get<IServerAddressesFeature>()
                ?.Addresses;
            Console.WriteLine();
            Console.WriteLine($"  Practice is open at {string.Join(" and ", addresses ?? [])}");
            if (app.Services.GetRequiredService<PracticeSettings>().Demo)
                Console.WriteLine(
                    $"  Demo sign-in: {DemoAccount.Default.Email}, password {DemoAccount.Default.Password}"
                );
            Console.WriteLine();
        });
}
