using Practice.Domain.Caseload;
using Practice.Domain.Races;

namespace Practice.Store.Races;

internal static class RaceRows
{
    /// <summary>Races, earliest first, with their client's name and latest plan, read in one query.</summary>
    public static IQueryable<RaceRow> Rows(this PracticeDb db, IQueryable<Race> races) =>
        from race in races
        join client in db.Clients on race.ClientId equals client.Id
        orderby race.Start, race.Id
        select new RaceRow(
            race.Id,
            client.Id,
            client.GivenName + " " + client.FamilyName,
            race.Name,
            race.Discipline,
            race.DistanceKm,
            race.Start,
            race.ZoneId,
            db.PlanVersions.Where(p => p.RaceId == race.Id)
                .OrderByDescending(p => p.Number)
                .Select(p => new PlanMark(p.Id, p.Number, p.Status))
                .FirstOrDefault()
        )
        {
            ResponsibleId = client.ResponsibleId,
        };
}
