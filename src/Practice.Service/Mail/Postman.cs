using Microsoft.Extensions.Hosting;
using Microsoft.Extensions.Logging;
using Practice.Service.Desks;
using Practice.Store.Mail;

namespace Practice.Service.Mail;

/// <summary>Sends what waits in the outbox. Every replica has one; they share the outbox row by row.</summary>
public sealed partial class Postman(
    LetterStore letters,
    Carrier carrier,
    PracticeCalendar calendar,
    ILogger<Postman> log
) : BackgroundService
{
    private static readonly TimeSpan Round = TimeSpan.FromSeconds(3);

    /// <inheritdoc />
    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        using var round = new PeriodicTimer(Round);
        while (await Next(round, stoppingToken))
        {
            try
            {
                while (await letters.SendNext(calendar.Now, carrier.Carry, stoppingToken)) { }
            }
            catch (Exception e) when (e is not OperationCanceledException)
            {
                // the database may be away for a while: the letters are where they were
                Stopped(e);
            }
        }
    }

    private static async Task<bool> Next(PeriodicTimer round, CancellationToken cancel)
    {
        try
        {
            return await round.WaitForNextTickAsync(cancel);
        }
        catch (OperationCanceledException)
        {
            return false;
        }
    }

    [LoggerMessage(
        LogLevel.Warning,
        "The outbox could not be emptied; the next round tries again."
    )]
    private partial void Stopped(Exception e);
}
