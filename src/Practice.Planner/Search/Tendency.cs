using Practice.Planner.Model;

namespace Practice.Planner.Search;

/// <summary>A leaning under which meals are drawn, as charges per 0.01 g of what one wants less (or more) of.</summary>
internal sealed record Tendency(long Fibre, long Protein, long Fat, long Drunk, long Sugary)
{
    public static Tendency[] All { get; } =
    [
        new(0, 0, 0, 0, 0),
        new(20, 0, 0, 0, 0),
        new(60, 0, 0, 0, 0),
        new(20, -3, 0, 0, 0),
        new(0, -6, 0, 0, 0),
        new(0, 0, 4, 0, 0),
        new(10, 0, 2, -2, 0),
        new(0, 0, 0, -4, 0),
        new(0, 0, 0, 4, 0),
        new(5, 0, 0, 0, 2),
    ];

    /// <summary>Charge of one step of each candidate's amount, by place of the variable on the plate.</summary>
    public long[] ChargesOn(Plate plate)
    {
        var charges = new long[plate.VariableCount];
        foreach (var candidate in plate.Candidates)
            charges[candidate.Amount - plate.FirstVariable] = ChargeOf(candidate.Item);
        return charges;
    }

    public long ChargeOf(Meal meal) => meal.Sum(ChargeOf);

    private long ChargeOf(Item item) =>
        Fibre * item.Fibre
        + Protein * item.Protein
        + Fat * item.Fat
        + Drunk * item.Drunk
        + Sugary * item.FromSugaryFood;
}
