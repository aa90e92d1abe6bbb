using Practice.Domain.Clients;

namespace Practice.Domain.Physiology;

/// <summary>
/// Leg muscle as a share of body mass, with its range between people. Source: Rapoport 2010, caption of figure 3 and
/// secondary accounts.
/// </summary>
/// <param name="Usual">Usual share.</param>
/// <param name="Low">Lowest of the range.</param>
/// <param name="High">Highest of the range.</param>
public sealed record LegMuscle(double Usual, double Low, double High)
{
    private static readonly LegMuscle Men = new(0.214, 0.14, 0.27);
    private static readonly LegMuscle Women = new(0.20, 0.18, 0.22);

    /// <summary>The share and range of a sex.</summary>
    public static LegMuscle Of(Sex sex) => sex == Sex.Male ? Men : Women;
}
