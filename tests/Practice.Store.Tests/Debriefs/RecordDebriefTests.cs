using NodaTime;
using Practice.Domain.Debriefs;
using Practice.Domain.Races;
using Practice.Service.Clients;
using Practice.Service.Debriefs;
using Practice.Service.Races;
using Practice.Service.Today;
using Practice.TestSupport;

namespace Practice.Store.Tests.Debriefs;

public class RecordDebriefTests(TestPractice practice) : IClassFixture<TestPractice>
{
    private static readonly DebriefReport Report = new()
    {
        FinishTime = Duration.FromMinutes(95),
        WorstGut = 2,
        NextTime = "Start slower.",
    };

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    /// <summary>A half marathon two days before the practice's now.</summary>
    private async Task<(Guid Client, Guid Race)> RaceJustRun()
    {
        var client = await practice.NewClient();
        var race = await practice
            .Get<EnterRace>()
            .Run(
                practice.Practitioner,
                client,
                new RaceDetails
                {
                    Name = "Spring Half",
                    DistanceKm = 21.0975m,
                    Start = new LocalDateTime(2027, 3, 30, 9, 0),
                    ZoneId = "Europe/London",
                },
                Cancel
            );
        return (client, race);
    }

    private async Task<DebriefOutcome> Record(Guid race, DebriefReport report)
    {
        var file = await practice.Get<OpenDebrief>().Run(practice.Assistant, race, Cancel);
        return await practice.Get<RecordDebrief>().Run(practice.Assistant, file!, report, Cancel);
    }

    private async Task<bool> IsOnToday(Guid race) =>
        (await practice.Get<TodaysWork>().Run(practice.Practitioner, Cancel)).Any(i =>
            i.Kind == TodayKind.RaceJustRun && i.Race.RaceId == race
        );

    [Fact]
    public async Task Todays_work_asks_until_it_is_written_down_and_the_client_keeps_the_result()
    {
        var (client, race) = await RaceJustRun();
        Assert.True(await IsOnToday(race));

        Assert.Equal(DebriefOutcome.Recorded, await Record(race, Report));

        Assert.False(await IsOnToday(race));
        var file = await practice.Get<OpenClient>().Run(practice.Practitioner, client, Cancel);
        Assert.Equal("Start slower.", Assert.Single(file!.Debriefs).Report.NextTime);
        Assert.Equal(Duration.FromMinutes(95), file.Client.Value.Physique.RecentResult!.Time);
    }

    [Fact]
    public async Task It_can_be_corrected_and_two_who_write_at_once_do_not_overwrite_each_other()
    {
        var (_, race) = await RaceJustRun();
        await Record(race, Report);
        var open = practice.Get<OpenDebrief>();
        var one = await open.Run(practice.Practitioner, race, Cancel);
        var other = await open.Run(practice.Assistant, race, Cancel);
        var record = practice.Get<RecordDebrief>();
        Assert.Equal(
            DebriefOutcome.Recorded,
            await record.Run(practice.Practitioner, one!, Report with { WorstGut = 5 }, Cancel)
        );
        Assert.Equal(
            DebriefOutcome.ChangedElsewhere,
            await record.Run(practice.Assistant, other!, Report with { WorstGut = 9 }, Cancel)
        );
        var now = await open.Run(practice.Practitioner, race, Cancel);
        Assert.Equal(5, now!.Debrief!.Value.Report.WorstGut);
    }

    [Fact]
    public async Task A_race_to_come_is_not_talked_about()
    {
        var race = await practice.NewRace(await practice.NewClient());
        Assert.Equal(DebriefOutcome.TooEarly, await Record(race, Report));
    }

    [Fact]
    public async Task The_next_race_recalls_the_last_one_that_was_talked_about_and_none_that_comes_later()
    {
        var (client, run) = await RaceJustRun();
        var next = await practice.NewRace(client);
        var recall = practice.Get<RecallLastRace>();
        Assert.Null(await recall.Run(practice.Assistant, next, Cancel));

        await Record(run, Report);

        var recalled = await recall.Run(practice.Assistant, next, Cancel);
        Assert.Equal((run, Report), (recalled!.Race.RaceId, recalled.Report));
        Assert.Null(await recall.Run(practice.Assistant, run, Cancel));
        var others = await practice.FoundPractice("Another Practice");
        Assert.Null(await recall.Run(others, next, Cancel));
    }
}
