using Bunit;
using NodaTime;
using Practice.Domain.Races;
using Practice.Web.Parts.Plots;

namespace Practice.Web.Tests.Parts;

public class RaceLineTests : BunitContext
{
    private static readonly LocalDateTime Start = new(2026, 10, 4, 9, 30);
    private static readonly LocalDateTime WeeksBefore = new(2026, 9, 1, 9, 0);

    [Fact]
    public void It_names_every_station_on_level_and_upright_line()
    {
        var line = Draw(WeeksBefore);
        string[] names =
        [
            "Today",
            "Rehearsal weeks",
            "Low-residue shift",
            "Loading window",
            "Race morning",
            "Start",
            "Finish",
        ];
        Assert.Equal(names, line.FindAll(".level strong").Select(s => s.TextContent));
        Assert.Equal(names, line.FindAll(".upright strong").Select(s => s.TextContent));
    }

    [Fact]
    public async Task Choosing_a_place_opens_it()
    {
        var opened = new List<RaceLinePlace>();
        var line = Draw(WeeksBefore, opened.Add);
        await line.Find(".level .loading").ClickAsync();
        await line.Find(".upright .racemorning button").ClickAsync();
        Assert.Equal([RaceLinePlace.Loading, RaceLinePlace.RaceMorning], opened);
    }

    [Fact]
    public void What_is_behind_is_said_to_be_past()
    {
        var line = Draw(new LocalDateTime(2026, 10, 2, 8, 0));
        Assert.Contains(
            "Rehearsal weeks, Sun 6 Sep to Sun 20 Sep, past",
            line.Find(".unseen").TextContent,
            StringComparison.Ordinal
        );
        Assert.Empty(line.FindAll(".level .rehearsal"));
    }

    [Fact]
    public void Time_runs_from_left_to_right_and_the_last_days_get_the_room()
    {
        var scale = new RaceLineScale(WeeksBefore, Start.PlusHours(4));
        var places = Enumerable
            .Range(0, 33)
            .Select(d => scale.At(WeeksBefore.PlusDays(d)))
            .ToList();
        Assert.Equal(places.Order(), places);
        Assert.Equal(0, places[0]);
        Assert.Equal(100, scale.At(Start.PlusHours(4)));
        // two days of thirty-three would be 6 % on an even scale
        Assert.InRange(scale.At(Start) - scale.At(Start.PlusDays(-2)), 25, 60);
    }

    [Fact]
    public void Rehearsal_weeks_lie_four_to_two_weeks_before_the_race()
    {
        var calendar = new RaceCalendar(Start);
        Assert.Equal(new LocalDate(2026, 9, 6), calendar.RehearseFrom);
        Assert.Equal(new LocalDate(2026, 9, 20), calendar.RehearseTo);
    }

    [Fact]
    public async Task A_booked_rehearsal_moves_a_day_by_an_arrow_key_and_a_decided_one_stays()
    {
        var moved = new List<LocalDate>();
        var booked = Trial("booked", canMove: true);
        var decided = Trial("pass", canMove: false) with { RunOn = new(2026, 9, 20) };
        var line = Draw(WeeksBefore, null, [booked, decided], m => moved.Add(m.RunOn));
        await line.Find(".level .trial.booked").KeyDownAsync(Key.Right);
        await line.Find(".level .trial.booked").KeyDownAsync(Key.Left);
        await line.Find(".level .trial.pass").KeyDownAsync(Key.Left);
        Assert.Equal([new LocalDate(2026, 9, 14), new(2026, 9, 12)], moved);
    }

    [Fact]
    public void Upright_rehearsals_stand_where_they_fall_and_no_key_of_the_page_is_theirs()
    {
        var past = Trial("pass", canMove: false) with { Name = "Past", RunOn = new(2026, 8, 30) };
        var line = Draw(WeeksBefore, null, [past, Trial("booked", canMove: true)]);

        Assert.Equal(
            ["Past", "Today", "Rehearsal weeks", "Full rehearsal", "Low-residue shift"],
            line.FindAll(".upright strong").Select(s => s.TextContent).Take(5)
        );
        // a key named there is pressed for the whole page and would open the rehearsal
        Assert.Empty(line.FindAll("[aria-keyshortcuts]"));
    }

    [Fact]
    public async Task A_rehearsal_that_is_lifted_shows_which_days_do_and_lands_where_it_is_put_down()
    {
        var moved = new List<LocalDate>();
        var line = Draw(
            WeeksBefore,
            null,
            [Trial("booked", canMove: true)],
            m => moved.Add(m.RunOn)
        );
        Assert.Empty(line.FindAll(".slot"));
        await line.Find(".level .trial").DragStartAsync(new());
        Assert.Single(line.FindAll(".slot.blocked"));
        await line.FindAll(".slot")
            .Single(s => s.GetAttribute("title") == "Sun 6 Sep")
            .DropAsync(new());
        Assert.Equal([new LocalDate(2026, 9, 6)], moved);
        Assert.Empty(line.FindAll(".slot"));
    }

    private static RaceLineRehearsal Trial(string state, bool canMove) =>
        new(
            Guid.NewGuid(),
            "Full rehearsal",
            state,
            state,
            new(2026, 9, 11),
            new(2026, 9, 13),
            canMove
        );

    private IRenderedComponent<RaceLine> Draw(
        LocalDateTime now,
        Action<RaceLinePlace>? open = null,
        IReadOnlyList<RaceLineRehearsal>? rehearsals = null,
        Action<(RaceLineRehearsal Rehearsal, LocalDate RunOn)>? move = null
    ) =>
        Render<RaceLine>(p =>
            p.Add(l => l.Rehearsals, rehearsals ?? [])
                .Add(l => l.OnMove, move ?? (_ => { }))
                .Add(
                    l => l.Judge,
                    (_, day) =>
                        day == new LocalDate(2026, 9, 8) ? RaceLineDay.Blocked : RaceLineDay.Good
                )
                .Add(
                    l => l.Stations,
                    RaceLineStation.Of(
                        now,
                        new RaceCalendar(Start),
                        Start.PlusHours(-39),
                        Duration.FromHours(3.5)
                    )
                )
                .Add(l => l.Now, now)
                .Add(l => l.OnOpen, open ?? (_ => { }))
        );
}
