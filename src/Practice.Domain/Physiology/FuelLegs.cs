using System.Collections.Immutable;

namespace Practice.Domain.Physiology;

/// <summary>The course as legs of a kilometre when nothing but its length is known: level and at an even pace.</summary>
public static class FuelLegs
{
    /// <summary>Legs of running on the level. Checks E09, E14.</summary>
    /// <param name="distanceKm">Distance, km, above 0.</param>
    /// <param name="hours">Finish time, h, above 0.</param>
    /// <param name="vo2Max">Maximal oxygen uptake, mL/kg/min.</param>
    public static ImmutableArray<FuelLeg> Running(double distanceKm, double hours, double vo2Max) =>
        Even(
            distanceKm,
            hours,
            RunningEnergy.KcalPerKgPerKm,
            RunningIntensity.Relative(distanceKm / hours, vo2Max)
        );

    /// <summary>Legs of one cost and intensity.</summary>
    /// <param name="distanceKm">Distance, km, above 0.</param>
    /// <param name="hours">Finish time, h, above 0.</param>
    /// <param name="netKcalPerKgPerKm">Net cost, kcal/kg/km.</param>
    /// <param name="relativeIntensity">VO2 over VO2max.</param>
    public static ImmutableArray<FuelLeg> Even(
        double distanceKm,
        double hours,
        double netKcalPerKgPerKm,
        double relativeIntensity
    )
    {
        var ends = Enumerable
            .Range(1, (int)Math.Ceiling(distanceKm))
            .Select(km => Math.Min(km, distanceKm));
        return
        [
            .. ends.Select(
                (end, i) =>
                    new FuelLeg(
                        end,
                        hours * end / distanceKm,
                        netKcalPerKgPerKm * (end - i),
                        relativeIntensity
                    )
            ),
        ];
    }
}
