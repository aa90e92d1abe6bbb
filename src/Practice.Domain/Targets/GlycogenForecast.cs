using System.Collections.Immutable;
using Practice.Domain.Clients;
using Practice.Domain.Physiology;

namespace Practice.Domain.Targets;

/// <summary>Muscle glycogen of a client through the window: expected, and the band it may lie in. It explains, it sets nothing.</summary>
internal sealed record GlycogenForecast
{
    public required double MassKg { get; init; }
    public required Sex Sex { get; init; }
    public required double StartMmolPerKg { get; init; }
    public required double GramsPerKgDay { get; init; }

    public static GlycogenForecast Of(LoadingCase loading, Target perDay) =>
        new()
        {
            MassKg = (double)loading.MassKg,
            Sex = loading.Physique.Sex,
            StartMmolPerKg = MuscleGlycogen.OnUsualDiet(loading.Vo2Max.MlPerKgMin),
            GramsPerKgDay = (double)(perDay.Aim!.Value / loading.MassKg),
        };

    /// <summary>Expected concentration after some hours, mmol/kg wet weight.</summary>
    public double Expected(double hours) => At(GlycogenLoading.Expected, StartMmolPerKg, hours);

    /// <summary>Expected gain of muscle glycogen after some hours, g. Check L19.</summary>
    public double GainG(double hours) =>
        GlycogenStores.MuscleG(MassKg, Sex, Expected(hours) - StartMmolPerKg);

    /// <summary>The curve, hour by hour.</summary>
    public ImmutableArray<GlycogenPoint> Hourly(int hours) =>
        [.. Enumerable.Range(0, hours + 1).Select(Point)];

    private GlycogenPoint Point(int hour) =>
        new(
            hour,
            Stored(Expected(hour)),
            Stored(At(GlycogenLoading.Low, StartMmolPerKg - MuscleGlycogen.UsualSpread, hour)),
            Stored(At(GlycogenLoading.High, StartMmolPerKg + MuscleGlycogen.UsualSpread, hour))
        );

    private double At(GlycogenLoading kinetics, double start, double hours) =>
        StorageLimit.Hold(kinetics, start, MassKg, Sex, GramsPerKgDay, hours);

    /// <summary>Two decimals: every stored plan carries the curve, and more would be noise.</summary>
    private static decimal Stored(double mmolPerKg) => Math.Round((decimal)mmolPerKg, 2);
}
