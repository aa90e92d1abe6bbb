using Microsoft.Extensions.Diagnostics.HealthChecks;
using Npgsql;

namespace Practice.Store;

/// <summary>Healthy when the database answers a question as the application's role.</summary>
internal sealed class DatabaseHealth(NpgsqlDataSource source) : IHealthCheck
{
    public async Task<HealthCheckResult> CheckHealthAsync(
        HealthCheckContext context,
        CancellationToken cancellationToken = default
    )
    {
        try
        {
            await using var question = source.CreateCommand("select 1");
            await question.ExecuteScalarAsync(cancellationToken);
            return HealthCheckResult.Healthy();
        }
        catch (NpgsqlException e)
        {
            return HealthCheckResult.Unhealthy("The database does not answer.", e);
        }
    }
}
