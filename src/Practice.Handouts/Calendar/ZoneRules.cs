using System.Globalization;
using Ical.Net;
using Ical.Net.CalendarComponents;
using Ical.Net.DataTypes;
using NodaTime;
using NodaTime.TimeZones;

namespace Practice.Handouts.Calendar;

/// <summary>
/// The clock changes of a zone around a race, each written out: a calendar needs no rule of its own, and a rule that a
/// country changed in between is right on both sides.
/// </summary>
internal static class ZoneRules
{
    /// <summary>The zone from a year before to a year after a moment.</summary>
    public static VTimeZone Of(string zoneId, LocalDateTime around)
    {
        var zone = DateTimeZoneProviders.Tzdb[zoneId];
        var middle = around.InZoneLeniently(zone).ToInstant();
        var rules = new VTimeZone(zoneId);
        foreach (
            var interval in zone.GetZoneIntervals(
                middle - NodaTime.Duration.FromDays(366),
                middle + NodaTime.Duration.FromDays(366)
            )
        )
            rules.Children.Add(Observance(zone, interval));
        return rules;
    }

    private static VTimeZoneInfo Observance(DateTimeZone zone, ZoneInterval interval)
    {
        var before = interval.HasStart
            ? zone.GetUtcOffset(interval.Start - NodaTime.Duration.Epsilon)
            : interval.WallOffset;
        // an observance begins by the clock that was shown before it; a zone without changes has one from of old
        var begin = interval.HasStart
            ? interval.Start.WithOffset(before).LocalDateTime
            : new LocalDateTime(1970, 1, 1, 0, 0);
        return new VTimeZoneInfo(
            interval.Savings == Offset.Zero ? Components.Standard : Components.Daylight
        )
        {
            Start = new CalDateTime(begin.ToDateTimeUnspecified()),
            OffsetFrom = new UtcOffset(before.ToTimeSpan()),
            OffsetTo = new UtcOffset(interval.WallOffset.ToTimeSpan()),
            TimeZoneName = interval.Name,
        };
    }
}
