using Microsoft.Extensions.Hosting;
using Microsoft.Extensions.Logging;
using NodaTime;
using Practice.Domain.Clients;
using Practice.Domain.Practices;
using Practice.Service.Desks;
using Practice.Store;
using Practice.Store.Clients;
using Practice.Store.Practices;

namespace Practice.Service.Privacy;

/// <summary>
/// Erases clients who have been quiet for as long as their practice keeps them: no race, no weighing, no consent since.
/// A practice that set no time keeps everybody; a legal hold keeps its client.
/// </summary>
public sealed class Retention(
    PracticeStore practices,
    ClientStore clients,
    PracticeCalendar calendar,
    Turn turn
)
{
    /// <returns>How many were erased; null when another replica was at it.</returns>
    public async Task<int?> Run(CancellationToken cancel)
    {
        var erased = 0;
        var isOurs = await turn.Take(
            "practice.retention",
            async () =>
            {
                foreach (var practiceId in await practices.All(cancel))
                    erased += await Of(practiceId, cancel);
            },
            cancel
        );
        return isOurs ? erased : null;
    }

    private async Task<int> Of(Guid practiceId, CancellationToken cancel)
    {
        var practice = await practices.Find(practiceId, cancel);
        if (practice?.Value.Defaults.KeptYears is not { } years)
            return 0;
        var before = calendar.Today.PlusYears(-years);
        var erased = 0;
        foreach (var client in await clients.WithoutRaceSince(practiceId, before, cancel))
            if (LastSeen(client) < before && await clients.Erase(client.Id, Note(client), cancel))
                erased++;
        return erased;
    }

    private LocalDate LastSeen(Client client) =>
        new[]
        {
            client.LatestMass?.On ?? LocalDate.MinIsoValue,
            client.SweatLog.IsEmpty ? LocalDate.MinIsoValue : client.SweatLog[^1].On,
            client.Consents.IsEmpty ? LocalDate.MinIsoValue : client.Consents[^1].On,
            RegisteredOn(client),
        }.Max();

    /// <summary>The key of a client bears the moment it was made: its first 48 bits are milliseconds (RFC 9562, version 7).</summary>
    private LocalDate RegisteredOn(Client client)
    {
        Span<byte> key = stackalloc byte[16];
        client.Id.TryWriteBytes(key, bigEndian: true, out _);
        var ms = 0L;
        foreach (var part in key[..6])
            ms = (ms << 8) | part;
        return calendar.DayOf(Instant.FromUnixTimeMilliseconds(ms));
    }

    private AuditEntry Note(Client client) =>
        new()
        {
            PracticeId = client.PracticeId,
            At = calendar.Now,
            By = "Retention",
            What = "client-erased",
            About = client.Id,
            Detail = "The time the practice keeps quiet records was over.",
        };
}

/// <summary>Runs the retention once a night, whichever replica comes first.</summary>
public sealed partial class NightlyRetention(
    Retention retention,
    PracticeCalendar calendar,
    ILogger<NightlyRetention> log
) : BackgroundService
{
    private static readonly LocalTime Hour = new(3, 0);

    /// <inheritdoc />
    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        while (!stoppingToken.IsCancellationRequested)
        {
            try
            {
                await Task.Delay(UntilNext(), stoppingToken);
                if (await retention.Run(stoppingToken) is > 0 and var erased)
                    Ended(erased);
            }
            catch (OperationCanceledException)
            {
                return;
            }
            catch (Exception e)
            {
                // the database may be away: tomorrow night is soon enough
                Stopped(e);
            }
        }
    }

    private TimeSpan UntilNext()
    {
        var wait = (Period.Between(calendar.TimeNow, Hour, PeriodUnits.Minutes)).Minutes;
        return TimeSpan.FromMinutes(wait > 0 ? wait : wait + (24 * 60));
    }

    [LoggerMessage(LogLevel.Information, "Retention erased {Count} quiet clients.")]
    private partial void Ended(int count);

    [LoggerMessage(LogLevel.Warning, "Retention stopped; it runs again next night.")]
    private partial void Stopped(Exception e);
}
