using Practice.Domain.Quantities;

namespace Practice.Domain.Foods.Own;

/// <summary>A household measure that a practice adds to a food of the library: the blue bowl holds 220 g.</summary>
public sealed class OwnMeasure
{
    private const int LongestName = 40;
    private const decimal HeaviestG = 2000;

    private OwnMeasure() { }

    /// <summary>Key.</summary>
    public Guid Id { get; private set; }

    /// <summary>The practice that owns the record.</summary>
    public Guid PracticeId { get; private set; }

    /// <summary>Key of the food it measures.</summary>
    public string FoodId { get; private set; } = "";

    /// <summary>One of it.</summary>
    public string Name { get; private set; } = "";

    /// <summary>Several of it.</summary>
    public string Plural { get; private set; } = "";

    /// <summary>What one holds, g.</summary>
    public decimal Grams { get; private set; }

    /// <summary>The measure as servings know it.</summary>
    public HouseholdMeasure Measure => new(Name, Plural, Grams, IsOwn: true);

    /// <summary>Adds a measure.</summary>
    /// <exception cref="ArgumentException">The food is counted, or the measure cannot be kept; the message says why.</exception>
    public static OwnMeasure Of(Guid practiceId, Food food, HouseholdMeasure measure)
    {
        ArgumentNullException.ThrowIfNull(food);
        ArgumentNullException.ThrowIfNull(measure);
        if (food.Serving.Style == ServingStyle.Counted)
            throw new ArgumentException(
                $"{food.Name} is counted in {food.Serving.UnitPlural}: a measure would not be used."
            );
        if (Problem(measure) is { } problem)
            throw new ArgumentException(problem);
        return new OwnMeasure
        {
            Id = Guid.CreateVersion7(),
            PracticeId = practiceId,
            FoodId = food.Id,
            Name = measure.Name.Trim(),
            Plural = measure.Plural.Trim(),
            Grams = measure.Grams,
        };
    }

    /// <summary>What is wrong with a household measure; null when it can be used.</summary>
    internal static string? Problem(HouseholdMeasure measure)
    {
        var name = measure.Name.Trim();
        if (name.Length == 0)
            return "A measure needs a name, such as blue bowl.";
        if (TypedText.Problem(measure.Name, LongestName) is { } problem)
            return problem;
        if (!char.IsLetter(name[0]))
            return $"“{name}” does not begin with a letter: papers say it as a word.";
        if (string.IsNullOrWhiteSpace(measure.Plural))
            return $"What are several of “{name}” called?";
        if (TypedText.Problem(measure.Plural, LongestName) is { } plural)
            return plural;
        return measure.Grams is > 0 and <= HeaviestG
            ? null
            : $"A {name} holds more than 0 g and at most {HeaviestG:0} g.";
    }
}
