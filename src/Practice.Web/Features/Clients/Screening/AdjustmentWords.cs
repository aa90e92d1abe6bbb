using Practice.Domain.Foods;
using Practice.Domain.Screening;
using Practice.Web.Parts;

namespace Practice.Web.Features.Clients.Screening;

/// <summary>What screening changes by itself, in sentences for the practitioner.</summary>
internal static class AdjustmentWords
{
    public static IEnumerable<string> Of(Adjustments a) =>
        Switches(a)
            .Where(line => line.IsOn)
            .Select(line => line.Text)
            .Concat(Limits(a).OfType<string>())
            .Concat(Exclusions(a));

    private static IEnumerable<(bool IsOn, string Text)> Switches(Adjustments a) =>
        [
            (a.NumberFree, "Papers show no number with a unit"),
            (a.NoWeighing, "No weighing, and no advice that needs it"),
            (a.NoAddedSodium, "No advice to add salt"),
            (a.NoLowResidue, "No low-residue restriction"),
            (a.ThirstOnly, "Drink to thirst only: no drinking plan"),
            (a.NoProteinFloor, "No protein floor"),
            (a.NoRaceCaffeine, "No caffeine for the race"),
            (a.NoFructoseAtAll, "Foods with fructose or sucrose are never served"),
            (a.NoSucroseAtAll, "Foods with sucrose are never served"),
            (
                a.OccasionWeightFactor < 1,
                $"Plates are cut to {Say.Number(a.OccasionWeightFactor * 100)} % of their weight"
            ),
        ];

    private static IEnumerable<string?> Limits(Adjustments a) =>
        [
            (a.CarbohydrateRateLow, a.CarbohydrateRateHigh) switch
            {
                ({ } low, { } high) =>
                    $"Carbohydrate {Say.Number(low, 1)} to {Say.Number(high, 1)} g/kg/day",
                ({ } low, null) => $"Carbohydrate from {Say.Number(low, 1)} g/kg/day",
                (null, { } high) => $"Carbohydrate at most {Say.Number(high, 1)} g/kg/day",
                _ => null,
            },
            Limit(a.CaffeineMaxMgPerDay, "Caffeine", "mg a day"),
            Limit(a.LactoseMaxPerOccasionG, "Lactose", "g a sitting"),
            Limit(a.LactoseMaxPerDayG, "Lactose", "g a day"),
            Limit(a.FructoseMaxPerOccasionG, "Fructose", "g a sitting"),
        ];

    private static IEnumerable<string> Exclusions(Adjustments a)
    {
        var never = a
            .ExcludedAllergens.Order()
            .Select(e => Say.Words(e))
            .Concat(
                Enum.GetValues<FoodTraits>()
                    .Where(t => t != FoodTraits.None && a.ExcludedTraits.HasFlag(t))
                    .Select(t => Say.Words(t))
            )
            .Distinct(StringComparer.OrdinalIgnoreCase)
            .ToList();
        return never.Count == 0 ? [] : ["Never served: " + string.Join(", ", never)];
    }

    private static string? Limit(decimal? limit, string what, string unit) =>
        limit switch
        {
            null => null,
            0 => $"No {what.ToLowerInvariant()} at all",
            var most => $"{what} at most {Say.Number(most.Value)} {unit}",
        };
}
