using System.Data.Common;
using Microsoft.EntityFrameworkCore;
using Npgsql;
using Practice.Web.Parts.Saving;

namespace Practice.Web.Tests.Parts;

public class OutageTests
{
    private sealed class Note
    {
        public int Id { get; init; }
    }

    /// <summary>A context whose server is not there.</summary>
    private sealed class Notes : DbContext
    {
        public DbSet<Note> All => Set<Note>();

        protected override void OnConfiguring(DbContextOptionsBuilder optionsBuilder) =>
            optionsBuilder.UseNpgsql("Host=127.0.0.1;Port=1;Username=nobody;Database=none");
    }

    private static CancellationToken Cancel => Xunit.TestContext.Current.CancellationToken;

    [Fact]
    public async Task A_server_that_is_not_there_is_known_whatever_EF_wraps_around_it()
    {
        await using var db = new Notes();
        var asking = await Assert.ThrowsAnyAsync<Exception>(() => db.All.ToListAsync(Cancel));
        db.Add(new Note());
        var saving = await Assert.ThrowsAnyAsync<Exception>(() => db.SaveChangesAsync(Cancel));

        // what makes the test worth having: neither is the driver's own exception
        Assert.False(asking is DbException || saving is DbException);
        Assert.True(Outage.IsBehind(asking));
        Assert.True(Outage.IsBehind(saving));
    }

    [Theory]
    [InlineData(PostgresErrorCodes.AdminShutdown, true)]
    [InlineData(PostgresErrorCodes.CannotConnectNow, true)]
    [InlineData(PostgresErrorCodes.TooManyConnections, true)]
    [InlineData(PostgresErrorCodes.UniqueViolation, false)]
    [InlineData(PostgresErrorCodes.InsufficientPrivilege, false)]
    public void A_server_that_refuses_for_good_is_no_outage(string state, bool isOutage) =>
        Assert.Equal(
            isOutage,
            Outage.IsBehind(
                new DbUpdateException("not saved", new PostgresException("no", "ERROR", "", state))
            )
        );

    [Fact]
    public void A_mistake_of_ours_is_no_outage() =>
        Assert.False(
            Outage.IsBehind(new InvalidOperationException("no", new ArgumentException("no")))
        );
}
