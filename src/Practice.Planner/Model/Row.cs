using Practice.Domain.Plans;

namespace Practice.Planner.Model;

/// <summary>Which limit a row stands for, so that a miss can be told in words and a conflict explained.</summary>
/// <param name="Kind">What the limit is about.</param>
/// <param name="Day">Index of the day.</param>
/// <param name="UnitsPerStep">One step of the row's excess in the unit of the limit (0.01 g, 1 mg, one time).</param>
internal sealed record Limit(LimitKind Kind, int Day, decimal UnitsPerStep);

/// <summary>
/// The one thing a menu is judged by: a weighted sum of its variables should lie between two bounds. A hard row must
/// hold; a soft row costs its price for each step by which the sum lies outside. Meal sense, limits and wishes are all
/// rows, so that annealing, constraint solver, bounds and explanations cannot disagree about them.
/// </summary>
internal sealed record Row
{
    /// <summary>Stands for "no bound".</summary>
    public const long Unbounded = long.MaxValue / 4;

    /// <summary>Charge for a broken hard row: dearer than anything that can be wished for.</summary>
    public const long Forbidden = 1_000_000_000_000;

    public required int[] Variables { get; init; }
    public required long[] Coefficients { get; init; }
    public required long Low { get; init; }
    public required long High { get; init; }

    /// <summary>Cost of one step outside the bounds; null for a hard row.</summary>
    public long? Price { get; init; }

    /// <summary>How much of the sum is one step.</summary>
    public long Step { get; init; } = 1;

    /// <summary>The sitting all its variables belong to; -1 when it spans several.</summary>
    public required int Plate { get; init; }

    /// <summary>The limit it stands for; null for meal sense and wishes.</summary>
    public Limit? Limit { get; init; }

    /// <summary>The rule in words, for a person.</summary>
    public string Says { get; init; } = "";

    /// <summary>Ties a portion's amount to its presence: always true of a menu by construction.</summary>
    public bool IsLink { get; init; }

    /// <summary>Whether it is a rule of meal sense, hard or softened.</summary>
    public bool IsSense { get; init; }

    public bool IsHard => Price is null;

    /// <summary>Steps by which a sum lies outside, rounded up.</summary>
    public long Excess(long sum)
    {
        var over =
            sum < Low ? Low - sum
            : sum > High ? sum - High
            : 0;
        return Step == 1 ? over : (over + Step - 1) / Step;
    }

    public long CostOf(long sum)
    {
        if (sum >= Low && sum <= High)
            return 0;
        return Price is { } price ? price * Excess(sum) : Forbidden + Excess(sum);
    }

    /// <summary>The same row over variables that stand elsewhere.</summary>
    public Row Over(Func<int, int> place) => this with { Variables = [.. Variables.Select(place)] };

    /// <summary>The same row as a rule that must hold.</summary>
    public Row AsHard() => Priced(null);

    /// <summary>The same row at another price.</summary>
    public Row Priced(long? price) => this with { Price = price };

    public long SumOf(long[] values)
    {
        long sum = 0;
        for (var i = 0; i < Variables.Length; i++)
            sum += Coefficients[i] * values[Variables[i]];
        return sum;
    }
}
