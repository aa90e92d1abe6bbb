using System.Collections.Immutable;

namespace Practice.Domain.Course;

/// <summary>A place on the course.</summary>
/// <param name="Km">Distance from the start, km.</param>
/// <param name="ElevationM">Height above the sea, smoothed, m; null where it is not known.</param>
public sealed record CoursePoint(decimal Km, decimal? ElevationM);

/// <summary>Where a profile comes from.</summary>
public enum ProfileOrigin
{
    /// <summary>Distance and climb were typed in.</summary>
    Typed,

    /// <summary>A GPX file.</summary>
    Gpx,
}

/// <summary>The course from start to finish: how long, how steep, what is known of it.</summary>
public sealed record CourseProfile
{
    /// <summary>Length, km, 1 to 500: the race's official distance where the file's own is close to it.</summary>
    public required decimal DistanceKm { get; init; }

    /// <summary>Points in order, the first at 0 km and the last at <see cref="DistanceKm"/>; two at least.</summary>
    public required ImmutableArray<CoursePoint> Points { get; init; }

    /// <summary>Total ascent, m, with a hysteresis of 2 m; null where heights are not known.</summary>
    public decimal? AscentM { get; init; }

    /// <summary>Total descent, m.</summary>
    public decimal? DescentM { get; init; }

    /// <summary>Where it comes from.</summary>
    public ProfileOrigin Origin { get; init; }

    /// <summary>Name of the track or of the file; empty when typed in.</summary>
    public string Name { get; init; } = "";

    /// <summary>What the practitioner must know of the data, in words: scaled, no heights, implausible slopes.</summary>
    public ImmutableArray<string> Remarks { get; init; } = [];

    /// <summary>Whether heights are known along the course.</summary>
    public bool HasElevation => Points.Length > 1 && Points[0].ElevationM is not null;

    /// <summary>A course of which only length and climb are known. No place on it is known to be steep.</summary>
    /// <param name="distanceKm">Length, km, 1 to 500.</param>
    /// <param name="ascentM">Total climb, m, 0 to 30 000; null when not known.</param>
    public static CourseProfile Typed(decimal distanceKm, decimal? ascentM = null)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(distanceKm, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(distanceKm, 500);
        ArgumentOutOfRangeException.ThrowIfNegative(ascentM ?? 0, nameof(ascentM));
        ArgumentOutOfRangeException.ThrowIfGreaterThan(ascentM ?? 0, 30_000, nameof(ascentM));
        return new CourseProfile
        {
            DistanceKm = distanceKm,
            Points = [new(0, null), new(distanceKm, null)],
            AscentM = ascentM,
        };
    }

    /// <summary>Height at a place, m, between the points in a straight line; null where it is not known.</summary>
    /// <param name="km">Distance from the start, km; outside the course its nearest end counts.</param>
    public decimal? ElevationAt(decimal km)
    {
        if (!HasElevation)
            return null;
        var after = Points.BinarySearch(new CoursePoint(km, null), ByKm);
        if (after >= 0)
            return Points[after].ElevationM;
        after = ~after;
        if (after == 0)
            return Points[0].ElevationM;
        if (after == Points.Length)
            return Points[^1].ElevationM;
        var (from, to) = (Points[after - 1], Points[after]);
        return from.ElevationM
            + (to.ElevationM - from.ElevationM) * (km - from.Km) / (to.Km - from.Km);
    }

    private static readonly Comparer<CoursePoint> ByKm = Comparer<CoursePoint>.Create(
        (left, right) => left.Km.CompareTo(right.Km)
    );
}
