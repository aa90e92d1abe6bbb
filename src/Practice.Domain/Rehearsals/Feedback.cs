using System.Collections.Immutable;
using NodaTime;
using Practice.Domain.Quantities;

namespace Practice.Domain.Rehearsals;

/// <summary>What a client ate, drank and felt in a rehearsal. What was not answered is null or empty, never zero.</summary>
public sealed record Feedback
{
    /// <summary>When it came in.</summary>
    public required Instant ReceivedAt { get; init; }

    /// <summary>What was eaten, by sitting.</summary>
    public ImmutableArray<EatenOccasion> Occasions { get; init; } = [];

    /// <summary>Part of the race-time breakfast that was eaten, 0 to 2.</summary>
    public decimal? BreakfastPart { get; init; }

    /// <summary>Answers on the symptom scale.</summary>
    public ImmutableArray<Symptom> Symptoms { get; init; } = [];

    /// <summary>What belongs before a doctor.</summary>
    public ImmutableArray<WarningSign> WarningSigns { get; init; } = [];

    /// <summary>Whether the client vomited, once or more.</summary>
    public bool Vomited { get; init; }

    /// <summary>Drunk on the loading days beside the plan's own drinks, ml, 0 to 10 000.</summary>
    public decimal? FluidMl { get; init; }

    /// <summary>Body mass before the run; not asked where screening forbids weighing.</summary>
    public BodyMass? MassBefore { get; init; }

    /// <summary>Body mass after the run.</summary>
    public BodyMass? MassAfter { get; init; }

    /// <summary>Colour of the morning's urine on the chart of eight, 1 pale to 8 dark.</summary>
    public int? UrineColour { get; init; }

    /// <summary>Sleep of the night before the run, h, 0 to 24.</summary>
    public decimal? SleepHours { get; init; }

    /// <summary>Whether the client was ill, or had period-related symptoms.</summary>
    public bool IllOrPeriod { get; init; }

    /// <summary>The run; null when it was not run.</summary>
    public RunFeedback? Run { get; init; }

    /// <summary>The client's own words.</summary>
    public string Note { get; init; } = "";

    /// <summary>Body mass lost over the run, as a fraction; null when not weighed twice, below zero after a gain.</summary>
    public decimal? MassLoss =>
        MassBefore is { } before && MassAfter is { } after
            ? (before.Kilograms - after.Kilograms) / before.Kilograms
            : null;

    /// <summary>Whether every number lies in its range.</summary>
    public bool IsPlausible =>
        BreakfastPart is null or (>= 0 and <= 2)
        && FluidMl is null or (>= 0 and <= 10_000)
        && UrineColour is null or (>= 1 and <= 8)
        && SleepHours is null or (>= 0 and <= 24)
        && Occasions.SelectMany(o => o.Portions).All(p => p.Part is >= 0 and <= 4)
        && Run is null or { IsPlausible: true };
}

/// <summary>The run that a rehearsal leads up to.</summary>
public sealed record RunFeedback
{
    /// <summary>Distance, km, 0 to 500.</summary>
    public decimal? DistanceKm { get; init; }

    /// <summary>Duration.</summary>
    public Duration? Time { get; init; }

    /// <summary>How long it went at race effort.</summary>
    public Duration? AtRaceEffort { get; init; }

    /// <summary>Carbohydrate taken on the run, g, 0 to 1000.</summary>
    public decimal? CarbohydrateG { get; init; }

    /// <summary>Drunk on the run, ml, 0 to 20 000.</summary>
    public decimal? FluidMl { get; init; }

    /// <summary>Caffeine before and on the run, mg, 0 to 2000.</summary>
    public decimal? CaffeineMg { get; init; }

    /// <summary>Wet-bulb globe temperature, °C, -20 to 50; null when not known.</summary>
    public decimal? WetBulbGlobeC { get; init; }

    /// <summary>Whether the gut ended the run.</summary>
    public bool StoppedByGut { get; init; }

    /// <summary>Pace, weather, clothes: the client's own words.</summary>
    public string Note { get; init; } = "";

    /// <summary>Carbohydrate an hour, g/h; null when amount or time is not known.</summary>
    public decimal? CarbohydrateGPerHour =>
        CarbohydrateG is { } grams && Time is { TotalHours: > 0 } time
            ? grams / (decimal)time.TotalHours
            : null;

    internal bool IsPlausible =>
        DistanceKm is null or (>= 0 and <= 500)
        && CarbohydrateG is null or (>= 0 and <= 1000)
        && FluidMl is null or (>= 0 and <= 20_000)
        && CaffeineMg is null or (>= 0 and <= 2000)
        && WetBulbGlobeC is null or (>= -20 and <= 50)
        && (Time is null || Time >= Duration.Zero)
        && (AtRaceEffort is null || AtRaceEffort >= Duration.Zero);
}
