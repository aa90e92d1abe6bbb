using System.Collections.Immutable;
using Practice.Domain.Clients;

namespace Practice.Domain.Physiology;

/// <summary>A stretch of the course.</summary>
/// <param name="Km">Distance from the start at its end, km.</param>
/// <param name="Hour">Time from the start at its end, h.</param>
/// <param name="NetKcalPerKg">Net energy it takes, kcal per kg of body mass.</param>
/// <param name="RelativeIntensity">VO2 over VO2max on it.</param>
public sealed record FuelLeg(double Km, double Hour, double NetKcalPerKg, double RelativeIntensity);

/// <summary>The loading before a race.</summary>
/// <param name="Hours">From the first loading meal to the start, h.</param>
/// <param name="GramsPerKgDay">Carbohydrate, g/kg per 24 h.</param>
public sealed record FuelLoading(double Hours, double GramsPerKgDay);

/// <summary>What decides how much glycogen an athlete has, hour by hour and kilometre by kilometre.</summary>
public sealed record FuelCase
{
    /// <summary>Body mass, kg.</summary>
    public required double MassKg { get; init; }

    /// <summary>Sex, for muscle mass.</summary>
    public required Sex Sex { get; init; }

    /// <summary>Maximal oxygen uptake, mL/kg/min: it tells the glycogen of a usual diet.</summary>
    public required double Vo2Max { get; init; }

    /// <summary>The loading; null on a usual diet.</summary>
    public FuelLoading? Loading { get; init; }

    /// <summary>When the athlete goes to bed, h before the start.</summary>
    public double NightFrom { get; init; } = 11;

    /// <summary>Carbohydrate before the start, g/kg; zero for no breakfast.</summary>
    public double BreakfastGPerKg { get; init; }

    /// <summary>When it is eaten, h before the start.</summary>
    public double BreakfastAt { get; init; } = 3;

    /// <summary>The course in order.</summary>
    public required ImmutableArray<FuelLeg> Course { get; init; }

    /// <summary>What is taken on it, in order of time.</summary>
    public ImmutableArray<FuelFeed> Feeds { get; init; } = [];

    /// <summary>The same athlete on the same course without any of it: usual diet, no breakfast, nothing on the way.</summary>
    public FuelCase WithoutCarbohydrate =>
        this with
        {
            Loading = null,
            BreakfastGPerKg = 0,
            Feeds = [],
        };
}
