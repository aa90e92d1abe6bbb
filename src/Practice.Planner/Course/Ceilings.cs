using Practice.Domain.Course;

namespace Practice.Planner.Course;

/// <summary>What must not be passed in any hour: sugars, carbohydrate, drinking, caffeine; and never more in than is sweated.</summary>
internal static class Ceilings
{
    private const double Hour = 60;
    private const double BetweenSolids = 15;

    public static void Add(CourseModel model)
    {
        var targets = model.Targets;
        foreach (var from in Starts(model, Hour))
        {
            if (model.Relaxed != CourseRelaxation.Sugars)
            {
                AtMost(model, from, Hour, o => o.Glucose, s => s.GlucoseG, targets.Glucose.High);
                AtMost(model, from, Hour, o => o.Fructose, s => s.FructoseG, targets.Fructose.High);
            }
            AtMost(
                model,
                from,
                Hour,
                o => o.Carbohydrate,
                s => s.CarbohydrateG,
                targets.Carbohydrate.High
            );
            if (model.Relaxed != CourseRelaxation.Fluid)
                Whole(model, from, Hour, o => o.Ml, s => s.Ml, 1000 * targets.Fluid.High ?? 0);
            Whole(
                model,
                from,
                Hour,
                o => o.CaffeineMg,
                s => s.CaffeineMg,
                CaffeineRules.AtOnceMg(model.Course)
            );
        }
        foreach (var from in Starts(model, BetweenSolids))
            Whole(
                model,
                from,
                BetweenSolids,
                o => o is { IsEaten: true, IsFeed: true } ? 1 : 0,
                s => s is { Ml: 0, CarbohydrateG: > 0 } ? 1 : 0,
                1
            );
        Whole(
            model,
            0,
            double.MaxValue,
            o => o.CaffeineMg,
            s => s.CaffeineMg,
            CaffeineRules.OnCourseMg(model.Course)
        );
        if (model.Course.Choices.SweatLPerHour is { } sweat)
            Whole(
                model,
                0,
                double.MaxValue,
                o => o.Ml + o.FoodG,
                s => s.Ml + s.FoodG,
                1000 * sweat * model.Course.Hours
            );
    }

    /// <summary>
    /// Where a span may be fullest: at each time something is offered or locked, unless all of it is in the span before.
    /// </summary>
    private static IEnumerable<double> Starts(CourseModel model, double length)
    {
        var minutes = model
            .Offers.Select(o => o.Minute)
            .Concat(model.Locked.Select(s => s.Elapsed.TotalMinutes))
            .Distinct()
            .Order()
            .ToList();
        var reached = double.NegativeInfinity;
        foreach (var from in minutes)
        {
            var last = minutes.Last(m => m < from + length);
            if (last > reached)
                yield return from;
            reached = last;
        }
    }

    private static void AtMost(
        CourseModel model,
        double from,
        double length,
        Func<Offer, long> amount,
        Func<CourseStep, decimal> locked,
        decimal? most
    )
    {
        if (most is { } grams)
            Row(
                model,
                from,
                length,
                amount,
                Offer.Hundredths(grams - model.LockedWithin(from, from + length, locked))
            );
    }

    private static void Whole(
        CourseModel model,
        double from,
        double length,
        Func<Offer, long> amount,
        Func<CourseStep, decimal> locked,
        decimal most
    ) =>
        Row(
            model,
            from,
            length,
            amount,
            (long)Math.Floor(most - model.LockedWithin(from, from + length, locked))
        );

    private static void Row(
        CourseModel model,
        double from,
        double length,
        Func<Offer, long> amount,
        long most
    )
    {
        // what locked steps break by themselves leaves room for nothing
        model.Hard(model.Within(from, from + length), amount, high: Math.Max(0, most));
    }
}
