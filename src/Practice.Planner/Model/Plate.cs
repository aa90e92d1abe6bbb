using Practice.Domain.Foods;
using Practice.Domain.Plans;
using Practice.Planner.Meals;

namespace Practice.Planner.Model;

/// <summary>A pattern a sitting could follow.</summary>
/// <param name="Pattern">The pattern.</param>
/// <param name="Chosen">Variable: whether it is followed.</param>
internal sealed record PatternChoice(MealPattern Pattern, int Chosen);

/// <summary>A food, in one part, that could be on the plate of a sitting.</summary>
/// <param name="Item">The food in that part.</param>
/// <param name="Servings">Step counts that could be served here, ascending.</param>
/// <param name="Present">Variable: whether it is on the plate.</param>
/// <param name="Amount">Variable: steps served.</param>
/// <param name="Kept">The portion of the present menu it stands for; null for a food that could be chosen anew.</param>
internal sealed record Candidate(Item Item, int[] Servings, int Present, int Amount, Portion? Kept)
{
    /// <summary>Whether the practitioner fixed it.</summary>
    public bool IsLocked => Kept is { IsLocked: true };

    public Food Food => Item.Food;
    public MealRole Role => Item.Role;
}

/// <summary>A sitting with everything that could be on its plate.</summary>
internal sealed class Plate
{
    public required int Index { get; init; }
    public required int Day { get; init; }
    public required Occasion Occasion { get; init; }
    public required PatternChoice[] Patterns { get; init; }
    public required Candidate[] Candidates { get; init; }

    /// <summary>Its variables follow one another from here: foods first, then patterns.</summary>
    public required int FirstVariable { get; init; }
    public required int VariableCount { get; init; }

    public OccasionKind Kind => Occasion.Kind;
    public bool HasLocks => Candidates.Any(c => c.IsLocked);

    /// <summary>Carbohydrate to aim at, 0.01 g.</summary>
    public long Aim => (long)Math.Round(Occasion.CarbohydrateAimG * 100);

    public Candidate? Find(string foodId) => Candidates.FirstOrDefault(c => c.Food.Id == foodId);
}
