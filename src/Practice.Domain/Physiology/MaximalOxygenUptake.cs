using Practice.Domain.Clients;
using Practice.Domain.Evidence;

namespace Practice.Domain.Physiology;

/// <summary>How a maximal oxygen uptake is known.</summary>
public enum Vo2MaxOrigin
{
    /// <summary>Measured in a laboratory.</summary>
    Measured,

    /// <summary>Estimated from a race.</summary>
    FromRace,

    /// <summary>Nothing is known: the mean of the studies behind the glycogen figures.</summary>
    Assumed,
}

/// <summary>Maximal oxygen uptake of a client, the best that is known.</summary>
/// <param name="MlPerKgMin">Value, mL/kg/min.</param>
/// <param name="Origin">How it is known.</param>
/// <param name="Basis">Why it is what it is.</param>
public sealed record MaximalOxygenUptake(double MlPerKgMin, Vo2MaxOrigin Origin, Basis Basis)
{
    /// <summary>Mean of the athletes in the studies pooled by Areta and Hopkins 2018, mL/kg/min (SD 8).</summary>
    public const double StudyMean = 53;

    /// <summary>Own rule: races longer than this say little about oxygen uptake, min.</summary>
    private const double LongestUsableMinutes = 360;

    /// <summary>
    /// The measured value; else VDOT of a recent race (about 5 mL/kg/min either way; beyond 240 min continued to 360 min
    /// and said so); else <see cref="StudyMean"/>, which is an assumption.
    /// </summary>
    public static MaximalOxygenUptake Of(Physique physique)
    {
        ArgumentNullException.ThrowIfNull(physique);
        if (physique.Vo2Max is { } measured)
            return Measured((double)measured);
        return physique.RecentResult is { } result && IsUsable(result)
            ? FromRace(result)
            : Assumed();
    }

    private static bool IsUsable(RaceResult result) =>
        result.Time >= DanielsGilbert.ShortestRace
        && result.Time.TotalMinutes <= LongestUsableMinutes;

    private static MaximalOxygenUptake Measured(double value) =>
        new(
            value,
            Vo2MaxOrigin.Measured,
            new Basis("Laboratory value", [BasisInput.Of("VO2max", value, "mL/kg/min", 1)], [])
        );

    private static MaximalOxygenUptake FromRace(RaceResult result)
    {
        var vdot = DanielsGilbert.Vdot((double)result.DistanceKm * 1000, result.Time);
        return new(
            vdot,
            Vo2MaxOrigin.FromRace,
            new Basis(
                "VDOT = VO2 of the race pace / share of VO2max that can be held for the race time",
                [
                    BasisInput.Of("Recent race", result.DistanceKm, "km", 1),
                    BasisInput.Of("Its time", result.Time.TotalMinutes, "min", 1),
                    BasisInput.Of("VDOT", vdot, "mL/kg/min", 1),
                ],
                [Sources.Daniels1979],
                result.Time > DanielsGilbert.LongestRace
                    ? "Estimated, and from a race longer than the relation was made for (240 min): rough."
                    : "Estimated from a race, to about 5 mL/kg/min; not a measured value."
            )
        );
    }

    private static MaximalOxygenUptake Assumed() =>
        new(
            StudyMean,
            Vo2MaxOrigin.Assumed,
            new Basis(
                "Mean of the athletes in the pooled studies",
                [BasisInput.Of("VO2max", StudyMean, "mL/kg/min")],
                [Sources.Areta2018],
                "No laboratory value and no recent race: an assumption. Enter one of them for a better estimate."
            )
        );
}
