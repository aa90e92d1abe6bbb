using System.Collections.Immutable;
using NodaTime;
using Practice.Domain.Evidence;
using Practice.Domain.Foods;
using Practice.Domain.Physiology;
using Practice.Domain.Quantities;
using Practice.Domain.Screening;
using Practice.Domain.Targets;

namespace Practice.Domain.Plans.Weeks;

/// <summary>
/// The meals before the start as a day of sittings. 1 g/kg for each hour that is left: a meal three hours before and a
/// small second feed that counts towards it. Before seven o'clock a smaller meal two hours before and something to drink
/// later; from half past twelve on a usual breakfast first. Fat below 15 g, fibre below 5 g, protein up to 0.3 g/kg.
/// Common practice within Thomas 2016; shares and times are own rules.
/// </summary>
public static class RaceMorning
{
    /// <summary>Where the race morning comes from.</summary>
    public static Source Source { get; } =
        new(
            "race-morning",
            "Meal 3 h before the start at 1 g/kg for each hour, a small second feed, little fat, fibre and protein; "
                + "1 to 1.5 g/kg at 2 h before a very early start.",
            Provenance.CommonPractice
        );

    private const decimal SecondFeedGPerKg = 0.5m;
    private const decimal FatMaxG = 15;
    private const decimal FibreMaxG = 5;
    private const decimal ProteinMaxGPerKg = 0.3m;
    private const decimal UsualRateGPerKg = 10;

    /// <summary>The sittings of the race morning, without food.</summary>
    /// <param name="start">Start in the race's clock.</param>
    /// <param name="mass">Body mass.</param>
    /// <param name="targets">What the loading days are held against: a lower rate lowers the breakfast too.</param>
    /// <param name="adjustments">What screening changed.</param>
    public static PlanDay Layout(
        LocalDateTime start,
        BodyMass mass,
        LoadingTargets targets,
        Adjustments adjustments
    )
    {
        ArgumentNullException.ThrowIfNull(targets);
        ArgumentNullException.ThrowIfNull(adjustments);
        var rate = targets.CarbohydrateRate.Aim ?? UsualRateGPerKg;
        var part = targets.Loads ? Math.Min(1, rate / UsualRateGPerKg) : 2m / 3;
        var occasions = Feeds(start, mass.Kilograms)
            .Select(f => new Occasion
            {
                Kind = f.Kind,
                Time = start.PlusMinutes(-f.MinutesBefore).TimeOfDay,
                CarbohydrateAimG = f.Grams * part,
            })
            .ToImmutableArray();
        return new PlanDay
        {
            Date = start.Date,
            DaysBefore = 0,
            Share = 1,
            Occasions = occasions,
            Limits = Limits(occasions.Sum(o => o.CarbohydrateAimG), mass, adjustments),
        };
    }

    private static IEnumerable<(OccasionKind Kind, int MinutesBefore, decimal Grams)> Feeds(
        LocalDateTime start,
        decimal massKg
    )
    {
        var second = SecondFeedGPerKg * massKg;
        if (start.TimeOfDay < new LocalTime(7, 0))
            return
            [
                (OccasionKind.Breakfast, 120, 1.25m * massKg),
                (OccasionKind.MorningSnack, 45, second),
            ];
        var meal = PreRaceMeal.CarbohydrateG(massKg, hoursBefore: 3) - second;
        if (start.TimeOfDay < new LocalTime(12, 30))
            return [(OccasionKind.Breakfast, 180, meal), (OccasionKind.MorningSnack, 75, second)];
        var sinceBreakfast = (int)
            Period.Between(start.Date.At(new LocalTime(8, 0)), start, PeriodUnits.Minutes).Minutes;
        return
        [
            (OccasionKind.Breakfast, sinceBreakfast, 1.5m * massKg),
            (OccasionKind.Lunch, 180, meal),
            (OccasionKind.AfternoonSnack, 75, second),
        ];
    }

    private static DayLimits Limits(decimal aimG, BodyMass mass, Adjustments adjustments) =>
        new()
        {
            CarbohydrateAimG = aimG,
            CarbohydrateTolerance = 0.05m,
            FibreMaxG = adjustments.NoLowResidue ? 15 : FibreMaxG,
            FatMaxG = FatMaxG,
            ProteinMinG = 0,
            ProteinMaxG = ProteinMaxGPerKg * mass.Kilograms,
            DrinksShareMin = 0.10m,
            DrinksShareAim = 0.30m,
            DrinksShareMax = 0.55m,
            SugaryShareMax = 0.65m,
            SodiumMinMg = 0,
            SodiumMaxMg = adjustments.NoAddedSodium ? 800 : 2000,
            FructoseMaxPerOccasionG = adjustments.FructoseMaxPerOccasionG ?? 50,
            LactoseMaxPerOccasionG = adjustments.LactoseMaxPerOccasionG is { } lactose
                ? Math.Min(lactose, 6)
                : null,
            LactoseMaxPerDayG = adjustments.LactoseMaxPerDayG,
            OccasionWeightMaxG = 12.5m * mass.Kilograms * adjustments.OccasionWeightFactor,
        };
}
