using System.Collections.Immutable;
using Practice.Domain.Foods;
using Practice.Domain.Plans;
using Practice.Planner.Meals;
using Practice.Planner.Model;
using Practice.Planner.Model.Limits;

namespace Practice.Planner.Checking;

/// <summary>
/// Holds a menu against its limits, by the numbers a reader sees rather than by the solver's: what would print as kept
/// is kept.
/// </summary>
internal static class MenuCheck
{
    // less than a tenth of a gram (a milligram, a tenth of a percent) over a limit would print as on it
    private const decimal Unseen = 0.05m;

    public static ImmutableArray<Shortfall> Of(MenuRequest request)
    {
        var found = ImmutableArray.CreateBuilder<Shortfall>();
        var sugary = request
            .Foods.Where(f => f.Is(FoodTraits.Sugary))
            .Select(f => f.Id)
            .ToHashSet();
        foreach (var day in request.Days)
        {
            found.AddRange(OfDay(day, sugary));
            foreach (var occasion in day.Occasions)
                found.AddRange(OfOccasion(day, occasion));
        }
        found.AddRange(SenseCheck.Of(request));
        return found.ToImmutable();
    }

    /// <summary>Locked portions of foods that are not among the request's any more: no lock brings them back.</summary>
    public static IEnumerable<Shortfall> NoLongerServed(MenuRequest request)
    {
        var served = request.Foods.Select(f => f.Id).ToHashSet();
        return from day in request.Days
            from occasion in day.Occasions
            from portion in occasion.Portions
            where portion.IsLocked && !served.Contains(portion.FoodId)
            select new Shortfall(
                LimitKind.MealSense,
                day.Date,
                occasion.Kind,
                1,
                $"{portion.Name} was locked at {LimitWords.NameOf(occasion.Kind)} on {day.Date.DayOfWeek}, but the client is not served it any more: it was taken out"
            );
    }

    private static IEnumerable<Shortfall> OfDay(PlanDay day, HashSet<string> sugary)
    {
        var (limits, totals) = (day.Limits, day.Totals);
        var aim = limits.CarbohydrateAimG;
        var words = new LimitWords(day);
        return
        [
            .. Band(
                LimitKind.DayCarbohydrate,
                totals.CarbohydrateG,
                aim * (1 - limits.CarbohydrateTolerance),
                aim * (1 + limits.CarbohydrateTolerance)
            ),
            .. Band(LimitKind.Fibre, totals.FibreG, null, limits.FibreMaxG),
            .. Fat(),
            .. Band(LimitKind.ProteinFloor, totals.ProteinG, limits.ProteinMinG, null),
            .. Band(LimitKind.ProteinCeiling, totals.ProteinG, null, limits.ProteinMaxG),
            .. Share(
                LimitKind.DrinksShare,
                p => p.IsLiquid,
                limits.DrinksShareMin,
                limits.DrinksShareMax
            ),
            .. Share(
                LimitKind.SugaryShare,
                p => sugary.Contains(p.FoodId),
                0,
                limits.SugaryShareMax
            ),
            .. Band(
                LimitKind.Sodium,
                totals.SodiumMg,
                limits.SodiumMinMg,
                limits.SodiumMaxMg,
                0.5m
            ),
            .. Band(LimitKind.Lactose, LactoseOf(day.Occasions), null, limits.LactoseMaxPerDayG),
        ];

        // the ceiling in grams and the one in energy are one limit to a reader: the stricter is told
        IEnumerable<Shortfall> Fat()
        {
            var p = limits.FatMaxEnergyShare;
            var byEnergy =
                p >= 1
                    ? decimal.MaxValue
                    : 4 * p * (totals.CarbohydrateG + totals.ProteinG) / (9 * (1 - p));
            return Band(LimitKind.Fat, totals.FatG, null, Math.Min(limits.FatMaxG, byEnergy));
        }

        IEnumerable<Shortfall> Share(
            LimitKind kind,
            Func<Portion, bool> counts,
            decimal low,
            decimal high
        )
        {
            if (totals.CarbohydrateG == 0)
                return [];
            var part = day
                .Occasions.SelectMany(o => o.Portions)
                .Where(counts)
                .Sum(p => p.Nutrients.CarbohydrateG);
            return Band(kind, 100 * part / totals.CarbohydrateG, 100 * low, 100 * high);
        }

        IEnumerable<Shortfall> Band(
            LimitKind kind,
            decimal value,
            decimal? low,
            decimal? high,
            decimal unseen = Unseen
        ) => words.Misses(kind, null, value, low, high, unseen);
    }

    private static IEnumerable<Shortfall> OfOccasion(PlanDay day, Occasion occasion)
    {
        var limits = day.Limits;
        var tolerance = Bounds.OccasionToleranceG(occasion, limits);
        var totals = occasion.Totals;
        var words = new LimitWords(day);
        return
        [
            .. words.Misses(
                LimitKind.OccasionCarbohydrate,
                occasion.Kind,
                totals.CarbohydrateG,
                occasion.CarbohydrateAimG - tolerance,
                occasion.CarbohydrateAimG + tolerance,
                Unseen
            ),
            .. words.Misses(
                LimitKind.OccasionWeight,
                occasion.Kind,
                occasion.Portions.Sum(p => p.Grams),
                null,
                limits.OccasionWeightMaxG * Helpings.WeightShare(occasion.Kind),
                0.5m
            ),
            .. words.Misses(
                LimitKind.Fructose,
                occasion.Kind,
                occasion.Portions.Sum(p => p.Nutrients.FructoseLoadG),
                null,
                limits.FructoseMaxPerOccasionG,
                Unseen
            ),
            .. words.Misses(
                LimitKind.Lactose,
                occasion.Kind,
                LactoseOf([occasion]),
                null,
                limits.LactoseMaxPerOccasionG,
                Unseen
            ),
        ];
    }

    private static decimal LactoseOf(IEnumerable<Occasion> occasions) =>
        occasions
            .SelectMany(o => o.Portions)
            .Sum(p => Item.LactoseOf(p.Per100G, p.Group) * p.Grams / 100);
}
