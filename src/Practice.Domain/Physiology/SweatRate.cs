using System.Collections.Immutable;
using NodaTime;
using Practice.Domain.Clients;

namespace Practice.Domain.Physiology;

/// <summary>Why a sweat rate should not simply be relied on.</summary>
public enum SweatDoubt
{
    /// <summary>Lower than bodies sweat while running: the weighing or the notes are wrong.</summary>
    TooLow,

    /// <summary>More than the heat of the run could have driven out: the weighing or the notes are wrong.</summary>
    TooHigh,

    /// <summary>The race will be more than 5 °C warmer or cooler in heat stress: test again, nothing converts it.</summary>
    OtherHeat,

    /// <summary>The weather of the test was not recorded, so nobody can tell whether it holds for the race.</summary>
    HeatUnknown,

    /// <summary>More than a year ago. Own rule.</summary>
    Old,
}

/// <summary>
/// What the last sweat test says for a race. There is no validated conversion of a sweat rate to other weather, so a
/// doubt is told and nothing is extrapolated. Plausible from 0.2 L/h to 1.3 times what would evaporate all heat of the
/// run (675 Wh/L). Source: American College of Sports Medicine 2007 (Sawka); plausibility and the 5 °C are own rules.
/// Checks F01, F27.
/// </summary>
/// <param name="Test">The test.</param>
/// <param name="Doubts">Why it should not simply be relied on; empty when nothing speaks against it.</param>
public sealed record SweatRate(SweatTest Test, ImmutableArray<SweatDoubt> Doubts)
{
    /// <summary>Endurance athletes, L/h, 0.57 standard deviation (Barnes 2019). Only to illustrate without a test.</summary>
    public const double PopulationLPerHour = 1.28;

    /// <summary>Largest difference in heat stress between test and race, °C.</summary>
    public const double LargestHeatDifference = 5;

    private const double WattHoursPerLitre = 675;
    private const double Least = 0.2;
    private const double Headroom = 1.3;

    /// <summary>Sweat rate, L/h.</summary>
    public decimal LPerHour => Test.RateLPerHour;

    /// <summary>Whether plans may take it: not when the test itself cannot be right.</summary>
    public bool IsPlausible =>
        !Doubts.Contains(SweatDoubt.TooLow) && !Doubts.Contains(SweatDoubt.TooHigh);

    /// <summary>The latest test of a log, judged for a race.</summary>
    /// <param name="log">Tests in any order.</param>
    /// <param name="raceDay">Day of the race.</param>
    /// <param name="raceHeatC">Expected wet-bulb globe temperature, °C; null when the weather is not known yet.</param>
    /// <returns>Null before the first test.</returns>
    public static SweatRate? Of(IEnumerable<SweatTest> log, LocalDate raceDay, double? raceHeatC) =>
        log.MaxBy(t => t.On) is { } test ? Judge(test, raceDay, raceHeatC) : null;

    /// <summary>Sweat that would take all heat of a run with it, L/h. Check F27.</summary>
    /// <param name="metabolicWatts">Metabolic power, W.</param>
    public static double EvaporatingAllHeat(double metabolicWatts) =>
        metabolicWatts / WattHoursPerLitre;

    private static SweatRate Judge(SweatTest test, LocalDate raceDay, double? raceHeatC)
    {
        var doubts = ImmutableArray.CreateBuilder<SweatDoubt>();
        var rate = (double)test.RateLPerHour;
        if (rate < Least)
            doubts.Add(SweatDoubt.TooLow);
        else if (rate > Headroom * EvaporatingAllHeat(MetabolicWatts(test)))
            doubts.Add(SweatDoubt.TooHigh);
        if (HeatOf(test) is not { } heat)
            doubts.Add(SweatDoubt.HeatUnknown);
        else if (raceHeatC is { } race && Math.Abs(race - heat) > LargestHeatDifference)
            doubts.Add(SweatDoubt.OtherHeat);
        if (test.On < raceDay.PlusYears(-1))
            doubts.Add(SweatDoubt.Old);
        return new SweatRate(test, doubts.ToImmutable());
    }

    /// <summary>Heat stress of the test, °C; null when the weather was not recorded.</summary>
    public static double? HeatOf(SweatTest test)
    {
        ArgumentNullException.ThrowIfNull(test);
        return test is { AirC: { } air, HumidityPercent: { } humidity }
            ? WetBulbGlobe.Estimated((double)air, (double)humidity)
            : null;
    }

    /// <summary>Gross power of running at the test's pace; at 14 km/h, a fast one, where the distance is not known.</summary>
    private static double MetabolicWatts(SweatTest test)
    {
        var kmPerHour = test.DistanceKm is { } km ? (double)(km / (test.Minutes / 60)) : 14;
        var litresPerMinute =
            RunningIntensity.OxygenUptake(kmPerHour) * (double)test.BeforeKg / 1000;
        return litresPerMinute * KcalPerLitre * 4184 / 60;
    }

    private const double KcalPerLitre = 5;
}
