using Practice.Service.Accounts;

namespace Practice.Web.Shell;

/// <summary>What an operator asks of the program instead of starting it.</summary>
internal static class OperatorCommands
{
    /// <returns>How it ended, for the shell; null when nothing was asked and the program is to start.</returns>
    public static async Task<int?> RunCommand(this WebApplication app, string[] args)
    {
        if (args is not ["reset-link", .. var rest])
            return null;
        if (rest is not [var email])
        {
            await Console.Error.WriteLineAsync("Say whose: reset-link owner@practice.example");
            return 2;
        }

        await using var scope = app.Services.CreateAsyncScope();
        var print = scope.ServiceProvider.GetRequiredService<PrintResetLink>();
        if (await print.Run(email, default) is not { } link)
        {
            await Console.Error.WriteLineAsync($"Nobody at work signs in with {email}.");
            return 1;
        }

        Console.WriteLine(
            "A new password can be chosen here, once, within two hours"
                + (link.StartsWith('/') ? ", below the address of the program:" : ":")
        );
        Console.WriteLine(link);
        return 0;
    }
}
