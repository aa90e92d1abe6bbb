using System.Collections.Immutable;
using NodaTime;
using Practice.Domain.Evidence;
using Practice.Domain.Foods;
using Practice.Domain.Physiology;
using Practice.Domain.Quantities;
using Practice.Domain.Screening;
using Practice.Domain.Targets;

namespace Practice.Domain.Plans;

/// <summary>
/// Lays the loading window out into days and sittings, still without food. The race breakfast belongs to the window
/// and takes 3 g/kg of its total; what remains is filled backwards from the eve in whole days, the first day a part. An
/// event too short to load for gets the whole eve and no more.
/// </summary>
public static class LoadingLayout
{
    /// <summary>When the race breakfast is eaten, h before the start; it is part of the window's total.</summary>
    private const decimal HoursBeforeStart = 3m;

    /// <summary>A part day below this share of a day is not worth a meal and goes to the day after it.</summary>
    private const decimal SmallestShare = 0.1m;

    /// <summary>Fibre allowed on top of the ceiling before the low-fibre shift, g.</summary>
    private const decimal EarlyDayExtraFibreG = 5m;

    /// <summary>Where the layout comes from.</summary>
    public static Source Source { get; } =
        new(
            "window-layout",
            "Loading window: evening of the second day before, the whole eve, race breakfast of 3 g/kg (36 h).",
            Provenance.CommonPractice
        );

    /// <summary>The days of a window, in order, with sittings and limits.</summary>
    /// <param name="raceStart">Start in the race's clock.</param>
    /// <param name="mass">Body mass.</param>
    /// <param name="choices">Window and sittings.</param>
    /// <param name="targets">What a full day is held against.</param>
    /// <param name="adjustments">What screening changed.</param>
    public static ImmutableArray<PlanDay> Days(
        LocalDateTime raceStart,
        BodyMass mass,
        LoadingChoices choices,
        LoadingTargets targets,
        Adjustments adjustments
    )
    {
        ArgumentNullException.ThrowIfNull(choices);
        ArgumentNullException.ThrowIfNull(targets);
        ArgumentNullException.ThrowIfNull(adjustments);
        var fullDayG = targets.CarbohydratePerDay.Aim ?? 0;
        var shares = targets.Loads ? Shares(targets.WindowHours, fullDayG, mass) : [1m];
        return
        [
            .. shares.Select(
                (share, index) =>
                    Day(
                        shares.Length - index,
                        share,
                        raceStart,
                        mass,
                        choices,
                        targets,
                        adjustments
                    )
            ),
        ];
    }

    /// <summary>Shares of a full day, first day first, for a window of some hours.</summary>
    /// <param name="windowHours">24 to 96 h.</param>
    /// <param name="fullDayG">Carbohydrate of a full day, g.</param>
    /// <param name="mass">Body mass.</param>
    public static ImmutableArray<decimal> Shares(int windowHours, decimal fullDayG, BodyMass mass)
    {
        var breakfast =
            fullDayG == 0
                ? 0
                : PreRaceMeal.CarbohydrateG(mass.Kilograms, HoursBeforeStart) / fullDayG;
        var left = Math.Max(SmallestShare, windowHours / 24m - breakfast);
        var shares = new Stack<decimal>();
        for (; left > 0; left -= 1)
            shares.Push(Math.Min(1, left));
        if (shares.Count > 1 && shares.Peek() < SmallestShare)
        {
            var crumb = shares.Pop();
            shares.Push(shares.Pop() + crumb);
        }
        return [.. shares];
    }

    /// <summary>The sittings of a laid-out day at their usual times; what is on the plates stays.</summary>
    public static ImmutableArray<Occasion> UsualTimes(
        PlanDay day,
        LoadingChoices choices,
        LocalDateTime raceStart
    )
    {
        ArgumentNullException.ThrowIfNull(day);
        ArgumentNullException.ThrowIfNull(choices);
        var usual = choices.FullDay.ToDictionary(
            s => s.Kind,
            s => day.DaysBefore == 1 ? OnTheEve(s, raceStart) : s.Time
        );
        return
        [
            .. day.Occasions.Select(o => o with { Time = usual.GetValueOrDefault(o.Kind, o.Time) }),
        ];
    }

