using Practice.Domain.Foods;

namespace Practice.Domain.Plans;

/// <summary>An amount said with an everyday measure.</summary>
/// <param name="Count">How many, in parts a kitchen knows.</param>
/// <param name="Name">One of the measure.</param>
/// <param name="Plural">Several of it.</param>
/// <param name="IsExact">Whether the words are within 3 % of the amount.</param>
internal sealed record KitchenMeasure(decimal Count, string Name, string Plural, bool IsExact)
{
    /// <summary>Farther off than this, no measure is better than a wrong one. Own rule.</summary>
    private const decimal WorstError = 0.13m;

    /// <summary>What a kitchen measures of less than one.</summary>
    private static readonly decimal[] Parts = [0.25m, 1m / 3m, 0.5m, 2m / 3m, 0.75m, 1m];

    /// <summary>The measure of the reader's kitchen that says the portion best; null when none comes near.</summary>
    /// <param name="portion">The portion.</param>
    /// <param name="units">The reader's kitchen.</param>
    /// <param name="byEye">Whether a measure that needs scales, such as the ounce, is no measure.</param>
    public static KitchenMeasure? Of(Portion portion, HouseholdUnits units, bool byEye = false)
    {
        var best = portion
            .Serving.Measures.Where(m => (m.Units ?? units) == units)
            .Where(m => !byEye || m.Name != "ounce")
            .Select(m => (Measure: m, Count: Round(portion.Grams / m.Grams)))
            .Where(c => c.Count is >= 0.25m and <= 12m)
            .Select(c => (c.Measure, c.Count, Error: Error(c.Measure, c.Count, portion.Grams)))
            .Where(c => c.Error <= WorstError)
            .OrderByDescending(c => c.Measure.IsOwn)
            .ThenBy(c => c.Error + Clumsiness(c.Count))
            .FirstOrDefault();
        return best.Measure is { } measure
            ? new(best.Count, measure.Name, measure.Plural, best.Error <= 0.03m)
            : null;
    }

    private static decimal Round(decimal count) =>
        count < 1 ? Parts.MinBy(part => Math.Abs(part - count))
        : count < 4 ? Math.Round(count * 4, MidpointRounding.AwayFromZero) / 4
        : Math.Round(count * 2, MidpointRounding.AwayFromZero) / 2;

    private static decimal Error(HouseholdMeasure measure, decimal count, decimal grams) =>
        Math.Abs(count * measure.Grams - grams) / grams;

    // "a large glass" is easier to hold on to than "1¼ glasses", and both than "9 spoons"
    private static decimal Clumsiness(decimal count) =>
        (
            count % 1 == 0 ? 0m
            : count % 0.5m == 0 ? 0.01m
            : 0.03m
        )
        + Math.Max(0, count - 4) * 0.03m;
}
