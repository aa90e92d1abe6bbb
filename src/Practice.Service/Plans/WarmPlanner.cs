using Microsoft.Extensions.Hosting;
using Practice.Planner;

namespace Practice.Service.Plans;

/// <summary>
/// Loads the solver's native library and compiles the hot paths before the first practitioner waits for them.
/// </summary>
internal sealed class WarmPlanner(MenuPlanner planner, Stove stove) : BackgroundService
{
    protected override Task ExecuteAsync(CancellationToken stoppingToken) =>
        stove.Run(() => planner.WarmUp(stoppingToken));
}
