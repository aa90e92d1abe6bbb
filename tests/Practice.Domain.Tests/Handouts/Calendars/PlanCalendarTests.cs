using NodaTime;
using Practice.Domain.Plans;
using Practice.Domain.Plans.Weeks;
using Practice.Domain.Screening;
using Practice.Handouts.Calendar;

namespace Practice.Domain.Tests.Handouts.Calendars;

public sealed class PlanCalendarTests
{
    private static readonly Guid Key = Guid.Parse("22222222-2222-2222-2222-222222222222");
    private static readonly Instant Stamp = Instant.FromUtc(2026, 9, 7, 10, 0);
    private static readonly RaceWeekPlan Plan = SampleWeekPapers.Plan(SamplePapers.All["full"]);
    private static readonly string Text = PlanCalendar.Of(Plan, Key, Stamp);

    public static TheoryData<string> Zones =>
        [
            "Europe/London",
            "America/New_York",
            "Australia/Lord_Howe",
            "Asia/Kathmandu",
            "Africa/Casablanca",
            "America/Sao_Paulo",
            "Etc/UTC",
        ];

    [Fact]
    public void There_is_an_event_for_each_sitting_each_day_and_the_race()
    {
        var sittings = Plan.EveryDay.Sum(d => d.Occasions.Length);
        var calendar = StrictCalendar.Read(Text);
        Assert.Equal(sittings + Plan.Week!.Days.Length + 1, calendar.Events.Count());
        Assert.Equal(sittings + 1, calendar.Events.Count(e => e.Children.Count == 1));
    }

    [Theory, MemberData(nameof(Zones))]
    public void By_the_rules_in_the_file_each_event_begins_when_the_plan_says(string zoneId)
    {
        var zone = DateTimeZoneProviders.Tzdb[zoneId];
        // the weeks of the clock changes, north and south
        foreach (var day in new LocalDate[] { new(2026, 10, 25), new(2027, 4, 4), new(2026, 7, 5) })
        {
            var start = day.At(new LocalTime(9, 0));
            var plan = Plan with
            {
                Header = Plan.Header with { ZoneId = zoneId, RaceStart = start },
            };
            var calendar = StrictCalendar.Read(PlanCalendar.Of(plan, Key, Stamp));
            var race = calendar.Events.Single(e =>
                e["UID"].Value.StartsWith("race", StringComparison.Ordinal)
            );
            Assert.Equal(start.InZoneLeniently(zone).ToInstant(), calendar.BeginOf(race));
            Assert.Equal(
                WeekLayout.FinishOf(plan).InZoneLeniently(zone).ToInstant(),
                calendar.EndOf(race)
            );
        }
    }

    [Fact]
    public void The_calendar_library_reads_back_what_the_strict_reader_reads()
    {
        var strict = StrictCalendar
            .Read(Text)
            .Events.Where(e => e["DTSTART"].Parameters.ContainsKey("TZID"))
            .Select(e => (e["UID"].Value, e["SUMMARY"].Text, e["DESCRIPTION"].Text))
            .Order();
        var library = Ical.Net.Calendar.Load(Text)!;
        Assert.Equal(
            strict,
            library
                .Events.Where(e => e.Start!.HasTime)
                .Select(e => (e.Uid!, e.Summary!, e.Description!))
                .Order()
        );
        var read = StrictCalendar.Read(Text);
        foreach (var e in read.Events.Where(e => e.Has("DTEND")))
            Assert.Equal(
                read.BeginOf(e).ToDateTimeUtc(),
                library.Events.Single(l => l.Uid == e["UID"].Value).Start!.AsUtc
            );
    }

    [Fact]
    public void Commas_semicolons_and_new_lines_in_a_note_come_back()
    {
        const string note = "Bring: rice, salt; not the \\ new \"belt\"\nSee you — Zoë 🏁";
        var plan = Plan.Note(Plan.Header.RaceStart.Date.PlusDays(-2), note);
        var day = StrictCalendar
            .Read(PlanCalendar.Of(plan, Key, Stamp))
            .Events.Single(e => e["UID"].Value.StartsWith("day-2.", StringComparison.Ordinal));
        Assert.EndsWith(note, day["DESCRIPTION"].Text, StringComparison.Ordinal);
    }

    [Fact]
    public void An_event_with_nothing_to_say_has_no_description_which_other_programs_refuse_empty()
    {
        var text = PlanCalendar.Of(Plan with { Course = null }, Key, Stamp);
        Assert.All(
            StrictCalendar.Read(text).Events.Where(e => e.Has("DESCRIPTION")),
            e => Assert.NotEmpty(e["DESCRIPTION"].Value)
        );
    }

    [Fact]
    public void A_number_free_plan_has_a_calendar_without_numbers()
    {
        var plan = SampleWeekPapers.Plan(SamplePapers.All["number-free"]);
        var calendar = StrictCalendar.Read(PlanCalendar.Of(plan, Key, Stamp));
        Assert.All(
            calendar.Events,
            e =>
            {
                Assert.Empty(NumberFree.Violations(e["SUMMARY"].Text));
                Assert.Empty(
                    NumberFree.Violations(e.Has("DESCRIPTION") ? e["DESCRIPTION"].Text : "")
                );
            }
        );
    }

    [Fact]
    public void A_version_issued_anew_moves_events_and_makes_no_second_ones()
    {
        var eve = Plan.Days[^1];
        var moved = Plan.MoveSitting(eve.Date, eve.Occasions[0].Kind, new LocalTime(8, 0));
        var again = PlanCalendar.Of(moved, Key, Stamp + Duration.FromDays(1));
        Assert.Equal(Keys(Text), Keys(again));
        Assert.NotEqual(Text, again);
        Assert.Equal(Text, PlanCalendar.Of(Plan, Key, Stamp));
    }

    [Theory]
    [InlineData("BEGIN:VCALENDAR\r\nVERSION:2.0\r\n")]
    [InlineData("BEGIN:VCALENDAR\nVERSION:2.0\nPRODID:x\nEND:VCALENDAR\n")]
    [InlineData("BEGIN:VCALENDAR\r\nVERSION:2.0\r\nno content line\r\nEND:VCALENDAR\r\n")]
    [InlineData(
        "BEGIN:VCALENDAR\r\nVERSION:2.0\r\nPRODID:x\r\nBEGIN:VEVENT\r\nEND:VEVENT\r\nEND:VCALENDAR\r\n"
    )]
    public void The_strict_reader_refuses_what_is_no_calendar(string text) =>
        Assert.ThrowsAny<Exception>(() => StrictCalendar.Read(text));

    private static IEnumerable<string> Keys(string text) =>
        StrictCalendar.Read(text).Events.Select(e => e["UID"].Value).Order();
}
