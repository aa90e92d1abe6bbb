using System.Collections.Immutable;
using NodaTime;
using Practice.Domain.Course;

namespace Practice.Planner.Course;

/// <summary>
/// All that could be taken along a course: what stations hand out as they are passed, and what is carried at each slot
/// of five minutes (ten above eight hours, fifteen above sixteen). What wants water is offered only where there is some.
/// </summary>
internal static class CourseOffers
{
    // two cups are what a runner gets down in passing
    private const int CupsAtOnce = 2;
    private const decimal MostMlAtOnce = 400;

    public static ImmutableArray<Offer> For(CourseCase course, PaceLine pace)
    {
        var products = EligibleProducts.For(course).Allowed;
        var times = OfferTimes.Of(course, pace);
        var offers = new List<Offer>();
        foreach (var station in course.Sheet.Stations)
        {
            var minute = pace.At(station.Km).TotalMinutes;
            foreach (var product in products.Where(p => station.Has(p.Id)))
                if (IsTime(product, minute, times))
                    offers.Add(
                        new Offer(product, minute, station.Km, station, MostAt(product, station))
                    );
        }
        var carried = products.Where(p => p.IsCarried).ToList();
        var hasOwnWater = carried.Any(p => p.Id == Product.WaterId);
        var waters = offers.Where(o => o.IsWater).Select(o => (o.Minute, o.Km)).ToList();
        var slots = SlotsOf(course)
            .Select(m => KmAt(pace, m))
            .Distinct()
            .Select(km => (Minute: pace.At(km).TotalMinutes, Km: km))
            .ToList();
        foreach (var product in carried)
        foreach (var (minute, km) in product.WaterNeedMl > 0 && !hasOwnWater ? waters : slots)
            if (IsTime(product, minute, times))
                offers.Add(new Offer(product, minute, km, null, 1));
        return [.. offers.OrderBy(o => o.Minute).ThenBy(o => !o.IsWater).ThenBy(o => o.IsEaten)];
    }

    /// <summary>Length of a slot, min.</summary>
    public static int SlotOf(CourseCase course) =>
        course.Hours switch
        {
            <= 8 => 5,
            <= 16 => 10,
            _ => 15,
        };

    private static IEnumerable<double> SlotsOf(CourseCase course)
    {
        var slot = SlotOf(course);
        for (double minute = slot; minute < course.Finish.TotalMinutes; minute += slot)
            yield return minute;
    }

    private static decimal KmAt(PaceLine pace, double minute) =>
        Math.Round(pace.KmAt(Duration.FromMinutes(minute)), 1);

    private static bool IsTime(Product product, double minute, OfferTimes times)
    {
        if (product.CaffeineMg > times.CaffeineAtOnceMg)
            return false;
        if (product.CaffeineMg > 0 && minute < times.FirstCaffeine)
            return false;
        if (product.CarbohydrateG == 0)
            return minute >= times.FirstDrink && minute <= times.LastWater;
        return minute <= times.LastFeed
            && minute >= (product.IsDrink ? times.FirstSweetDrink : times.FirstFeed);
    }

    private static int MostAt(Product product, AidStation station) =>
        product.IsDrink ? Math.Clamp((int)(MostMlAtOnce / station.CupMl), 1, CupsAtOnce) : 1;
}
