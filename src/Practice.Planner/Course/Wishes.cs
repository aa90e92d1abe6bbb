using Practice.Domain.Course;
using Practice.Planner.Model;

namespace Practice.Planner.Course;

/// <summary>
/// What a good schedule has beyond its limits, each at a price: the carbohydrate aimed at, hour by hour within a dead
/// band of 8 g; no long gaps; about the drinking aimed at; not too strong; the same cups at each station; few things.
/// Prices are one engineer's judgement and a dietitian's to review.
/// </summary>
internal static class Wishes
{
    private const double Hour = 60;
    private const double HalfHour = 30;
    private const double FortyMinutes = 40;
    private const double TwentyMinutes = 20;
    private const double Leeway = 8;
    private const decimal DeadBandG = 8;
    private const decimal MuchAtOnceG = 30;
    private const decimal DeadBandMl = 150;

    private const long AGramAnHourOff = 15;
    private const long AGramShortInAll = 10;
    private const long FiftyMlOff = 30;
    private const long FiftyMlBelowTheFloor = 100;
    private const long AGramTooMuchAtOnce = 5;
    private const long AGap = 200;
    private const long FiveGramsTooStrong = 12;
    private const long FiveGramsFarTooStrong = 50;
    private const long AnotherCup = 15;
    private const long AThingToOpen = 20;
    private const long ACup = 3;
    private const long FiftyMgOfSodium = 10;
    private const long NoCaffeine = 300;
    private const long CaffeineElsewhere = 100;

    public static void Add(CourseModel model)
    {
        Effort(model);
        Carbohydrate(model);
        Gaps(model);
        NotAllAtOnce(model);
        Drinking(model);
        if (model.Relaxed != CourseRelaxation.Strength)
            Strength(model);
        SameCups(model);
        Sodium(model);
        Caffeine(model);
    }

    private static void Effort(CourseModel model)
    {
        foreach (var i in model.Places(_ => true))
            model.Charge(i, model.Offers[i].IsEaten ? AThingToOpen : ACup);
    }

    private static void Carbohydrate(CourseModel model)
    {
        if (model.Targets.Carbohydrate.Aim is not { } rate)
            return;
        var (begin, end) = Feeding(model);
        foreach (var from in Steps(begin, end - Hour, HalfHour))
        {
            var aim = rate - model.LockedWithin(from, from + Hour, s => s.CarbohydrateG);
            model.Soft(
                model.Within(from, from + Hour),
                o => o.Carbohydrate,
                Offer.Hundredths(aim - DeadBandG),
                Offer.Hundredths(aim + DeadBandG),
                step: 100,
                AGramAnHourOff
            );
        }
        var all = rate * FeedingRate.HoursOf(model.Course);
        model.Soft(
            model.Places(_ => true),
            o => o.Carbohydrate,
            Offer.Hundredths(all - model.LockedInAll(s => s.CarbohydrateG)),
            Row.Unbounded,
            step: 100,
            AGramShortInAll
        );
    }

    private static void Gaps(CourseModel model)
    {
        if (model.Targets.Carbohydrate.Aim is null)
            return;
        var slot = CourseOffers.SlotOf(model.Course);
        var (begin, end) = Feeding(model);
        foreach (var from in Steps(begin + slot, end - HalfHour, slot))
            if (model.LockedWithin(from, from + HalfHour, s => s.CarbohydrateG) == 0)
                model.Soft(
                    model.Within(from, from + HalfHour),
                    o => o.IsFeed ? 1 : 0,
                    1,
                    Row.Unbounded,
                    step: 1,
                    AGap
                );
    }

    private static void NotAllAtOnce(CourseModel model)
    {
        if (model.Targets.Carbohydrate.Aim is not { } rate)
            return;
        var most = Math.Max(MuchAtOnceG, rate / 2);
        foreach (var from in model.Offers.Where(o => o.IsFeed).Select(o => o.Minute).Distinct())
            model.Soft(
                model.Within(from, from + TwentyMinutes),
                o => o.Carbohydrate,
                -Row.Unbounded,
                Offer.Hundredths(
                    most - model.LockedWithin(from, from + TwentyMinutes, s => s.CarbohydrateG)
                ),
                step: 100,
                AGramTooMuchAtOnce
            );
    }

