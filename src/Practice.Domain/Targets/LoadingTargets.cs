using System.Collections.Immutable;

namespace Practice.Domain.Targets;

/// <summary>Expected muscle glycogen at an hour of the loading window.</summary>
/// <param name="Hour">Hours from the first loading meal.</param>
/// <param name="Expected">Expected muscle glycogen, mmol/kg wet weight.</param>
/// <param name="Low">Lower end of the band.</param>
/// <param name="High">Upper end of the band.</param>
public sealed record GlycogenPoint(decimal Hour, decimal Expected, decimal Low, decimal High);

/// <summary>Everything a loading plan is held against.</summary>
public sealed record LoadingTargets
{
    /// <summary>Whether the event is long enough to load for; otherwise the plan tops up.</summary>
    public required bool Loads { get; init; }

    /// <summary>Carbohydrate rate, g/kg per 24 h.</summary>
    public required Target CarbohydrateRate { get; init; }

    /// <summary>Carbohydrate of a full day, g.</summary>
    public required Target CarbohydratePerDay { get; init; }

    /// <summary>Carbohydrate of the whole window, g.</summary>
    public required Target CarbohydrateTotal { get; init; }

    /// <summary>Energy of a full loading day, kcal.</summary>
    public required Target Energy { get; init; }

    /// <summary>Protein of a full day, g: floor and aim.</summary>
    public required Target Protein { get; init; }

    /// <summary>Fat ceiling of a full day, g.</summary>
    public required Target Fat { get; init; }

    /// <summary>Fibre ceiling of a full day, g.</summary>
    public required Target Fibre { get; init; }

    /// <summary>Share of carbohydrate drunk, %.</summary>
    public required Target DrinksShare { get; init; }

    /// <summary>Drinking on a loading day, litres above usual.</summary>
    public required Target Fluid { get; init; }

    /// <summary>Sodium of a full day, mg.</summary>
    public required Target Sodium { get; init; }

    /// <summary>Fructose of one sitting, g.</summary>
    public required Target FructosePerOccasion { get; init; }

    /// <summary>Expected gain of body mass, kg.</summary>
    public required Target BodyMassGain { get; init; }

    /// <summary>Expected benefit over a set distance, %.</summary>
    public required Target Benefit { get; init; }

    /// <summary>Expected finish time, minutes.</summary>
    public required Target ExpectedFinish { get; init; }

    /// <summary>Expected muscle glycogen through the window.</summary>
    public required ImmutableArray<GlycogenPoint> Glycogen { get; init; }

    /// <summary>All targets in reading order.</summary>
    public IEnumerable<Target> All =>
        [
            CarbohydrateRate,
            CarbohydratePerDay,
            CarbohydrateTotal,
            Energy,
            Protein,
            Fat,
            Fibre,
            DrinksShare,
            Fluid,
            Sodium,
            FructosePerOccasion,
            BodyMassGain,
            Benefit,
            ExpectedFinish,
        ];
}
