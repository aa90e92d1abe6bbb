using NodaTime;
using Practice.Domain.Caseload;
using Practice.Domain.Races;
using Practice.Domain.Rehearsals;
using Practice.Store.Races;
using Practice.Store.Rehearsals;
using Practice.Store.Tests.Documents;

namespace Practice.Store.Tests.Rehearsals;

public class RehearsalStoreTests(TwoPractices practices) : IClassFixture<TwoPractices>
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    private Guid Practice => practices.Ours.PracticeId;
    private RehearsalStore Rehearsals => practices.Database.Get<RehearsalStore>();

    [Fact]
    public void The_sample_leaves_nothing_at_its_default_so_that_nothing_can_get_lost_unseen()
    {
        Assert.Empty(Unset.In(SampleRehearsal.Details(), "details"));
        Assert.Empty(Unset.In(SampleRehearsal.Feedback(), "feedback"));
        Assert.Empty(Unset.In(SampleRehearsal.Decision(), "decision"));
    }

    [Fact]
    public async Task A_reviewed_rehearsal_reads_back_as_it_was()
    {
        var filed = await AddAsync(await RaceAsync());
        filed.Value.Tell(SampleRehearsal.Feedback());
        filed.Value.Review(SampleRehearsal.Decision());
        await SaveAsync(filed);

        var read = await Rehearsals.Find(Practice, filed.Value.Id, Cancel);

        Assert.Equivalent(filed.Value, read!.Value, strict: true);
    }

    [Fact]
    public async Task A_cancelled_rehearsal_keeps_its_reason_and_leaves_the_lists_in_brief()
    {
        var race = await RaceAsync();
        var filed = await AddAsync(race);
        filed.Value.Cancel("A cold");
        await SaveAsync(filed);

        var kept = Assert.Single(await Rehearsals.OfRace(Practice, race.Id, Cancel));

        Assert.Equal("A cold", kept.CancelledBecause);
        Assert.Empty(await Rehearsals.OfRaces(Practice, [race.Id], Cancel));
    }

    [Fact]
    public async Task Rehearsals_of_a_race_come_earliest_first()
    {
        var race = await RaceAsync();
        var full = await AddAsync(race, new LocalDate(2026, 9, 27));
        var partial = await AddAsync(race, new LocalDate(2026, 9, 13));

        var ofRace = await Rehearsals.OfRace(Practice, race.Id, Cancel);
        var ofClient = await Rehearsals.OfClient(Practice, race.ClientId, Cancel);

        Assert.Equal([partial.Value.Id, full.Value.Id], ofRace.Select(r => r.Id));
        Assert.Subset(ofClient.Select(r => r.Id).ToHashSet(), ofRace.Select(r => r.Id).ToHashSet());
    }

    [Fact]
    public async Task What_was_told_waits_to_be_read_until_it_is_reviewed_and_a_warning_sign_longer()
    {
        var race = await RaceAsync();
        var harmless = await AddAsync(race);
        var warning = await AddAsync(race);
        harmless.Value.Tell(SampleRehearsal.Feedback() with { WarningSigns = [] });
        warning.Value.Tell(SampleRehearsal.Feedback());
        (harmless, warning) = (await SaveAsync(harmless), await SaveAsync(warning));
        Assert.Equal(
            [(harmless.Value.Id, false), (warning.Value.Id, true)],
            (await ToReadAsync(race)).Select(r => (r.RehearsalId, r.Warns))
        );

        harmless.Value.Review(SampleRehearsal.Decision());
        warning.Value.Review(SampleRehearsal.Decision());
        await SaveAsync(harmless);
        await SaveAsync(warning);

        Assert.Equal(
            new RehearsalRow(
                warning.Value.Id,
                race.Id,
                race.ClientId,
                RehearsalKind.Full,
                warning.Value.RunOn,
                RehearsalStatus.Reviewed,
                Warns: true
            ),
            Assert.Single(await ToReadAsync(race))
        );
        var read = await Rehearsals.WithWarningSigns(Practice, [race.ClientId], Cancel);
        Assert.Contains(read, r => r.Id == warning.Value.Id);
        Assert.DoesNotContain(read, r => r.Id == harmless.Value.Id);
    }

    [Fact]
    public async Task Feedback_that_was_corrected_meanwhile_is_not_overwritten()
    {
        var filed = await AddAsync(await RaceAsync());
        var other = (await Rehearsals.Find(Practice, filed.Value.Id, Cancel))!;
        other.Value.Tell(SampleRehearsal.Feedback() with { Note = "hers" });
        filed.Value.Tell(SampleRehearsal.Feedback() with { Note = "mine" });
        await SaveAsync(other);

        var outcome = await Rehearsals.Save(filed, Sample.Audit(Practice), Cancel);

        var conflict = Assert.IsType<Conflict<Rehearsal>>(outcome);
        Assert.Equal("hers", conflict.Theirs?.Value.Feedback?.Note);
    }

    [Fact]
    public async Task Another_practice_sees_nothing_of_it()
    {
        var filed = await AddAsync(await RaceAsync());
        Assert.Null(await Rehearsals.Find(practices.Theirs.PracticeId, filed.Value.Id, Cancel));
        Assert.Empty(
            await Rehearsals.OfClient(practices.Theirs.PracticeId, filed.Value.ClientId, Cancel)
        );
    }

    [Fact]
    public async Task The_background_of_a_client_reads_back_as_it_was()
    {
        var store = practices.Database.Get<BackgroundStore>();
        var client = practices.OurClient.Id;
        Assert.Null(await store.Of(Practice, client, Cancel));
        var background = RehearsalBackground.Of(Practice, client);
        background.RunLongOn([IsoDayOfWeek.Saturday, IsoDayOfWeek.Wednesday]);
        background.Block(new(2026, 9, 4), new(2026, 9, 6), BlockedBy.Travel);
        background.Remember(new() { PastTrouble = ["raisins"], EatenWeekly = ["banana"] });

        await store.Add(background, Sample.Audit(Practice), Cancel);

        var read = await store.Of(Practice, client, Cancel);
        Assert.Equivalent(background, read!.Value, strict: true);
    }

    private async Task<IEnumerable<RehearsalRow>> ToReadAsync(Race race) =>
        (await Rehearsals.ToRead(Practice, Cancel)).Where(r => r.RaceId == race.Id);

    private async Task<Race> RaceAsync()
    {
        var race = Sample.Race(practices.OurClient);
        await practices.Database.Get<RaceStore>().Add(race, Sample.Audit(Practice), Cancel);
        return race;
    }

    private Task<OnFile<Rehearsal>> AddAsync(Race race, LocalDate? runOn = null) =>
        Rehearsals.Add(SampleRehearsal.Booked(race, runOn), Sample.Audit(Practice), Cancel);

    private async Task<OnFile<Rehearsal>> SaveAsync(OnFile<Rehearsal> rehearsal) =>
        Assert
            .IsType<Saved<Rehearsal>>(
                await Rehearsals.Save(rehearsal, Sample.Audit(Practice), Cancel)
            )
            .Now;
}
