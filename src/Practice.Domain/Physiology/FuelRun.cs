using System.Collections.Immutable;

namespace Practice.Domain.Physiology;

/// <summary>A moment of the curve.</summary>
internal sealed record FuelMoment(double Hour, double Km);

/// <summary>The moments at which a curve is drawn: each hour before the start, the start, the end of each leg.</summary>
/// <param name="Moments">In order of time.</param>
/// <param name="Start">Which of them is the start.</param>
/// <param name="EatenG">Burnt of what was taken on the course, g, by the end of each leg.</param>
internal sealed record FuelTimes(
    ImmutableArray<FuelMoment> Moments,
    int Start,
    ImmutableArray<double> EatenG
)
{
    /// <summary>How much of the time before the start is drawn when there is no loading, h.</summary>
    private const double DayBefore = 24;

    public static FuelTimes Of(FuelCase fuel)
    {
        var first = (int)Math.Ceiling(fuel.Loading?.Hours ?? DayBefore);
        var before = Enumerable.Range(0, first).Select(i => new FuelMoment(i - first, 0)).ToList();
        return new(
            [.. before, new(0, 0), .. fuel.Course.Select(leg => new FuelMoment(leg.Hour, leg.Km))],
            before.Count,
            [
                .. fuel.Course.Select(l =>
                    RaceFeeding.BurntG(fuel.Feeds, l.Hour, fuel.Course[^1].Hour)
                ),
            ]
        );
    }
}

/// <summary>The glycogen that liver and legs can give, g, at each moment under one guess of the unknowns.</summary>
internal sealed record FuelRun(double[] Grams, double Reserve, double? WallKm)
{
    public static FuelRun Of(FuelCase fuel, FuelUnknowns unknown, FuelTimes times)
    {
        var grams = new double[times.Moments.Length];
        for (var i = 0; i <= times.Start; i++)
            grams[i] = Before(fuel, unknown, -times.Moments[i].Hour);
        var wall = Run(fuel, unknown, grams, times);
        return new(grams, grams[^1] / grams[times.Start], wall);
    }

    private static double Before(FuelCase fuel, FuelUnknowns unknown, double hoursToStart) =>
        FuelCurve.UsableLegShare
            * MuscleGlycogen.Grams(
                Muscle(fuel, unknown, hoursToStart),
                unknown.LegShare * fuel.MassKg
            )
        + LiverFill(fuel, unknown, hoursToStart)
            * WallModel.LiverShare
            * WallModel.FullLiverKcalPerKg
            * fuel.MassKg
            / KcalPerG;

    private static double Muscle(FuelCase fuel, FuelUnknowns unknown, double hoursToStart)
    {
        var usual = MuscleGlycogen.OnUsualDiet(fuel.Vo2Max) + unknown.StartShift;
        return fuel.Loading is { } loading
            ? StorageLimit.Hold(
                unknown.Kinetics,
                usual,
                fuel.MassKg,
                fuel.Sex,
                loading.GramsPerKgDay,
                Math.Max(0, loading.Hours - hoursToStart)
            )
            : usual;
    }

    /// <summary>Full in the evening, emptied by the night in a straight line, filled again in the hour after breakfast.</summary>
    private static double LiverFill(FuelCase fuel, FuelUnknowns unknown, double hoursToStart)
    {
        if (hoursToStart >= fuel.NightFrom)
            return FuelCurve.FedLiverFill;
        var morning = Math.Min(fuel.BreakfastAt, fuel.NightFrom);
        var night = fuel.NightFrom - morning;
        var gone = night <= 0 ? 1 : Math.Clamp((fuel.NightFrom - hoursToStart) / night, 0, 1);
        var fill = FuelCurve.FedLiverFill * (1 - unknown.NightLoss * gone);
        var eaten =
            Math.Min(1, fuel.BreakfastGPerKg) * Math.Clamp(fuel.BreakfastAt - hoursToStart, 0, 1);
        return fill + (FuelCurve.FedLiverFill - fill) * eaten;
    }

    /// <returns>Where the store is used up, km; null when it reaches the finish.</returns>
    private static double? Run(FuelCase fuel, FuelUnknowns unknown, double[] grams, FuelTimes times)
    {
        double? wall = null;
        var (km, burnt, start) = (0.0, 0.0, times.Start);
        for (var i = 0; i < fuel.Course.Length; i++)
        {
            var leg = fuel.Course[i];
            var eaten = times.EatenG[i];
            var used = Math.Max(0, CarbohydrateG(fuel, unknown, leg) - (eaten - burnt));
            var (before, after) = (grams[start + i], grams[start + i] - used);
            if (wall is null && after < 0)
                wall = km + (leg.Km - km) * before / used;
            (grams[start + i + 1], km, burnt) = (after, leg.Km, eaten);
        }
        return wall;
    }

    private static double CarbohydrateG(FuelCase fuel, FuelUnknowns unknown, FuelLeg leg)
    {
        var share = Math.Clamp(
            CarbohydrateShare.At(leg.RelativeIntensity) + unknown.ShareShift,
            0,
            1
        );
        return unknown.CostFactor * leg.NetKcalPerKg * fuel.MassKg * share / KcalPerG;
    }

    private const double KcalPerG = (double)FoodEnergy.Carbohydrate;
}
