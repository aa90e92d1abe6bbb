namespace Practice.Planner.Model;

/// <summary>A decision: whether a pattern or a food is chosen, or how many steps of a food are served.</summary>
/// <param name="Values">The values it may take, ascending; starts with 0 unless locked.</param>
/// <param name="Plate">The sitting it belongs to.</param>
internal sealed record Variable(long[] Values, int Plate)
{
    public long Lowest => Values[0];
    public long Highest => Values[^1];
    public bool IsFixed => Values.Length == 1;
}
