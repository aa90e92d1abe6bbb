using NodaTime;

namespace Practice.Service.Desks;

/// <summary>What day it is where the practice is.</summary>
public sealed class PracticeCalendar(IClock clock, DateTimeZone zone)
{
    /// <summary>The present moment.</summary>
    public Instant Now => clock.GetCurrentInstant();

    /// <summary>The present day in the practice's zone.</summary>
    public LocalDate Today => DayOf(Now);

    /// <summary>The present time of day in the practice's zone.</summary>
    public LocalTime TimeNow => Now.InZone(zone).TimeOfDay;

    /// <summary>The moment a day begins in the practice's zone.</summary>
    public Instant StartOf(LocalDate day) => day.AtStartOfDayInZone(zone).ToInstant();

    /// <summary>The time of day of a moment in the practice's zone.</summary>
    public LocalDateTime TimeOf(Instant moment) => moment.InZone(zone).LocalDateTime;

    /// <summary>The day of a moment in the practice's zone.</summary>
    public LocalDate DayOf(Instant moment) => moment.InZone(zone).Date;
}
