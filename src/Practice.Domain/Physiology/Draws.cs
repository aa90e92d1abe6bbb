namespace Practice.Domain.Physiology;

/// <summary>
/// Random numbers that are the same on every machine and in every version of the platform, so that a curve on paper is
/// the curve on screen. SplitMix64 (Steele, Lea, Flood 2014), written from memory; good enough to spread a band.
/// </summary>
internal sealed class Draws(ulong seed)
{
    private ulong state = seed;

    /// <summary>Evenly from 0 to below 1.</summary>
    public double Even()
    {
        unchecked
        {
            state += 0x9E3779B97F4A7C15;
            var mixed = state;
            mixed = (mixed ^ (mixed >> 30)) * 0xBF58476D1CE4E5B9;
            mixed = (mixed ^ (mixed >> 27)) * 0x94D049BB133111EB;
            return ((mixed ^ (mixed >> 31)) >> 11) * (1.0 / (1UL << 53));
        }
    }

    /// <summary>Normal around zero; the band is two standard deviations either way and never left by more than half.</summary>
    public double Within(double band)
    {
        var normal = Math.Sqrt(-2 * Math.Log(1 - Even())) * Math.Cos(2 * Math.PI * Even());
        return band * Math.Clamp(normal / 2, -1.5, 1.5);
    }

    /// <summary>Between two ends, most often at the usual value.</summary>
    public double Triangle(double low, double usual, double high)
    {
        var (at, left) = (Even(), (usual - low) / (high - low));
        return at < left
            ? low + Math.Sqrt(at * (high - low) * (usual - low))
            : high - Math.Sqrt((1 - at) * (high - low) * (high - usual));
    }
}
