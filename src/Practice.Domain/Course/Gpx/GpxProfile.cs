using System.Collections.Immutable;
using System.Globalization;
using Practice.Domain.Races;

namespace Practice.Domain.Course;

/// <summary>
/// Makes a profile of the points of a file: drops doubles and jumps, measures, resamples every 20 m, smooths the
/// heights (median of 5, then a moving average of 200 m, for heights of GPS), sums the ascent with a hysteresis of 2 m,
/// and keeps a point every 100 m. Own rule. A file within 3 % of the official distance is scaled to it.
/// </summary>
internal static class GpxProfile
{
    private const double StepM = 20;
    private const int AverageOver = 11;
    private const double HysteresisM = 2;
    private const double FastestMPerS = 15;
    private const double FastestOnWheelsMPerS = 35;
    private const double ShortestJumpM = 100;
    private const double IgnoredDifference = 0.002;
    private const double ScaledDifference = 0.03;
    private const double SteepGradient = 0.25;
    private const double SteepShare = 0.02;
    private const double KnownHeights = 0.5;

    public static GpxReading Of(RawTrack track, decimal raceKm, Discipline discipline)
    {
        var remarks = ImmutableArray.CreateBuilder<string>();
        var onWheels = discipline is Discipline.Cycling or Discipline.Triathlon;
        var line = Measured(track, onWheels ? FastestOnWheelsMPerS : FastestMPerS, remarks);
        var metres = line.Count == 0 ? 0 : line[^1].Metres;
        if (metres < 1000)
            return new GpxRefused(
                "The track is shorter than a kilometre: it can not be the course of a race."
            );
        if (metres > 500_000)
            return new GpxRefused("The track is longer than 500 km.");
        var scale = Scale(metres, (double)raceKm * 1000, remarks);
        var length = metres * scale;
        var heights = Heights(line, scale, length, remarks);
        var (ascent, descent) = heights is null ? (null, null) : Climb(heights);
        if (heights is not null)
            Judge(heights, remarks);
        return new GpxCourse(
            new CourseProfile
            {
                DistanceKm = Math.Round((decimal)length / 1000, 3),
                Points = Thinned(heights, length),
                AscentM = ascent,
                DescentM = descent,
                Origin = ProfileOrigin.Gpx,
                Name = track.Name.Length > 100 ? track.Name[..100] : track.Name,
                Remarks = remarks.ToImmutable(),
            }
        );
    }

    private readonly record struct Measure(double Metres, double? HeightM);

    /// <summary>Distance from the start of each point worth keeping.</summary>
    private static List<Measure> Measured(
        RawTrack track,
        double fastest,
        ImmutableArray<string>.Builder remarks
    )
    {
        var line = new List<Measure>(track.Count);
        RawPoint? last = null;
        var jumps = 0;
        double metres = 0;
        foreach (var point in track.Points)
        {
            if (last is not { } before)
            {
                line.Add(new Measure(0, point.HeightM));
                last = point;
                continue;
            }
            var step = GreatCircle.Metres(
                before.Latitude,
                before.Longitude,
                point.Latitude,
                point.Longitude
            );
            if (step == 0)
                continue;
            if (IsJump(before, point, step, fastest))
            {
                jumps++;
                continue;
            }
            metres += step;
            line.Add(new Measure(metres, point.HeightM));
            last = point;
        }
        if (jumps > 0)
            remarks.Add(
                $"{Number(jumps)} {(jumps == 1 ? "point" : "points")} that nobody could have reached in the time were left out."
            );
        return line;
    }

    private static bool IsJump(RawPoint from, RawPoint to, double metres, double fastest) =>
        from.Time is { } begun
        && to.Time is { } ended
        && ended > begun
        && metres > ShortestJumpM
        && metres / (ended - begun).TotalSeconds > fastest;

    private static double Scale(
        double metres,
        double official,
        ImmutableArray<string>.Builder remarks
    )
    {
        var off = Math.Abs(metres - official) / official;
        if (off <= IgnoredDifference)
            return official / metres;
        var words = string.Create(
            CultureInfo.InvariantCulture,
            $"The track measures {metres / 1000:0.0} km, the race {official / 1000:0.0} km"
        );
        if (off <= ScaledDifference)
        {
            remarks.Add($"{words}: scaled to the race.");
            return official / metres;
        }
        remarks.Add($"{words}: more than 3 % apart. Is it the right file?");
        return 1;
    }

