using System.Collections.Immutable;
using Microsoft.EntityFrameworkCore;
using Practice.Domain.Caseload;

namespace Practice.Store.Audit;

/// <summary>Names for the keys that lines of audit are about. What is not on file any more has none.</summary>
internal static class AuditSubjects
{
    public static async Task<ImmutableDictionary<Guid, AuditSubject>> Subjects(
        this PracticeDb db,
        IReadOnlyCollection<Guid> keys,
        CancellationToken cancel
    )
    {
        var named = ImmutableDictionary.CreateBuilder<Guid, AuditSubject>();
        foreach (
            var c in await db
                .Clients.Where(c => keys.Contains(c.Id))
                .Select(c => new { c.Id, Name = c.GivenName + " " + c.FamilyName })
                .ToListAsync(cancel)
        )
            named[c.Id] = new AuditSubject(SubjectKind.Client, c.Name);
        var races =
            from race in db.Races
            join client in db.Clients on race.ClientId equals client.Id
            select new
            {
                race.Id,
                Name = race.Name + ", " + client.GivenName + " " + client.FamilyName,
            };
        foreach (var r in await races.Where(r => keys.Contains(r.Id)).ToListAsync(cancel))
            named[r.Id] = new AuditSubject(SubjectKind.Race, r.Name);
        var plans =
            from plan in db.PlanVersions
            join race in races on plan.RaceId equals race.Id
            where keys.Contains(plan.Id)
            select new
            {
                plan.Id,
                plan.Number,
                race.Name,
            };
        foreach (var p in await plans.ToListAsync(cancel))
            named[p.Id] = new AuditSubject(SubjectKind.Plan, $"version {p.Number} for {p.Name}");
        foreach (
            var m in await db
                .Users.Where(a => a.PracticeId == db.Practice && keys.Contains(a.Id))
                .Select(a => new { a.Id, a.DisplayName })
                .ToListAsync(cancel)
        )
            named[m.Id] = new AuditSubject(SubjectKind.Member, m.DisplayName);
        foreach (var f in await db.OwnFoods.Where(f => keys.Contains(f.Id)).ToListAsync(cancel))
            named[f.Id] = new AuditSubject(SubjectKind.Food, f.Sheet.Name);
        return named.ToImmutable();
    }
}
