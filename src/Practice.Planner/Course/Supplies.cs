using Practice.Domain.Course;
using Practice.Planner.Model;

namespace Practice.Planner.Course;

/// <summary>What can be had: two cups in passing, what pocket and belt hold, and water where food wants it.</summary>
internal static class Supplies
{
    private const int CupsInPassing = 2;
    private const double WithinReach = 5;
    private const long NewKind = 40;

    public static void Add(CourseModel model)
    {
        CupsOfAStation(model);
        if (model.Relaxed != CourseRelaxation.Carry)
            Carried(model);
        if (model.Relaxed != CourseRelaxation.WaterWithFood)
            WaterWithFood(model);
        FewKinds(model);
    }

    private static void CupsOfAStation(CourseModel model)
    {
        foreach (
            var cups in model
                .Places(o => o is { Station: not null, Product.IsDrink: true })
                .GroupBy(i => model.Offers[i].Km)
        )
            model.Hard(cups, _ => 1, high: CupsInPassing);
    }

    private static void Carried(CourseModel model)
    {
        foreach (
            var product in model
                .Places(o => o.Station is null)
                .GroupBy(i => model.Offers[i].Product.Id)
        )
        {
            var known = model.Offers[product.First()].Product;
            var refills = known.RefillsAtStations
                ? model.Course.Sheet.Stations.Where(s => s.Has(known.Id)).Select(s => s.Km).ToList()
                : [];
            foreach (var stretch in product.GroupBy(i => Refilled(model.Offers[i].Km)))
            {
                var locked = model
                    .Locked.Where(s =>
                        s.IsCarried && s.ProductId == known.Id && Refilled(s.Km) == stretch.Key
                    )
                    .Sum(s => s.Count);
                model.Hard(stretch, _ => 1, high: Math.Max(0, known.CarryLimit - locked));
            }

            int Refilled(decimal km) => refills.Count(r => r <= km);
        }
    }

    private static void WaterWithFood(CourseModel model)
    {
        foreach (var i in model.Places(o => o.Product.WaterNeedMl > 0))
        {
            var offer = model.Offers[i];
            var (from, to) = (offer.Minute - WithinReach, offer.Minute + WithinReach);
            var near = model.Within(from, to).Where(w => model.Offers[w].IsWater).ToArray();
            var locked = model.LockedWithin(
                from,
                to,
                s => s.ProductId == Product.WaterId ? s.Ml : 0
            );
            model.Add(
                [.. near, i],
                [.. near.Select(w => model.Offers[w].Ml), -(long)offer.Product.WaterNeedMl],
                low: -(long)locked,
                high: Row.Unbounded
            );
        }
    }

    /// <summary>Few kinds of things in the pocket: each one more costs once, however often it is taken.</summary>
    private static void FewKinds(CourseModel model)
    {
        foreach (
            var product in model
                .Places(o => o is { Station: null, IsEaten: true })
                .GroupBy(i => model.Offers[i].Product.Id)
        )
            if (model.Locked.All(s => s.ProductId != product.Key))
                model.Soft(product, _ => 1, -Row.Unbounded, 0, step: int.MaxValue, NewKind);
    }
}
