using System.Collections.Concurrent;
using NodaTime;
using Practice.Service.Desks;
using Practice.Store.Audit;

namespace Practice.Service.Audit;

/// <summary>
/// Notes who looked into whose health record. Working on a client opens her pages many times over: one line a quarter
/// of an hour says as much and can still be read.
/// </summary>
public sealed class RecordReads(AuditLog audit, PracticeCalendar calendar)
{
    private static readonly Duration OneSitting = Duration.FromMinutes(15);
    private const int Remembered = 10_000;

    private readonly ConcurrentDictionary<(Guid Account, Guid Client), Instant> _noted = [];

    internal async Task Note(Desk desk, Guid clientId, CancellationToken cancel)
    {
        var now = calendar.Now;
        var who = (desk.AccountId, clientId);
        if (_noted.TryGetValue(who, out var last) && now - last < OneSitting)
            return;
        if (_noted.Count > Remembered)
            _noted.Clear();
        _noted[who] = now;
        await audit.Note(desk.Note("record-read", clientId, now), cancel);
    }
}
