using NodaTime;
using Practice.Domain.Clients;
using Practice.Domain.Evidence;
using Practice.Domain.Physiology;
using Practice.Domain.Races;
using Practice.Domain.Screening;

namespace Practice.Domain.Targets;

/// <summary>What the targets of one client and race are computed from, gathered and checked once.</summary>
internal sealed record LoadingCase
{
    public required BodyMassEntry Weighing { get; init; }
    public required Physique Physique { get; init; }
    public required int AgeYears { get; init; }
    public required Race Race { get; init; }
    public required Adjustments Adjustments { get; init; }
    public required LoadingChoices Choices { get; init; }
    public required MaximalOxygenUptake Vo2Max { get; init; }

    public decimal MassKg => Weighing.Mass.Kilograms;

    public bool IsAdult => AgeYears >= 18;

    public BasisInput MassInput =>
        BasisInput.Of(
            "Body mass",
            MassKg,
            $"kg, weighed {BasisInput.Day(Weighing.On)}",
            decimals: 1
        );

    /// <summary>Fat-free mass from measured body fat, kg; null when body fat was not measured.</summary>
    public double? MeasuredFatFreeKg =>
        Physique.BodyFatPercent is { } fat
            ? FatFreeMass.FromBodyFat((double)MassKg, (double)fat)
            : null;

    /// <exception cref="ArgumentException">The client has not been weighed, or a choice is out of range.</exception>
    public static LoadingCase Of(
        Client client,
        Race race,
        ScreeningOutcome screening,
        LoadingChoices choices,
        LocalDate today
    )
    {
        ArgumentNullException.ThrowIfNull(client);
        ArgumentNullException.ThrowIfNull(race);
        ArgumentNullException.ThrowIfNull(screening);
        ArgumentNullException.ThrowIfNull(choices);
        if (choices.WindowHours is < 24 or > 96)
            throw new ArgumentException("A loading window is 24 to 96 h long.", nameof(choices));
        if (choices.DrinksShare is < 0 or > 0.5m)
            throw new ArgumentException(
                "Drinks bring 0 to 0.5 of the carbohydrate.",
                nameof(choices)
            );
        if (choices.CarbohydrateGPerKg <= 0)
            throw new ArgumentException("A carbohydrate rate is above zero.", nameof(choices));
        return new LoadingCase
        {
            Weighing =
                client.LatestMass
                ?? throw new ArgumentException("Targets need a body mass.", nameof(client)),
            Physique = client.Physique,
            AgeYears = client.AgeOn(today),
            Race = race,
            Adjustments = screening.Adjustments,
            Choices = choices,
            Vo2Max = MaximalOxygenUptake.Of(client.Physique),
        };
    }

    /// <summary>The practitioner's latest own value for a target, beside what is computed now.</summary>
    public TargetOverride? OverrideOf(string key, decimal? computed) =>
        Choices.Overrides.Of(key, computed);
}
