using System.Threading.Channels;
using Microsoft.Extensions.Hosting;
using Practice.Domain.Plans;
using Practice.Service.Desks;
using Practice.Service.Plans;

namespace Practice.Service.Demo;

/// <summary>A plan of the demo practice still to be made.</summary>
internal sealed record DemoPlanOrder(Desk Desk, Guid RaceId, DemoClient Client);

/// <summary>
/// Makes the demo practice's plans behind the first page: real plans from the real planner take a second or two each.
/// </summary>
public sealed class DemoPlans(DraftPlan draft, OpenPlan open, IssuePlan issue) : BackgroundService
{
    private readonly Channel<DemoPlanOrder> _orders = Channel.CreateUnbounded<DemoPlanOrder>();

    internal void Queue(DemoPlanOrder order) => _orders.Writer.TryWrite(order);

    /// <inheritdoc />
    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        await foreach (var order in _orders.Reader.ReadAllAsync(stoppingToken))
            await Make(order, stoppingToken);
    }

    private async Task Make(DemoPlanOrder order, CancellationToken cancel)
    {
        var outcome = await draft.Run(
            order.Desk,
            order.RaceId,
            order.Client.Choices,
            MenuStyle.Vary,
            progress: null,
            cancel
        );
        if (
            order.Client.Plan == DemoPlan.Issued
            && outcome is Drafted { VersionId: var id }
            && await open.Run(order.Desk, id, cancel) is { } file
        )
            await issue.Run(order.Desk, file.Version, cancel);
    }
}
