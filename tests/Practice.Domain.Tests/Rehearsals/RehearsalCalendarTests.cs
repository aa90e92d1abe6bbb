using System.Collections.Immutable;
using CsCheck;
using NodaTime;
using Practice.Domain.Rehearsals;

namespace Practice.Domain.Tests.Rehearsals;

public class RehearsalCalendarTests
{
    private static readonly LocalDate Race = new(2027, 4, 18); // a Sunday

    private static readonly RehearsalCalendar Calendar = new()
    {
        Race = Race,
        Today = new LocalDate(2027, 2, 1),
    };

    // X09, X10: two to four weeks out; X11: once or twice. Trade facts, no source.
    [Fact]
    public void A_partial_four_weeks_out_and_a_full_one_three_weeks_out()
    {
        var places = Calendar.Propose().Places;

        Assert.Equal(
            [(RehearsalKind.Partial, 28), (RehearsalKind.Full, 21)],
            places.Select(p => (p.Kind, Calendar.DaysBefore(p.RunOn)))
        );
        Assert.Equal(14, RehearsalCalendar.Nearest);
        Assert.Equal(28, RehearsalCalendar.Farthest);
    }

    [Fact]
    public void A_failed_one_is_repeated_on_the_first_long_run_that_nothing_speaks_against()
    {
        Assert.Equal(
            new LocalDate(2027, 4, 4),
            Calendar.Next(RehearsalKind.Full, new LocalDate(2027, 3, 31))!.RunOn
        );
        Assert.Null(Calendar.Next(RehearsalKind.Full, Race.PlusDays(-9)));
    }

    [Fact]
    public void What_is_proposed_draws_no_word_against_it() =>
        Gen.Select(
                Gen.Int[5, 60],
                Gen.Int[1, 7].Array[1, 3],
                Gen.Select(Gen.Int[0, 60], Gen.Enum<BlockedBy>()).Array[0, 8]
            )
            .Sample(
                (daysLeft, longRuns, blocked) =>
                {
                    var calendar = Calendar with
                    {
                        Today = Race.PlusDays(-daysLeft),
                        LongRuns = [.. longRuns.Select(d => (IsoDayOfWeek)d)],
                        Blocked =
                        [
                            .. blocked.Select(b => new BlockedDay(
                                Race.PlusDays(-b.Item1),
                                b.Item2
                            )),
                        ],
                    };
                    var places = calendar.Propose().Places;
                    Assert.All(
                        places,
                        p =>
                        {
                            Assert.Empty(calendar.Judge(p));
                            Assert.True(calendar.DaysBefore(p.RunOn) >= RehearsalCalendar.Nearest);
                        }
                    );
                    Assert.True(places.Length <= 2);
                    if (places.Length == 2)
                        Assert.True(Period.DaysBetween(places[0].RunOn, places[1].RunOn) >= 7);
                }
            );

    [Fact]
    public void Rehearsals_go_around_an_illness_with_its_week()
    {
        var ill = Calendar with { Blocked = [new(Race.PlusDays(-21), BlockedBy.Illness)] };

        Assert.Equal([28, 14], ill.Propose().Places.Select(p => ill.DaysBefore(p.RunOn)));
    }

    [Fact]
    public void Travel_takes_only_its_own_days()
    {
        var away = Calendar with { Blocked = [new(Race.PlusDays(-24), BlockedBy.Travel)] };
        Assert.Equal([28, 21], away.Propose().Places.Select(p => away.DaysBefore(p.RunOn)));

        var onTheEve = Calendar with { Blocked = [new(Race.PlusDays(-22), BlockedBy.Travel)] };
        Assert.DoesNotContain(onTheEve.Propose().Places, p => onTheEve.DaysBefore(p.RunOn) == 21);
    }

    [Fact]
    public void After_a_partial_only_the_full_one_is_proposed()
    {
        var partial = RehearsalPlace.On(RehearsalKind.Partial, Race.PlusDays(-21));
        var calendar = Calendar with { Standing = [partial] };

        var place = Assert.Single(calendar.Propose().Places);
        Assert.Equal(RehearsalKind.Full, place.Kind);
        Assert.True(Math.Abs(Period.DaysBetween(partial.RunOn, place.RunOn)) >= 7);
    }

