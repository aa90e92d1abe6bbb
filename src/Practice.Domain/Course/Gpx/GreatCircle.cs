namespace Practice.Domain.Course;

/// <summary>Distance along a sphere of 6 371 000 m. Checks K06, K07.</summary>
public static class GreatCircle
{
    private const double RadiusM = 6_371_000;

    /// <summary>Distance between two places, m (haversine).</summary>
    /// <param name="fromLatitude">Latitude of the first, degrees.</param>
    /// <param name="fromLongitude">Longitude of the first, degrees.</param>
    /// <param name="toLatitude">Latitude of the second, degrees.</param>
    /// <param name="toLongitude">Longitude of the second, degrees.</param>
    public static double Metres(
        double fromLatitude,
        double fromLongitude,
        double toLatitude,
        double toLongitude
    )
    {
        var (from, to) = (
            double.DegreesToRadians(fromLatitude),
            double.DegreesToRadians(toLatitude)
        );
        var height = Math.Sin((to - from) / 2);
        var width = Math.Sin(double.DegreesToRadians(toLongitude - fromLongitude) / 2);
        var a = height * height + Math.Cos(from) * Math.Cos(to) * width * width;
        return 2 * RadiusM * Math.Asin(Math.Min(1, Math.Sqrt(a)));
    }
}