    private static PlanDay Day(
        int daysBefore,
        decimal share,
        LocalDateTime raceStart,
        BodyMass mass,
        LoadingChoices choices,
        LoadingTargets targets,
        Adjustments adjustments
    )
    {
        var dayG = share * (targets.CarbohydratePerDay.Aim ?? 0);
        var sittings = DayShape.Ending(choices.FullDay, share);
        var sum = sittings.Sum(s => s.Share);
        return new PlanDay
        {
            Date = raceStart.Date.PlusDays(-daysBefore),
            DaysBefore = daysBefore,
            Share = share,
            Limits = Limits(daysBefore, share, dayG, mass, choices, targets, adjustments),
            Occasions =
            [
                .. sittings.Select(s => new Occasion
                {
                    Kind = s.Kind,
                    Time = daysBefore == 1 ? OnTheEve(s, raceStart) : s.Time,
                    CarbohydrateAimG = dayG * s.Share / sum,
                }),
            ],
        };
    }

    /// <summary>
    /// On the eve the last substantial meal is 12 to 14 h before the start, between 17:00 and 19:00 (common practice).
    /// </summary>
    private static LocalTime OnTheEve(Sitting sitting, LocalDateTime raceStart)
    {
        var eve = raceStart.Date.PlusDays(-1);
        var earliest = eve.At(new LocalTime(17, 0));
        var latest = eve.At(new LocalTime(19, 0));
        var wanted = raceStart.PlusHours(-13);
        var evening = (
            wanted < earliest ? earliest
            : wanted > latest ? latest
            : wanted
        ).TimeOfDay;
        return sitting.Kind switch
        {
            OccasionKind.EveningMeal => evening,
            OccasionKind.Supper => evening.PlusHours(2),
            OccasionKind.LateAfternoonSnack => evening.PlusMinutes(-105),
            OccasionKind.AfternoonSnack when sitting.Time > evening.PlusMinutes(-120) =>
                evening.PlusMinutes(-150),
            _ => sitting.Time,
        };
    }

    private static DayLimits Limits(
        int daysBefore,
        decimal share,
        decimal dayG,
        BodyMass mass,
        LoadingChoices choices,
        LoadingTargets targets,
        Adjustments adjustments
    )
    {
        var part = Math.Max(0.5m, share);
        var fibre = (targets.Fibre.High ?? 15) + (daysBefore > 2 ? EarlyDayExtraFibreG : 0);
        return new DayLimits
        {
            CarbohydrateAimG = dayG,
            FibreMaxG = adjustments.NoLowResidue ? 60 * part : fibre * part,
            FatMaxG = (targets.Fat.High ?? mass.Kilograms) * part,
            ProteinMinG = adjustments.NoProteinFloor ? 0 : (targets.Protein.Low ?? 0) * share,
            ProteinMaxG = (targets.Protein.High ?? 2 * mass.Kilograms) * part,
            DrinksShareMin = Math.Max(0, choices.DrinksShare - 0.10m),
            DrinksShareAim = choices.DrinksShare,
            DrinksShareMax = Math.Min(0.6m, choices.DrinksShare + 0.10m),
            SodiumMinMg = adjustments.NoAddedSodium ? 0 : (targets.Sodium.Low ?? 0) * share,
            SodiumMaxMg = (targets.Sodium.High ?? 5000) * part,
            FructoseMaxPerOccasionG =
                adjustments.FructoseMaxPerOccasionG ?? targets.FructosePerOccasion.High ?? 50,
            LactoseMaxPerOccasionG = Lactose(daysBefore, adjustments.LactoseMaxPerOccasionG),
            LactoseMaxPerDayG = adjustments.LactoseMaxPerDayG,
            OccasionWeightMaxG = 12.5m * mass.Kilograms * adjustments.OccasionWeightFactor,
        };
    }

    /// <summary>In the last 24 h at most 6 g of lactose a sitting where lactose is limited at all.</summary>
    private static decimal? Lactose(int daysBefore, decimal? ceiling) =>
        daysBefore == 1 && ceiling is { } limit ? Math.Min(limit, 6) : ceiling;
}
