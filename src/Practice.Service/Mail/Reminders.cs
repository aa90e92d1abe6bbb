using Microsoft.Extensions.Hosting;
using Microsoft.Extensions.Logging;
using NodaTime;
using Practice.Domain.Practices;
using Practice.Domain.Rehearsals;
using Practice.Service.Desks;
using Practice.Service.Hosting;
using Practice.Store;
using Practice.Store.Practices;
using Practice.Store.Rehearsals;

namespace Practice.Service.Mail;

/// <summary>
/// Reminds of the rehearsals whose first meal is near, as many days before it as each practice wants. Once it has begun
/// nobody is reminded any more.
/// </summary>
public sealed class Reminders(
    PracticeStore practices,
    RehearsalStore rehearsals,
    SendReminder send,
    PracticeCalendar calendar,
    Turn turn
)
{
    /// <summary>The longest from the first meal of a rehearsal to its run.</summary>
    private const int LongestPart = 14;

    /// <returns>How many letters were posted; null when another replica was at it.</returns>
    public async Task<int?> Run(CancellationToken cancel)
    {
        var posted = 0;
        var isOurs = await turn.Take(
            "practice.reminders",
            async () =>
            {
                foreach (var practiceId in await practices.All(cancel))
                    if (await practices.Find(practiceId, cancel) is { Value: var practice })
                        posted += await Of(practice, cancel);
            },
            cancel
        );
        return isOurs ? posted : null;
    }

    private async Task<int> Of(PracticeProfile practice, CancellationToken cancel)
    {
        if (practice.Defaults.ReminderDays is not (> 0 and var days))
            return 0;
        var today = calendar.Today;
        var desk = Desk.Of(practice);
        var posted = 0;
        foreach (
            var rehearsal in await rehearsals.Unreminded(
                practice.PracticeId,
                today,
                today.PlusDays(days + LongestPart),
                cancel
            )
        )
            if (
                IsNear(rehearsal, today, days)
                && await send.ByItself(desk, rehearsal, cancel) is Posted
            )
                posted++;
        return posted;
    }

    private static bool IsNear(Rehearsal rehearsal, LocalDate today, int days)
    {
        var firstMeal = rehearsal.Details.Part.FirstEatenOn(rehearsal.RunOn);
        return firstMeal > today && firstMeal <= today.PlusDays(days);
    }
}

/// <summary>Looks for rehearsals to remind of while people are awake, whichever replica comes first.</summary>
public sealed partial class RemindersByDay(
    Reminders reminders,
    PracticeCalendar calendar,
    ILogger<RemindersByDay> log
) : BackgroundService
{
    private static readonly LocalTime Morning = new(8, 0);
    private static readonly LocalTime Evening = new(20, 0);

    /// <inheritdoc />
    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        using var round = new PeriodicTimer(TimeSpan.FromMinutes(15));
        try
        {
            await Opening.Over(stoppingToken);
            do await Look(stoppingToken);
            while (await round.WaitForNextTickAsync(stoppingToken));
        }
        catch (OperationCanceledException)
        {
            // the program ends
        }
    }

    private async Task Look(CancellationToken cancel)
    {
        if (calendar.TimeNow < Morning || calendar.TimeNow > Evening)
            return;
        try
        {
            if (await reminders.Run(cancel) is > 0 and var posted)
                Reminded(posted);
        }
        catch (Exception e) when (e is not OperationCanceledException)
        {
            // the database may be away: the next round finds the same rehearsals
            Stopped(e);
        }
    }

    [LoggerMessage(LogLevel.Information, "Reminded of {Count} rehearsals.")]
    private partial void Reminded(int count);

    [LoggerMessage(LogLevel.Warning, "The reminders stopped; the next round goes on.")]
    private partial void Stopped(Exception e);
}
