using System.Collections.Immutable;
using NodaTime;
using Practice.Domain.Races;

namespace Practice.Domain.Course;

/// <summary>Something to put into pocket or belt.</summary>
/// <param name="ProductId">Key of the product.</param>
/// <param name="Name">Its name.</param>
/// <param name="Count">How many servings the plan takes from what is carried.</param>
public sealed record CarriedItem(string ProductId, string Name, int Count);

/// <summary>
/// What to take, where and when, during the race. Part of the plan model: screen, phone and paper read it and nothing
/// else. Stays as it was made until it is read again.
/// </summary>
public sealed record CoursePlan
{
    /// <summary>Version of this shape in stored documents.</summary>
    public int Shape { get; init; } = 1;

    /// <summary>Kind of event.</summary>
    public Discipline Discipline { get; init; }

    /// <summary>The time to the finish that the clock times hold for.</summary>
    public required Duration Finish { get; init; }

    /// <summary>Pacing that the clock times hold for.</summary>
    public Pacing Pacing { get; init; }

    /// <summary>The course.</summary>
    public required CourseProfile Profile { get; init; }

    /// <summary>Aid stations in order.</summary>
    public ImmutableArray<AidStation> Stations { get; init; } = [];

    /// <summary>What is carried or handed out, as far as the client may have it.</summary>
    public ImmutableArray<Product> Products { get; init; } = [];

    /// <summary>Passing times every kilometre, or every five on courses over 100 km, and at the finish.</summary>
    public ImmutableArray<CourseSplit> Splits { get; init; } = [];

    /// <summary>What to take, in order of the course.</summary>
    public ImmutableArray<CourseStep> Steps { get; init; } = [];

    /// <summary>Hour by hour.</summary>
    public ImmutableArray<CourseHour> Hours { get; init; } = [];

    /// <summary>The whole race.</summary>
    public required CourseTotals Total { get; init; }

    /// <summary>What the plan is held against.</summary>
    public required CourseTargets Targets { get; init; }

    /// <summary>What speaks against it as it stands; for the practitioner only.</summary>
    public ImmutableArray<CourseWarning> Warnings { get; init; } = [];

    /// <summary>Advice to the client in words without numbers with units: how to drink, what to leave.</summary>
    public ImmutableArray<string> Advice { get; init; } = [];

    /// <summary>What the client carries.</summary>
    public ImmutableArray<CarriedItem> Carried =>
        [
            .. Steps
                .Where(s => s.IsCarried)
                .GroupBy(s => (s.ProductId, s.Name))
                .Select(g => new CarriedItem(g.Key.ProductId, g.Key.Name, g.Sum(s => s.Count))),
        ];

    /// <summary>Carbohydrate an hour over the whole race, g/h.</summary>
    public decimal CarbohydrateGPerHour => PerHour(Total.CarbohydrateG);

    /// <summary>Drinking an hour over the whole race, L/h.</summary>
    public decimal FluidLPerHour => PerHour(Total.FluidMl) / 1000;

    /// <summary>Whether something in it forbids issuing.</summary>
    public bool IsStopped => Warnings.Any(w => w.Weight == WarningWeight.Stop);

    private decimal PerHour(decimal amount) =>
        Finish > Duration.Zero ? amount / (decimal)Finish.TotalHours : 0;
}
