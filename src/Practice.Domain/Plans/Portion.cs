using Practice.Domain.Foods;

namespace Practice.Domain.Plans;

/// <summary>
/// A food on the plate: how many steps of its serving, with the nutrients it had when it was planned, so that a later
/// change to the library never changes a plan.
/// </summary>
public sealed record Portion
{
    /// <summary>Key of the food; one sitting never holds the same food twice.</summary>
    public required string FoodId { get; init; }

    /// <summary>Name as planned.</summary>
    public required string Name { get; init; }

    /// <summary>The part it plays in the meal.</summary>
    public required MealRole Role { get; init; }

    /// <summary>Section of the shopping list.</summary>
    public required FoodGroup Group { get; init; }

    /// <summary>Steps served; one of <see cref="Serving.Steps"/>.</summary>
    public required int Steps { get; init; }

    /// <summary>How it is served.</summary>
    public required Serving Serving { get; init; }

    /// <summary>Nutrients of 100 g when planned.</summary>
    public required Nutrients Per100G { get; init; }

    /// <summary>Whether its carbohydrate is drunk.</summary>
    public bool IsLiquid { get; init; }

    /// <summary>Whether the planner must leave it as it is.</summary>
    public bool IsLocked { get; init; }

    /// <summary>Grams served.</summary>
    public decimal Grams => Steps * Serving.StepGrams;

    /// <summary>Millilitres served, of what is poured; one gram stands for one where the serving tells no volume.</summary>
    public decimal Millilitres => Serving.Unit == "ml" ? Steps * Serving.UnitsPerStep : Grams;

    /// <summary>Nutrients served.</summary>
    public Nutrients Nutrients => Per100G.ForGrams(Grams);

    /// <summary>A portion of a food.</summary>
    public static Portion Of(
        Food food,
        MealRole role,
        int steps,
        HouseholdUnits units = HouseholdUnits.Metric
    ) =>
        new()
        {
            FoodId = food.Id,
            Name = food.NameIn(units),
            Role = role,
            Group = food.Group,
            Steps = steps,
            Serving = food.Serving,
            Per100G = food.Per100G,
            IsLiquid = food.IsLiquid,
        };
}
