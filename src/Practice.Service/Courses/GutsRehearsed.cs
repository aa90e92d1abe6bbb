using Practice.Domain.Course;
using Practice.Domain.Rehearsals;
using Practice.Service.Desks;
using Practice.Store.Rehearsals;

namespace Practice.Service.Courses;

/// <summary>What a client's reviewed rehearsals, for whatever race, tell of the gut on the move.</summary>
public sealed class GutsRehearsed(RehearsalStore rehearsals)
{
    internal async Task<GutRecord> Of(Desk desk, Guid clientId, CancellationToken cancel) =>
        RehearsedGut.Of(await rehearsals.OfClient(desk.PracticeId, clientId, cancel));
}
