using System.Data.Common;
using Microsoft.EntityFrameworkCore.Diagnostics;
using Npgsql;

namespace Practice.Store.RowSecurity;

/// <summary>
/// Tells PostgreSQL at each opening of a connection whose rows may be seen. It is told every time, also when it is
/// "nobody's", so a pooled connection never carries over what it was told before.
/// </summary>
internal sealed class TenantConnection : DbConnectionInterceptor
{
    public override void ConnectionOpened(DbConnection connection, ConnectionEndEventData eventData)
    {
        using var tell = Tell(connection, eventData);
        tell.ExecuteNonQuery();
    }

    public override async Task ConnectionOpenedAsync(
        DbConnection connection,
        ConnectionEndEventData eventData,
        CancellationToken cancellationToken = default
    )
    {
        await using var tell = Tell(connection, eventData);
        await tell.ExecuteNonQueryAsync(cancellationToken);
    }

    private static NpgsqlCommand Tell(DbConnection connection, ConnectionEndEventData eventData)
    {
        var db = (PracticeDb)eventData.Context!;
        var practice = db.Practice == Guid.Empty ? "" : db.Practice.ToString();
        return new NpgsqlCommand(
            "select set_config('practice.id', $1, false), set_config('practice.door', $2, false)",
            (NpgsqlConnection)connection
        )
        {
            Parameters =
            {
                new() { Value = practice },
                new() { Value = db.AtTheDoor },
            },
        };
    }
}
