using NodaTime;
using Practice.Domain.Clients;
using Practice.Domain.Debriefs;
using Practice.Domain.Quantities;

namespace Practice.Service.Demo;

/// <summary>An invented race that was run, and how it went.</summary>
internal sealed record DemoPast(DemoRace Race, DebriefReport Report);

/// <summary>An invented sweat test, so many days before today.</summary>
internal sealed record DemoSweat(
    int DaysAgo,
    decimal LostKg,
    decimal DrunkL,
    int Minutes,
    decimal Km
)
{
    /// <summary>Air temperature, °C, and relative humidity, %; null where nobody wrote it down.</summary>
    public (decimal Air, decimal Humidity)? Weather { get; init; }

    public SweatTest For(DemoClient client, LocalDate today) =>
        new()
        {
            On = today.PlusDays(-DaysAgo),
            BeforeKg = client.MassKg,
            AfterKg = client.MassKg - LostKg,
            DrunkL = DrunkL,
            Minutes = Minutes,
            DistanceKm = Km,
            AirC = Weather?.Air,
            HumidityPercent = Weather?.Humidity,
        };
}
