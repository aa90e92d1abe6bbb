using System.Collections.Immutable;
using NodaTime;
using Practice.Domain.Targets;

namespace Practice.Domain.Course;

/// <summary>How well the gut knows the job.</summary>
public enum GutTraining
{
    /// <summary>Never rehearsed.</summary>
    NotTrained,

    /// <summary>Rehearsed at the rate.</summary>
    Rehearsed,

    /// <summary>Three clean trials at the rate or more.</summary>
    WellTrained,
}

/// <summary>The swim and the bike of a triathlon; the run is what is left of distance and time.</summary>
/// <param name="SwimKm">Swim, km, above 0.</param>
/// <param name="Swim">Time of the swim.</param>
/// <param name="BikeKm">Bike, km, above 0.</param>
/// <param name="Bike">Time on the bike.</param>
/// <param name="Transitions">Time of both changes together.</param>
/// <param name="SwimKcalPerHour">Energy of the swim as the practitioner knows it, kcal/h: no equation is good enough.</param>
public sealed record TriathlonLegs(
    decimal SwimKm,
    Duration Swim,
    decimal BikeKm,
    Duration Bike,
    Duration Transitions,
    decimal? SwimKcalPerHour = null
);

/// <summary>What the practitioner decides or knows about the race itself.</summary>
public sealed record CourseChoices
{
    /// <summary>Time to plan for; null for the goal, or else what a recent race predicts.</summary>
    public Duration? Finish { get; init; }

    /// <summary>Pacing.</summary>
    public Pacing Pacing { get; init; } = Pacing.EvenEffort;

    /// <summary>Whether rates above 90 g/h were decided on, though their advantage is unproven.</summary>
    public bool AllowAboveNinety { get; init; }

    /// <summary>Sweat rate of a test, L/h, 0.1 to 4; null when there was none.</summary>
    public decimal? SweatLPerHour { get; init; }

    /// <summary>Heat stress of that test, wet-bulb globe temperature, °C.</summary>
    public decimal? SweatTestHeatC { get; init; }

    /// <summary>Heat stress expected in the race, wet-bulb globe temperature, °C, -10 to 50.</summary>
    public decimal? RaceHeatC { get; init; }

    /// <summary>Sodium of the sweat, mmol/L of the whole body, 5 to 100; null when not measured.</summary>
    public decimal? SweatSodiumMmolPerL { get; init; }

    /// <summary>Caffeine wanted for the whole race, mg/kg, 0 to 6; 0 unless rehearsed.</summary>
    public decimal CaffeineMgPerKg { get; init; }

    /// <summary>Caffeine before the start on the day, coffee included, mg, 0 to 1000.</summary>
    public decimal CaffeineBeforeMg { get; init; }

    /// <summary>Average power on the bike, W, 30 to 500; null when not known.</summary>
    public decimal? BikeWatts { get; init; }

    /// <summary>Load carried, kg, 0 to 40.</summary>
    public decimal LoadKg { get; init; }

    /// <summary>Legs of a triathlon.</summary>
    public TriathlonLegs? Legs { get; init; }

    /// <summary>Her own values for targets and for what the gut is known to take. No limit gives way to them.</summary>
    public ImmutableArray<TargetOverride> Overrides { get; init; } = [];
}
