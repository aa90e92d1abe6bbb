using Practice.Domain.Plans;
using Practice.Planner.Meals;

namespace Practice.Planner.Model.Limits;

/// <summary>What one sitting must keep to: its carbohydrate, weight, fructose and lactose.</summary>
internal static class PlateLimits
{
    public static void Add(MenuModel model, Plate plate)
    {
        var limits = model.Request.Days[plate.Day].Limits;
        var carbohydrate = Sum.OfAmounts(plate, i => i.Carbohydrate);
        var tolerance = Bounds.Hundredths(Bounds.OccasionToleranceG(plate.Occasion, limits));

        Keep(
            LimitKind.OccasionCarbohydrate,
            carbohydrate,
            Math.Max(0, plate.Aim - tolerance),
            plate.Aim + tolerance,
            Prices.OccasionCarbohydrate
        );
        model.Prefer(
            carbohydrate,
            plate.Aim,
            plate.Aim,
            Prices.OffAimOfOccasion,
            "near the aim of the sitting"
        );
        Keep(
            LimitKind.OccasionWeight,
            Sum.OfAmounts(plate, i => i.Weight),
            -Row.Unbounded,
            (long)(limits.OccasionWeightMaxG * Helpings.WeightShare(plate.Kind) * 10),
            Prices.WeightPerTenthOfGram,
            0.1m
        );
        Keep(
            LimitKind.Fructose,
            Sum.OfAmounts(plate, i => i.Fructose),
            -Row.Unbounded,
            Bounds.Hundredths(limits.FructoseMaxPerOccasionG),
            Prices.Fructose
        );
        if (limits.LactoseMaxPerOccasionG is { } lactose)
            Keep(
                LimitKind.Lactose,
                Sum.OfAmounts(plate, i => i.Lactose),
                -Row.Unbounded,
                Bounds.Hundredths(lactose),
                Prices.Lactose
            );

        void Keep(LimitKind kind, Sum sum, long low, long high, long price, decimal unit = 0.01m) =>
            model.Prefer(
                sum,
                low,
                high,
                price,
                $"{kind} of the sitting",
                new Limit(kind, plate.Day, unit)
            );
    }
}
