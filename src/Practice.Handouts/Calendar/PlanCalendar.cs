using System.Globalization;
using Ical.Net.CalendarComponents;
using Ical.Net.DataTypes;
using Ical.Net.Serialization;
using NodaTime;
using Practice.Domain.Plans;
using Practice.Domain.Plans.Weeks;
using Practice.Handouts.Content;
using WeekDay = Practice.Domain.Plans.Weeks.WeekDay;

namespace Practice.Handouts.Calendar;

/// <summary>
/// A plan as a calendar (RFC 5545): an event for each sitting and the race, with an alarm, in the race's zone; a note for
/// each day of the week. The same plan gives the same text, and keeps the keys of its events when it is issued anew, so
/// that a calendar that follows it moves them and does not double them.
/// </summary>
public static class PlanCalendar
{
    private const int SittingMinutes = 30;
    private const int AlarmMinutes = 15;
    private const int WakeUpMinutes = 120;

    /// <summary>The calendar.</summary>
    /// <param name="plan">The plan; whoever must see no numbers is given none.</param>
    /// <param name="key">Key of the race: what the events are called by in every version.</param>
    /// <param name="stamp">When the version was last changed.</param>
    public static string Of(RaceWeekPlan plan, Guid key, Instant stamp)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var safe = plan.NumberFree ? WithoutNumbers.Of(plan) : plan;
        var header = safe.Header;
        var calendar = Named($"{header.RaceName}: {header.ClientName}");
        calendar.AddTimeZone(ZoneRules.Of(header.ZoneId, header.RaceStart));
        var events = new EventMaker(safe, key, stamp);
        foreach (var day in safe.Days)
            calendar.Events.AddRange(day.Occasions.Select(o => events.Sitting(day, o, null)));
        if (safe.Week is { } week)
        {
            calendar.Events.AddRange(week.Days.Select(events.Day));
            calendar.Events.AddRange(
                week.Morning.Occasions.Select(o =>
                    events.Sitting(week.Morning, o, RaceDayPart.Morning)
                )
            );
            calendar.Events.AddRange(
                week.Recovery.Occasions.Select(o =>
                    events.Sitting(week.Recovery, o, RaceDayPart.Recovery)
                )
            );
        }
        calendar.Events.Add(events.Race());
        return Written(calendar);
    }

    /// <summary>A calendar without events: for a reader who follows it while no plan is out.</summary>
    public static string Empty(string name) => Written(Named(name));

    private static Ical.Net.Calendar Named(string name)
    {
        var calendar = new Ical.Net.Calendar
        {
            ProductId = "-//Practice//Race week//EN",
            Method = "PUBLISH",
        };
        calendar.AddProperty("X-WR-CALNAME", name);
        calendar.AddProperty("REFRESH-INTERVAL;VALUE=DURATION", "PT6H");
        return calendar;
    }

    private static string Written(Ical.Net.Calendar calendar) =>
        new CalendarSerializer().SerializeToString(calendar)
        ?? throw new InvalidOperationException("The calendar could not be written.");

    private sealed class EventMaker(RaceWeekPlan plan, Guid key, Instant stamp)
    {
        private readonly Reader reader = new(
            plan.NumberFree,
            IsLargePrint: false,
            plan.Units,
            new PaperDates(IsAmerican: false)
        );

        public CalendarEvent Sitting(PlanDay day, Occasion occasion, RaceDayPart? part)
        {
            var name = part is { } p
                ? SittingNames.Of(p, day, occasion)
                : Sittings.Name(occasion.Kind, plan.Units);
            var amount =
                plan.NumberFree || occasion.Portions.IsEmpty
                    ? ""
                    : $", {Apportion.Whole(occasion.Totals.CarbohydrateG)} g carbohydrate";
            var start = day.MomentOf(occasion);
            return Event(
                $"{part?.ToString() ?? "loading"}-{day.DaysBefore}-{occasion.Kind}",
                name + amount,
                string.Join('\n', occasion.Portions.Select(Line)),
                start,
                start.PlusMinutes(SittingMinutes),
                AlarmMinutes
            );
        }

        public CalendarEvent Race()
        {
            var stops = CourseSchedule
                .Stops(plan, reader)
                .Select(s => $"{s.Km}, {s.Clock}: {s.Take} ({s.Where})");
            return Event(
                "race",
                $"{plan.Header.RaceName}, start",
                string.Join('\n', stops),
                plan.Header.RaceStart,
                WeekLayout.FinishOf(plan),
                WakeUpMinutes,
                plan.Header.RacePlace
            );
        }

        /// <summary>A note on top of a day; it takes no time and rings no bell.</summary>
        public CalendarEvent Day(WeekDay day)
        {
            var name = day.DaysBefore switch
            {
                > 0 => $"{Countdown(day.DaysBefore)} to {plan.Header.RaceName}",
                0 => plan.Header.RaceName,
                _ => $"The day after {plan.Header.RaceName}",
            };
            var lines = day.Pointers.Select(p => p.For(plan.NumberFree)).Append(day.Note);
            return new CalendarEvent
            {
                Uid = Uid($"day-{day.DaysBefore}"),
                DtStamp = Stamp,
                Summary = name,
                Description = TextOrNone(string.Join('\n', lines.Where(l => l.Length > 0))),
                Start = new CalDateTime(day.Date.Year, day.Date.Month, day.Date.Day),
                Transparency = "TRANSPARENT",
            };
        }

        private CalendarEvent Event(
            string what,
            string name,
            string text,
            LocalDateTime start,
            LocalDateTime end,
            int alarmMinutes,
            string place = ""
        )
        {
            var made = new CalendarEvent
            {
                Uid = Uid(what),
                DtStamp = Stamp,
                Summary = name,
                Description = TextOrNone(text),
                Start = At(start),
                End = At(end),
            };
            if (place.Length > 0)
                made.Location = place;
            made.Alarms.Add(
                new Alarm
                {
                    Action = "DISPLAY",
                    Description = name,
                    Trigger = new Trigger(Ical.Net.DataTypes.Duration.FromMinutes(-alarmMinutes)),
                }
            );
            return made;
        }

        // other programs take an empty property for a fault
        private static string? TextOrNone(string text) => text.Length > 0 ? text : null;

        private CalDateTime Stamp => new(stamp.ToDateTimeUtc(), "UTC");

        private string Uid(string what) => $"{what.ToLowerInvariant()}.{key:N}@practice";

        private CalDateTime At(LocalDateTime moment) =>
            new(moment.ToDateTimeUnspecified(), plan.Header.ZoneId);

        private string Line(Portion portion) =>
            plan.NumberFree
                ? $"{portion.Name}: {PortionWords.NumberFree(portion, plan.Units)}"
                : $"{portion.Name}: {PortionWords.Full(portion, plan.Units)}";

        private static string Countdown(int days) =>
            days == 1 ? "1 day" : string.Create(CultureInfo.InvariantCulture, $"{days} days");
    }
}