    private static void Drinking(CourseModel model)
    {
        if (model.Targets.Fluid is not { Aim: { } aim })
            return;
        var (begin, end) = Feeding(model);
        foreach (var from in Steps(begin, end - Hour, HalfHour))
        {
            var wanted = 1000 * aim - model.LockedWithin(from, from + Hour, s => s.Ml);
            model.Soft(
                model.Within(from, from + Hour),
                o => o.Ml,
                (long)(wanted - DeadBandMl),
                (long)(wanted + DeadBandMl),
                step: 50,
                FiftyMlOff
            );
        }
        if (model.Targets.Fluid.Low is { } floor)
            model.Soft(
                model.Places(_ => true),
                o => o.Ml,
                (long)(1000 * floor * model.Course.Hours - model.LockedInAll(s => s.Ml)),
                Row.Unbounded,
                step: 50,
                FiftyMlBelowTheFloor
            );
    }

    private static void Strength(CourseModel model)
    {
        if (model.Targets.Carbohydrate.Aim is null)
            return;
        var (begin, end) = Feeding(model);
        foreach (var from in Steps(begin, end, TwentyMinutes))
        {
            var window = model.Within(from, from + FortyMinutes).ToList();
            var sugar = model.LockedWithin(from, from + FortyMinutes, s => s.CarbohydrateG);
            var fluid = model.LockedWithin(from, from + FortyMinutes, s => s.Ml);
            AtMost(CourseTargets.StrengthWarns, FiveGramsTooStrong);
            AtMost(CourseTargets.StrengthWarnsStrongly, FiveGramsFarTooStrong);

            // hundredths of a gram in a millilitre are percent
            void AtMost(decimal percent, long price) =>
                model.Soft(
                    window,
                    o => o.Carbohydrate - (long)percent * o.Ml,
                    -Row.Unbounded,
                    (long)(percent * fluid - 100 * sugar),
                    step: 500,
                    price
                );
        }
    }

    private static void SameCups(CourseModel model)
    {
        foreach (
            var product in model
                .Places(o => o is { Station: not null, Product.IsDrink: true })
                .GroupBy(i => model.Offers[i].Product.Id)
        )
        foreach (var (one, next) in product.Zip(product.Skip(1)))
            model.Add([one, next], [1, -1], 0, 0, AnotherCup);
    }

    private static void Sodium(CourseModel model)
    {
        if (model.Targets.Sodium is not { Low: { } low, High: { } high })
            return;
        AtLeast(low, -1);
        AtLeast(high, 1);

        // tenths of a milligram, so that nothing is lost in whole numbers
        void AtLeast(decimal mgPerLitre, int sign)
        {
            var perMl = mgPerLitre / 100;
            var locked = model.LockedInAll(s => 10 * s.SodiumMg - perMl * s.Ml);
            model.Soft(
                model.Places(_ => true),
                o => -sign * (10 * o.SodiumMg - (long)perMl * o.Ml),
                (long)(sign * locked),
                Row.Unbounded,
                step: 500,
                FiftyMgOfSodium
            );
        }
    }

    private static void Caffeine(CourseModel model)
    {
        if (model.Targets.Caffeine.Aim is not > 0)
            return;
        var finish = model.Course.Finish.TotalMinutes;
        var from = finish * (double)CaffeineRules.WindowFrom - Leeway;
        var to = finish * (double)CaffeineRules.WindowTo + Leeway;
        var all = model.Places(o => o.CaffeineMg > 0).ToLookup(IsInside);
        foreach (var i in all[false])
            model.Charge(i, CaffeineElsewhere);
        if (model.LockedInAll(s => s.CaffeineMg) == 0)
            model.Soft(all[true], _ => 1, 1, Row.Unbounded, step: 1, NoCaffeine);

        bool IsInside(int i) => model.Offers[i].Minute >= from && model.Offers[i].Minute <= to;
    }

    private static (double Begin, double End) Feeding(CourseModel model)
    {
        var end = (model.Course.Finish - FeedTimes.LastBeforeFinish).TotalMinutes;
        return (end - 60 * (double)FeedingRate.HoursOf(model.Course), end);
    }

    private static IEnumerable<double> Steps(double from, double to, double step)
    {
        for (var at = from; at <= to + 1e-6; at += step)
            yield return at;
    }
}
