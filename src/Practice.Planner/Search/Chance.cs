namespace Practice.Planner.Search;

/// <summary>What luck decides in a search.</summary>
internal static class Chance
{
    // how fast the chance of a food or a pattern falls with its price
    private const double Warmth = 2500;

    /// <summary>How readily something of this price is drawn.</summary>
    public static double AtPrice(long price) => Math.Exp(-price / Warmth);

    /// <summary>Whether a change is kept: always when it is for the better, seldom when it is much worse than the warmth.</summary>
    public static bool Accepts(long worse, double warmth, Random random) =>
        worse <= 0 || random.NextDouble() < Math.Exp(-worse / warmth);
}
