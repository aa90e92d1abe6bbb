using System.Collections.Immutable;
using NodaTime;
using Practice.Domain.Clients;
using Practice.Domain.Races;
using Practice.Domain.Screening;

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

    /// <summary>Length of the window that the targets hold for, h: as chosen, or 24 when the event is too short to load.</summary>
    public int WindowHours { get; init; } = 36;

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

    /// <summary>
    /// Computes everything a client's loading plan is held against. Guidelines set the targets; models explain; what
    /// screening says comes before both; a practitioner's own value, which carries a reason, replaces the aim (the
    /// ceiling, where a target has no aim) and what is computed from it.
    /// </summary>
    /// <param name="client">Who it is for; weighed at least once.</param>
    /// <param name="race">What it is for.</param>
    /// <param name="screening">What the health questions change.</param>
    /// <param name="choices">What the practitioner chose.</param>
    /// <param name="today">Today, for the client's age.</param>
    /// <exception cref="ArgumentException">The client has not been weighed, or a choice is out of range.</exception>
    public static LoadingTargets For(
        Client client,
        Race race,
        ScreeningOutcome screening,
        LoadingChoices choices,
        LocalDate today
    )
    {
        var loading = LoadingCase.Of(client, race, screening, choices, today);
        var finish = ExpectedFinishTarget.Of(loading);
        var loads = EventLength.IsWorthLoading(race, finish);
        var hours = loads ? choices.WindowHours : 24;
        var rate = CarbohydrateRateTarget.Of(loading, loads);
        var perDay = CarbohydrateAmounts.PerDay(loading, rate);
        var protein = ProteinTarget.Of(loading);
        var fibre = FibreTarget.Of(loading);
        var fat = FatTarget.Of(loading, perDay, protein, fibre);
        var glycogen = GlycogenForecast.Of(loading, perDay);
        return new LoadingTargets
        {
            Loads = loads,
            WindowHours = hours,
            CarbohydrateRate = rate,
            CarbohydratePerDay = perDay,
            CarbohydrateTotal = CarbohydrateAmounts.Total(loading, perDay, hours),
            Energy = EnergyTarget.Of(loading, perDay, protein, fat, fibre),
            Protein = protein,
            Fat = fat,
            Fibre = fibre,
            DrinksShare = DrinksShareTarget.Of(loading),
            Fluid = FluidTarget.Of(loading),
            Sodium = SodiumTarget.Of(loading),
            FructosePerOccasion = FructoseTarget.Of(loading),
            BodyMassGain = BodyMassGainTarget.Of(loading, glycogen, hours),
            Benefit = BenefitTarget.Of(loading, loads, finish, glycogen, hours),
            ExpectedFinish = finish,
            Glycogen = glycogen.Hourly(hours),
        };
    }

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
