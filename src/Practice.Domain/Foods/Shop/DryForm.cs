namespace Practice.Domain.Foods.Shop;

/// <summary>
/// The dry food from which one that is eaten cooked is made. Its weight follows from the water of both, as published:
/// what is not water stays. The little that goes off with the cooking water is not counted.
/// </summary>
/// <param name="Name">What a shop calls it, in UK words.</param>
/// <param name="UsName">In US words where they differ.</param>
/// <param name="Record">Its record in USDA SR28.</param>
/// <param name="WaterG">Water of 100 g, g.</param>
public sealed record DryForm(string Name, string? UsName, string Record, decimal WaterG)
{
    /// <summary>The name in the reader's words.</summary>
    public string NameIn(HouseholdUnits units) =>
        units == HouseholdUnits.UsCustomary ? UsName ?? Name : Name;

    /// <summary>Dry weight, g, that an amount is cooked from.</summary>
    /// <param name="cookedG">Weight cooked, g, 0 or more.</param>
    /// <param name="cooked">Nutrients of 100 g cooked.</param>
    public decimal GramsFor(decimal cookedG, Nutrients cooked)
    {
        ArgumentNullException.ThrowIfNull(cooked);
        return cookedG * (100 - cooked.WaterG) / (100 - WaterG);
    }
}
