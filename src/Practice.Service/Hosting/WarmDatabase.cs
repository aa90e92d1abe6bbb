using Microsoft.Extensions.Hosting;
using Practice.Store;

namespace Practice.Service.Hosting;

/// <summary>
/// Gets ready what every question to the database needs, as soon as nobody waits for the sign-in page any more, which does
/// without.
/// </summary>
internal sealed class WarmDatabase : BackgroundService
{
    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        await Opening.CanSignIn(stoppingToken);
        PracticeDatabase.WarmUp();
    }
}
