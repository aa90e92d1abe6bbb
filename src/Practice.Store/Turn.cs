using Microsoft.EntityFrameworkCore;

namespace Practice.Store;

/// <summary>Lets one replica of many do what is to be done once.</summary>
public sealed class Turn
{
    private readonly IDbContextFactory<PracticeDb> _contexts;

    internal Turn(IDbContextFactory<PracticeDb> contexts) => _contexts = contexts;

    /// <summary>Does the work when nobody else is at it; PostgreSQL's advisory lock says so and ends with the connection.</summary>
    /// <returns>Whether it was done here.</returns>
    public async Task<bool> Take(string work, Func<Task> todo, CancellationToken cancel)
    {
        ArgumentNullException.ThrowIfNull(todo);
        await using var db = _contexts.CreateDbContext();
        await using var held = await db.Database.BeginTransactionAsync(cancel);
        var got = await db
            .Database.SqlQuery<bool>(
                $"select pg_try_advisory_xact_lock(hashtext({work})) as \"Value\""
            )
            .SingleAsync(cancel);
        if (got)
            await todo();
        return got;
    }
}
