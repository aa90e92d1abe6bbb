using System.Threading.Channels;
using Microsoft.Extensions.Hosting;
using Microsoft.Extensions.Logging;
using Practice.Domain.Caseload;
using Practice.Domain.Plans;
using Practice.Service.Desks;
using Practice.Service.Hosting;
using Practice.Service.Plans;

namespace Practice.Service.Demo;

/// <summary>A plan of the demo practice still to be made.</summary>
internal sealed record DemoPlanOrder(Desk Desk, Guid RaceId, DemoClient Client);

/// <summary>
/// Makes the demo practice's plans behind the first page: real plans from the real planner take a second or two each.
/// </summary>
public sealed partial class DemoPlans(
    DraftPlan draft,
    OpenPlan open,
    Kitchen kitchen,
    SaveDraft save,
    IssuePlan issue,
    DemoCourses courses,
    DemoRehearsals rehearsals,
    UnfinishedDemo unfinished,
    PracticeSettings settings,
    ILogger<DemoPlans> log
) : BackgroundService
{
    private readonly Channel<DemoPlanOrder> _orders = Channel.CreateUnbounded<DemoPlanOrder>();

    private int _open;

    /// <summary>Whether every plan that was asked for is made.</summary>
    public bool IsDone => Volatile.Read(ref _open) == 0;

    internal void Queue(DemoPlanOrder order)
    {
        Interlocked.Increment(ref _open);
        _orders.Writer.TryWrite(order);
    }

    /// <inheritdoc />
    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        if (settings.Demo && IsDone)
            await Try(Resume, stoppingToken);
        await foreach (var order in _orders.Reader.ReadAllAsync(stoppingToken))
        {
            await Try(cancel => Make(order, cancel), stoppingToken);
            Interlocked.Decrement(ref _open);
        }
    }

    private async Task Try(Func<CancellationToken, Task> work, CancellationToken cancel)
    {
        try
        {
            await work(cancel);
        }
        catch (Exception e) when (e is not OperationCanceledException)
        {
            // the database may be away: a demo is no reason to end the program
            Stopped(e);
        }
    }

    // a first run that was stopped early left plans unmade
    private async Task Resume(CancellationToken cancel)
    {
        await Opening.Over(cancel);
        foreach (var order in await unfinished.Orders(cancel))
            Queue(order);
    }

    private async Task Make(DemoPlanOrder order, CancellationToken cancel)
    {
        var (desk, race, client) = order;
        await courses.Plan(desk, race, cancel);
        if (
            await draft.Run(desk, race, client.Choices, MenuStyle.Vary, cancel)
                is not Drafted { VersionId: var id }
            || await open.Run(desk, id, cancel) is not { } file
        )
            return;
        var menu = await kitchen.Build(file, file.Version.Value.Plan, progress: null, cancel);
        var plan = file.Version.Value.Plan with { Days = menu.Days };
        if (
            await save.Run(desk, file.Version, plan, cancel)
            is not Saved<PlanVersion> { Now: var saved }
        )
            return;
        if (client.Plan == DemoPlan.Issued)
            await issue.Run(desk, saved, cancel);
        await rehearsals.Make(desk, file.Client.Id, race, saved.Value, client.Rehearsals, cancel);
    }

    [LoggerMessage(
        LogLevel.Warning,
        "A plan of the demo practice was not made; the next start makes it."
    )]
    private partial void Stopped(Exception e);
}
