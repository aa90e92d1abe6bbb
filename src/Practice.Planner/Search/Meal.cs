using Practice.Domain.Foods;
using Practice.Planner.Meals;
using Practice.Planner.Model;

namespace Practice.Planner.Search;

/// <summary>A food of a drawn meal and how much of it.</summary>
internal readonly record struct Helping(Candidate Candidate, int Steps);

/// <summary>A complete meal for one plate, with what it costs by itself.</summary>
internal sealed record Meal(PatternChoice Pattern, Helping[] Helpings, long Cost)
{
    /// <summary>The food the meal is remembered by.</summary>
    public Candidate? Main =>
        Helpings
            .Select(h => h.Candidate)
            .FirstOrDefault(c => MealParts.IsBase(c.Role) || c.Role == MealRole.Yoghurt);

    /// <summary>The same for the same foods and amounts in any order; mixed well, so that others have another.</summary>
    public long Key
    {
        get
        {
            var key = Pattern.Chosen * 1_000_003L;
            foreach (var (candidate, steps) in Helpings)
            {
                var mixed = unchecked(
                    (ulong)(candidate.Amount * 64L + steps) * 0x9E3779B97F4A7C15UL
                );
                key = unchecked(key + (long)(mixed ^ (mixed >> 29)));
            }
            return key;
        }
    }

    public IEnumerable<(int Variable, long Value)> Values
    {
        get
        {
            yield return (Pattern.Chosen, 1);
            foreach (var (candidate, steps) in Helpings)
            {
                yield return (candidate.Present, 1);
                yield return (candidate.Amount, steps);
            }
        }
    }

    public long Sum(Func<Item, long> perStep) =>
        Helpings.Sum(h => perStep(h.Candidate.Item) * h.Steps);
}
