using NodaTime;

namespace Practice.Domain.Clients;

/// <summary>
/// A run before and after which the client was weighed: nude or in the same dry clothes, towelled dry, 60 to 90 min at
/// race pace.
/// </summary>
public sealed record SweatTest
{
    /// <summary>Day of the test.</summary>
    public required LocalDate On { get; init; }

    /// <summary>Body mass before, kg, 25 to 250.</summary>
    public required decimal BeforeKg { get; init; }

    /// <summary>Body mass after, kg, 25 to 250.</summary>
    public required decimal AfterKg { get; init; }

    /// <summary>Drunk on the way, L, 0 to 10.</summary>
    public decimal DrunkL { get; init; }

    /// <summary>Eaten on the way, kg, 0 to 2.</summary>
    public decimal EatenKg { get; init; }

    /// <summary>Urine on the way, L, 0 to 3.</summary>
    public decimal UrineL { get; init; }

    /// <summary>Length, min, 20 to 480.</summary>
    public required decimal Minutes { get; init; }

    /// <summary>Distance, km; null when not recorded.</summary>
    public decimal? DistanceKm { get; init; }

    /// <summary>Air temperature, °C; null when not recorded.</summary>
    public decimal? AirC { get; init; }

    /// <summary>Relative humidity, %, 0 to 100; null when not recorded.</summary>
    public decimal? HumidityPercent { get; init; }

    /// <summary>
    /// Sweat rate, L/h: mass lost and what was taken in, without urine, a kilogram as a litre. Breath and burnt fuel are
    /// counted as sweat, which makes it a little high. Source: American College of Sports Medicine 2007 (Sawka). Check F01.
    /// </summary>
    public decimal RateLPerHour =>
        (BeforeKg - AfterKg + DrunkL + EatenKg - UrineL) / (Minutes / 60);

    /// <summary>Mass lost, % of the mass before. Check F02.</summary>
    public decimal LossPercent => (BeforeKg - AfterKg) / BeforeKg * 100;

    internal void Check()
    {
        Within(BeforeKg, 25, 250, "Body mass before");
        Within(AfterKg, 25, 250, "Body mass after");
        Within(DrunkL, 0, 10, "What was drunk");
        Within(EatenKg, 0, 2, "What was eaten");
        Within(UrineL, 0, 3, "Urine");
        Within(Minutes, 20, 480, "The time");
        Within(DistanceKm ?? 1, 0.1m, 200, "The distance");
        Within(AirC ?? 0, -20, 50, "The air temperature");
        Within(HumidityPercent ?? 0, 0, 100, "The humidity");
    }

    private static void Within(decimal value, decimal low, decimal high, string what)
    {
        if (value < low || value > high)
            throw new ArgumentException(
                $"{what} is {Shown(low)} to {Shown(high)} in a sweat test."
            );
    }

    private static string Shown(decimal value) => Quantities.Rounding.Shown(value, 1);
}
