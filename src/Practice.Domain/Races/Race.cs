using NodaTime;
using Practice.Domain.Quantities;

namespace Practice.Domain.Races;

/// <summary>What kind of event it is; each has its own energy cost.</summary>
public enum Discipline
{
    /// <summary>Running on roads.</summary>
    RoadRunning,

    /// <summary>Running on trails.</summary>
    TrailRunning,

    /// <summary>Cycling.</summary>
    Cycling,

    /// <summary>Triathlon.</summary>
    Triathlon,

    /// <summary>Walking a long distance.</summary>
    Walking,
}

/// <summary>What the weather is expected to be.</summary>
/// <param name="AirTemperatureC">Air temperature, °C, -20 to 50.</param>
/// <param name="RelativeHumidityPercent">Relative humidity, %, 0 to 100.</param>
public sealed record ExpectedWeather(decimal AirTemperatureC, decimal RelativeHumidityPercent);

/// <summary>An event a client heads for. Its date does not move.</summary>
public sealed class Race
{
    private Race() { }

    /// <summary>Key.</summary>
    public Guid Id { get; private set; }

    /// <summary>The practice that owns the record.</summary>
    public Guid PracticeId { get; private set; }

    /// <summary>Who runs it.</summary>
    public Guid ClientId { get; private set; }

    /// <summary>Name of the event.</summary>
    public string Name { get; private set; } = "";

    /// <summary>Town or course.</summary>
    public string Place { get; private set; } = "";

    /// <summary>Discipline.</summary>
    public Discipline Discipline { get; private set; }

    /// <summary>Distance, km, 1 to 500.</summary>
    public decimal DistanceKm { get; private set; }

    /// <summary>Start in the race's own clock.</summary>
    public LocalDateTime Start { get; private set; }

    /// <summary>The race's time zone, an IANA key.</summary>
    public string ZoneId { get; private set; } = "Europe/London";

    /// <summary>Time the client hopes for.</summary>
    public Duration? GoalTime { get; private set; }

    /// <summary>Expected weather, when known.</summary>
    public ExpectedWeather? Weather { get; private set; }

    /// <summary>Day of the race in its own zone.</summary>
    public LocalDate Day => Start.Date;

    /// <summary>Start with its zone; a clock time skipped by a change of the clocks moves on.</summary>
    /// <exception cref="NodaTime.TimeZones.DateTimeZoneNotFoundException">The zone key is unknown.</exception>
    public ZonedDateTime ZonedStart => Start.InZoneLeniently(DateTimeZoneProviders.Tzdb[ZoneId]);

    /// <summary>Enters a race for a client.</summary>
    public static Race Enter(Guid practiceId, Guid clientId, RaceDetails details)
    {
        var race = new Race
        {
            Id = Guid.CreateVersion7(),
            PracticeId = practiceId,
            ClientId = clientId,
        };
        race.Correct(details);
        return race;
    }

    /// <summary>Corrects what is known of the race.</summary>
    /// <exception cref="ArgumentException">Name empty, distance outside 1 to 500 km or zone unknown.</exception>
    public void Correct(RaceDetails details)
    {
        ArgumentNullException.ThrowIfNull(details);
        if (string.IsNullOrWhiteSpace(details.Name) || details.Name.Length > 200)
            throw new ArgumentException(
                "A race has a name of 1 to 200 characters.",
                nameof(details)
            );
        var name = TypedText.Checked(details.Name, 200, "The race's name");
        var place = TypedText.Checked(details.Place, 200, "The place");
        if (details.Start.Year is < 1900 or > 2200)
            throw new ArgumentException("The start: a day from 1900 to 2200.", nameof(details));
        if (details.DistanceKm is < 1 or > 500)
            throw new ArgumentException("A race is 1 to 500 km long.", nameof(details));
        if (DateTimeZoneProviders.Tzdb.GetZoneOrNull(details.ZoneId) is null)
            throw new ArgumentException(
                "The time zone is not known: choose one like Europe/London.",
                nameof(details)
            );
        (Name, Place, Discipline) = (name, place, details.Discipline);
        (DistanceKm, Start, ZoneId) = (details.DistanceKm, details.Start, details.ZoneId);
        (GoalTime, Weather) = (details.GoalTime, details.Weather);
    }

    /// <summary>Whole days from a day to the race; negative after it.</summary>
    public int DaysFrom(LocalDate day) => Period.DaysBetween(day, Day);
}

/// <summary>What is known of a race, as entered.</summary>
public sealed record RaceDetails
{
    /// <summary>Name of the event, 1 to 200 characters.</summary>
    public required string Name { get; init; }

    /// <summary>Town or course.</summary>
    public string Place { get; init; } = "";

    /// <summary>Discipline.</summary>
    public Discipline Discipline { get; init; }

    /// <summary>Distance, km, 1 to 500.</summary>
    public required decimal DistanceKm { get; init; }

    /// <summary>Start in the race's own clock.</summary>
    public required LocalDateTime Start { get; init; }

    /// <summary>IANA time-zone key.</summary>
    public required string ZoneId { get; init; }

    /// <summary>Goal time.</summary>
    public Duration? GoalTime { get; init; }

    /// <summary>Expected weather.</summary>
    public ExpectedWeather? Weather { get; init; }
}
