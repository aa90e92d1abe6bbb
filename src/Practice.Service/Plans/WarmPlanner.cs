using Microsoft.Extensions.Hosting;
using Practice.Planner;
using Practice.Service.Hosting;

namespace Practice.Service.Plans;

/// <summary>
/// Loads the solver's native library and compiles the hot paths before the first practitioner waits for them.
/// </summary>
internal sealed class WarmPlanner(MenuPlanner planner, Stove stove) : BackgroundService
{
    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        await Opening.Over(stoppingToken);
        await stove.Run(() => planner.WarmUp(stoppingToken));
    }
}