    [Fact]
    public void Before_a_full_one_that_is_booked_a_partial_is_still_proposed_and_none_after_it()
    {
        var full = RehearsalPlace.On(RehearsalKind.Full, Race.PlusDays(-21));
        var booked = Calendar with { Standing = [full] };

        var place = Assert.Single(booked.Propose().Places);
        Assert.Equal((RehearsalKind.Partial, 28), (place.Kind, booked.DaysBefore(place.RunOn)));
        Assert.Empty((booked with { Today = full.RunOn.PlusDays(1) }).Propose().Places);
        Assert.Empty((booked with { Standing = [full, place] }).Propose().Places);
    }

    [Fact]
    public void Food_for_today_is_warned_of_and_speaks_no_more_against_what_is_booked()
    {
        var place = RehearsalPlace.On(RehearsalKind.Full, Race.PlusDays(-21));
        var today = Calendar with { Today = place.FirstDay };
        var underWay = Calendar with { Today = place.RunOn };

        Assert.False(Assert.Single(today.Judge(place)).Blocks);
        Assert.True(Assert.Single(underWay.Judge(place)).Blocks);
        Assert.Empty(underWay.JudgeBooked(place));
    }

    [Fact]
    public void Where_there_is_no_room_it_says_so()
    {
        var late = Calendar with { Today = Race.PlusDays(-9) };

        Assert.Empty(late.Propose().Places);
        Assert.Contains("too late", late.Propose().Words, StringComparison.Ordinal);
    }

    // Section on rehearsals: block a full trial under 10 or over 42 days (common practice).
    [Theory]
    [InlineData(RehearsalKind.Full, 9, true)]
    [InlineData(RehearsalKind.Full, 10, false)]
    [InlineData(RehearsalKind.Full, 42, false)]
    [InlineData(RehearsalKind.Full, 43, true)]
    [InlineData(RehearsalKind.Partial, 9, false)]
    [InlineData(RehearsalKind.Partial, 0, true)]
    [InlineData(RehearsalKind.Partial, -1, true)]
    public void A_place_is_blocked_outside_its_days(RehearsalKind kind, int days, bool blocks)
    {
        var notes = Calendar.Judge(RehearsalPlace.On(kind, Race.PlusDays(-days)));

        Assert.Equal(blocks, notes.Any(n => n.Blocks));
        Assert.NotEmpty(notes);
    }

    [Theory]
    [InlineData(0, true)]
    [InlineData(6, false)]
    public void Two_rehearsals_within_a_week_are_warned_of_and_never_on_one_day(
        int apart,
        bool blocks
    )
    {
        var calendar = Calendar with
        {
            Standing = [RehearsalPlace.On(RehearsalKind.Partial, Race.PlusDays(-21 - apart))],
        };

        var note = Assert.Single(
            calendar.Judge(RehearsalPlace.On(RehearsalKind.Full, Race.PlusDays(-21)))
        );
        Assert.Equal(blocks, note.Blocks);
    }

    [Fact]
    public void A_blocked_day_blocks_and_its_week_is_warned_of()
    {
        var place = RehearsalPlace.On(RehearsalKind.Full, Race.PlusDays(-21));
        PlacementNote Only(int daysBefore, BlockedBy by) =>
            (Calendar with { Blocked = [new(Race.PlusDays(-daysBefore), by)] })
                .Judge(place)
                .First();

        Assert.True(Only(22, BlockedBy.Heat).Blocks);
        Assert.False(Only(19, BlockedBy.HardRace).Blocks);
        Assert.Empty(
            (Calendar with { Blocked = [new(Race.PlusDays(-19), BlockedBy.Travel)] }).Judge(place)
        );
    }

    [Fact]
    public void A_day_without_a_long_run_is_warned_of()
    {
        var note = Assert.Single(
            Calendar.Judge(RehearsalPlace.On(RehearsalKind.Full, Race.PlusDays(-20)))
        );
        Assert.False(note.Blocks);
    }
}