    /// <summary>Smoothed heights every 20 m; null where too few are known.</summary>
    private static double[]? Heights(
        List<Measure> line,
        double scale,
        double length,
        ImmutableArray<string>.Builder remarks
    )
    {
        var known = line.Where(m => m.HeightM is not null).ToList();
        if (known.Count < 2 || known.Count < KnownHeights * line.Count)
        {
            remarks.Add(
                "The file holds no heights: splits are even and the climb is not in the energy."
            );
            return null;
        }
        if (known.Count < line.Count)
            remarks.Add("Some heights are missing and were drawn straight from their neighbours.");
        var count = (int)Math.Floor(length / StepM) + 1;
        var heights = new double[count];
        var after = 0;
        for (var i = 0; i < count; i++)
        {
            var at = i * StepM / scale;
            while (after < known.Count && known[after].Metres < at)
                after++;
            heights[i] = Between(known, after, at);
        }
        return Average(Median(heights), AverageOver);
    }

    private static double Between(List<Measure> known, int after, double at)
    {
        if (after == 0)
            return known[0].HeightM ?? 0;
        if (after == known.Count)
            return known[^1].HeightM ?? 0;
        var (from, to) = (known[after - 1], known[after]);
        var share = (at - from.Metres) / (to.Metres - from.Metres);
        return (from.HeightM ?? 0) + ((to.HeightM ?? 0) - (from.HeightM ?? 0)) * share;
    }

    private static double[] Median(double[] heights)
    {
        var smooth = (double[])heights.Clone();
        Span<double> five = stackalloc double[5];
        for (var i = 2; i < heights.Length - 2; i++)
        {
            heights.AsSpan(i - 2, 5).CopyTo(five);
            five.Sort();
            smooth[i] = five[2];
        }
        return smooth;
    }

    // near the ends the average shrinks on both sides, so that start and finish keep their heights
    private static double[] Average(double[] heights, int over)
    {
        var sums = new double[heights.Length + 1];
        for (var i = 0; i < heights.Length; i++)
            sums[i + 1] = sums[i] + heights[i];
        var smooth = new double[heights.Length];
        for (var i = 0; i < heights.Length; i++)
        {
            var reach = Math.Min(over / 2, Math.Min(i, heights.Length - 1 - i));
            smooth[i] = (sums[i + reach + 1] - sums[i - reach]) / (2 * reach + 1);
        }
        return smooth;
    }

    private static (decimal? Ascent, decimal? Descent) Climb(double[] heights)
    {
        double ascent = 0,
            descent = 0,
            mark = heights[0];
        foreach (var height in heights)
            if (height > mark + HysteresisM)
                (ascent, mark) = (ascent + height - mark, height);
            else if (height < mark - HysteresisM)
                (descent, mark) = (descent + mark - height, height);
        return (Math.Round((decimal)ascent), Math.Round((decimal)descent));
    }

    private static void Judge(double[] heights, ImmutableArray<string>.Builder remarks)
    {
        const int perHundred = (int)(100 / StepM);
        var steep = 0;
        var all = 0;
        for (var i = perHundred; i < heights.Length; i += perHundred, all++)
            if (Math.Abs(heights[i] - heights[i - perHundred]) / 100 > SteepGradient)
                steep++;
        if (all > 0 && steep > SteepShare * all)
            remarks.Add(
                "More than a fiftieth of the course is steeper than 25 %: the heights look wrong."
            );
    }

    /// <summary>A point every 100 m, or fewer on long courses, so that a profile never holds more than about a thousand.</summary>
    private static ImmutableArray<CoursePoint> Thinned(double[]? heights, double length)
    {
        var end = Math.Round((decimal)length / 1000, 3);
        if (heights is null)
            return [new(0, null), new(end, null)];
        var every = 5 * (int)Math.Ceiling(heights.Length / 5000.0);
        var points = ImmutableArray.CreateBuilder<CoursePoint>();
        for (var i = 0; i < heights.Length; i += every)
        {
            var km = Math.Round((decimal)(i * StepM) / 1000, 3);
            if (km < end)
                points.Add(new CoursePoint(km, Math.Round((decimal)heights[i], 1)));
        }
        points.Add(new CoursePoint(end, Math.Round((decimal)heights[^1], 1)));
        return points.ToImmutable();
    }

    private static string Number(int count) => count.ToString(CultureInfo.InvariantCulture);
}
