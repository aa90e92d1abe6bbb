using Microsoft.EntityFrameworkCore;
using Npgsql;
using Practice.Domain.Caseload;
using Practice.Domain.Plans;
using Practice.Domain.Races;
using Practice.Store.Plans;
using Practice.Store.Races;

namespace Practice.Store.Tests.Plans;

public class PlanStoreTests(TwoPractices practices) : IClassFixture<TwoPractices>
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    private Guid Practice => practices.Ours.PracticeId;
    private PlanStore Plans => practices.Database.Get<PlanStore>();

    [Fact]
    public async Task A_version_reads_back_with_its_whole_plan()
    {
        var filed = await AddAsync(await RaceAsync());
        var read = await Plans.Find(Practice, filed.Value.Id, Cancel);
        Assert.Equivalent(filed.Value, read!.Value, strict: true);
    }

    [Fact]
    public async Task Versions_are_numbered_within_their_race_and_listed_newest_first()
    {
        var race = await RaceAsync();
        Assert.Equal(1, await Plans.NextNumber(Practice, race.Id, Cancel));
        await AddAsync(race);
        var second = await AddAsync(race, 2);
        Assert.Equal(3, await Plans.NextNumber(Practice, race.Id, Cancel));
        Assert.Equal(second.Value.Id, (await Plans.Latest(Practice, race.Id, Cancel))?.Value.Id);
        var rows = await Plans.Versions(Practice, race.Id, Cancel);
        Assert.Equal([2, 1], rows.Select(r => r.Number));
    }

    [Fact]
    public async Task Of_two_who_edit_the_same_draft_the_second_is_told()
    {
        var race = await RaceAsync();
        var filed = await AddAsync(race);
        var other = (await Plans.Find(Practice, filed.Value.Id, Cancel))!;
        filed.Value.Edit(Sample.Plan() with { Note = "mine" }, Sample.Now);
        other.Value.Edit(Sample.Plan() with { Note = "hers" }, Sample.Now);
        Assert.IsType<Saved<PlanVersion>>(await SaveAsync(other));
        var conflict = Assert.IsType<Conflict<PlanVersion>>(await SaveAsync(filed));
        Assert.Equal("hers", conflict.Theirs?.Value.Plan.Note);
    }

    [Fact]
    public async Task The_client_holds_the_newest_issued_version()
    {
        var race = await RaceAsync();
        Assert.Null(await Plans.Issued(Practice, race.Id, Cancel));
        var first = await AddAsync(race);
        first.Value.Issue("A. Tester", Sample.Now);
        await SaveAsync(first);
        await AddAsync(race, 2);
        Assert.Equal(1, (await Plans.Issued(Practice, race.Id, Cancel))?.Number);
    }

    [Theory]
    [InlineData("sealed_plan = ''")]
    [InlineData("status = 'Draft'")]
    [InlineData("issued_by = 'somebody else'")]
    public async Task An_issued_plan_never_changes_whatever_a_program_tries(string change)
    {
        var filed = await AddAsync(await RaceAsync());
        filed.Value.Issue("A. Tester", Sample.Now);
        await SaveAsync(filed);

        await using var db = practices.Database.Get<IDbContextFactory<PracticeDb>>().Open(Practice);
        var refusal = await Assert.ThrowsAsync<PostgresException>(() =>
#pragma warning disable EF1002 // the changes are written above
            db.Database.ExecuteSqlRawAsync(
                $"update plan_version set {change} where id = '{filed.Value.Id}'",
                Cancel
            )
#pragma warning restore EF1002
        );
        Assert.Equal(PostgresErrorCodes.CheckViolation, refusal.SqlState);
    }

    [Fact]
    public async Task An_issued_plan_can_be_withdrawn()
    {
        var filed = await AddAsync(await RaceAsync());
        filed.Value.Issue("A. Tester", Sample.Now);
        var issued = Assert.IsType<Saved<PlanVersion>>(await SaveAsync(filed)).Now;
        issued.Value.Withdraw("Wrong start time");
        Assert.True(await Plans.Withdraw(issued, Sample.Audit(Practice), Cancel));
        Assert.False(await Plans.Withdraw(issued, Sample.Audit(Practice), Cancel));
        var read = await Plans.Find(Practice, filed.Value.Id, Cancel);
        Assert.Equal(PlanStatus.Withdrawn, read?.Value.Status);
    }

    [Fact]
    public async Task A_version_whose_number_is_taken_is_not_filed()
    {
        var race = await RaceAsync();
        var first = await AddAsync(race);
        Assert.Null(await Plans.Add(Sample.Draft(race, 1), Sample.Audit(Practice), Cancel));
        var versions = await Plans.Versions(Practice, race.Id, Cancel);
        Assert.Equal([first.Value.Id], versions.Select(v => v.Id));
    }

    private async Task<Race> RaceAsync()
    {
        var race = Sample.Race(practices.OurClient);
        await practices.Database.Get<RaceStore>().Add(race, Sample.Audit(Practice), Cancel);
        return race;
    }

    private async Task<OnFile<PlanVersion>> AddAsync(Race race, int number = 1) =>
        await Plans.Add(Sample.Draft(race, number), Sample.Audit(Practice), Cancel)
        ?? throw new InvalidOperationException("The number is taken.");

    private Task<SaveOutcome<PlanVersion>> SaveAsync(OnFile<PlanVersion> version) =>
        Plans.Save(version, Sample.Audit(Practice), Cancel);
}
