using NodaTime;
using Practice.Domain.Clients;
using Practice.Domain.Debriefs;
using Practice.Domain.Races;

namespace Practice.Domain.Tests.Debriefs;

public class DebriefTests
{
    private static readonly Instant After = Instant.FromUtc(2027, 4, 18, 16, 0);

    private static readonly DebriefReport Finished = new()
    {
        FinishTime = Duration.FromMinutes(221),
        Wall = WallFelt.Slowed,
        WallKm = 35,
        WorstGut = 3,
    };

    private static readonly Physique Body = new() { Sex = Sex.Female, HeightCm = 170 };

    private static Race Marathon(Discipline discipline = Discipline.RoadRunning) =>
        Race.Enter(
            Guid.NewGuid(),
            Guid.NewGuid(),
            new RaceDetails
            {
                Name = "Harbour Marathon",
                Discipline = discipline,
                DistanceKm = 42.195m,
                Start = new LocalDateTime(2027, 4, 18, 9, 0),
                ZoneId = "Europe/London",
            }
        );

    [Fact]
    public void A_finish_on_the_road_becomes_the_recent_result()
    {
        var race = Marathon();
        var learned = Debrief.Of(race, Finished, "Pat", After).Teaches(race, Body);
        Assert.Equal(
            new RaceResult(42.195m, Duration.FromMinutes(221), race.Day),
            learned!.RecentResult
        );
    }

    [Fact]
    public void A_later_result_another_discipline_and_a_race_not_finished_teach_nothing()
    {
        var race = Marathon();
        var debrief = Debrief.Of(race, Finished, "Pat", After);
        var later = Body with
        {
            RecentResult = new(10, Duration.FromMinutes(45), new LocalDate(2027, 5, 2)),
        };
        Assert.Null(debrief.Teaches(race, later));
        var trail = Marathon(Discipline.TrailRunning);
        Assert.Null(Debrief.Of(trail, Finished, "Pat", After).Teaches(trail, Body));
        var stopped = Finished with { End = RaceEnd.Stopped, FinishTime = null };
        Assert.Null(Debrief.Of(race, stopped, "Pat", After).Teaches(race, Body));
    }

    [Fact]
    public void Nobody_talks_about_a_race_before_its_start() =>
        Assert.Throws<ArgumentException>(() =>
            Debrief.Of(Marathon(), Finished, "Pat", Instant.FromUtc(2027, 4, 18, 7, 59))
        );

    [Fact]
    public void What_cannot_be_is_refused()
    {
        var race = Marathon();
        DebriefReport[] odd =
        [
            Finished with
            {
                FinishTime = null,
            },
            Finished with
            {
                WorstGut = 11,
            },
            Finished with
            {
                WallKm = 43,
            },
            Finished with
            {
                TakenGPerHour = 151,
            },
        ];
        Assert.All(
            odd,
            report => Assert.Throws<ArgumentException>(() => Debrief.Of(race, report, "Pat", After))
        );
    }
}
