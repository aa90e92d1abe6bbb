using NodaTime;

namespace Practice.Domain.Course;

/// <summary>One thing to take at one place. It keeps the values it was planned with.</summary>
public sealed record CourseStep
{
    /// <summary>Key within the plan.</summary>
    public required int Id { get; init; }

    /// <summary>Place, km from the start.</summary>
    public required decimal Km { get; init; }

    /// <summary>Time since the start by the chosen pacing.</summary>
    public required Duration Elapsed { get; init; }

    /// <summary>Key of the product.</summary>
    public required string ProductId { get; init; }

    /// <summary>Name of the product.</summary>
    public required string Name { get; init; }

    /// <summary>Servings or cups, 1 or more.</summary>
    public required int Count { get; init; }

    /// <summary>What to take in household words without any unit: <c>1 energy gel</c>, <c>2 cups of water</c>.</summary>
    public required string Words { get; init; }

    /// <summary>Where the organiser hands it out; null for what the client carries.</summary>
    public string? Station { get; init; }

    /// <summary>Weight of what is eaten, g; 0 for drinks.</summary>
    public decimal FoodG { get; init; }

    /// <summary>Drunk, ml.</summary>
    public decimal Ml { get; init; }

    /// <summary>Available carbohydrate, g.</summary>
    public decimal CarbohydrateG { get; init; }

    /// <summary>Of it glucose, maltodextrin and starch, g.</summary>
    public decimal GlucoseG { get; init; }

    /// <summary>Of it fructose, g.</summary>
    public decimal FructoseG { get; init; }

    /// <summary>Sodium, mg.</summary>
    public decimal SodiumMg { get; init; }

    /// <summary>Caffeine, mg.</summary>
    public decimal CaffeineMg { get; init; }

    /// <summary>Whether the practitioner put it here by hand: the planner leaves it alone.</summary>
    public bool Locked { get; init; }

    /// <summary>Whether the client carries it.</summary>
    public bool IsCarried => Station is null;
}
