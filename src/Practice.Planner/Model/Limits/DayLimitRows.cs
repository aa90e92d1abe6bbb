using Practice.Domain.Plans;

namespace Practice.Planner.Model.Limits;

/// <summary>What a day must keep to as a whole.</summary>
internal static class DayLimitRows
{
    public static void Add(MenuModel model, int day)
    {
        var limits = model.Request.Days[day].Limits;
        var plates = model.PlatesOf(day).ToList();
        var carbohydrate = Of(i => i.Carbohydrate);
        var aim = limits.CarbohydrateAimG;

        Keep(
            LimitKind.DayCarbohydrate,
            carbohydrate,
            Bounds.HundredthsUp(aim * (1 - limits.CarbohydrateTolerance)),
            Bounds.Hundredths(aim * (1 + limits.CarbohydrateTolerance)),
            Prices.DayCarbohydrate
        );
        model.Prefer(
            carbohydrate,
            Bounds.Hundredths(aim),
            Bounds.Hundredths(aim),
            Prices.OffAimOfDay,
            "near the aim of the day"
        );
        AtMost(LimitKind.Fibre, i => i.Fibre, limits.FibreMaxG, Prices.Fibre);
        AtMost(LimitKind.Fat, i => i.Fat, limits.FatMaxG, Prices.Fat);
        Keep(
            LimitKind.ProteinFloor,
            Of(i => i.Protein),
            Bounds.HundredthsUp(limits.ProteinMinG) + model.RoomHundredths,
            Row.Unbounded,
            Prices.Protein
        );
        AtMost(LimitKind.ProteinCeiling, i => i.Protein, limits.ProteinMaxG, Prices.Protein);
        Keep(
            LimitKind.Sodium,
            Of(i => i.Sodium),
            (long)Math.Ceiling(limits.SodiumMinMg),
            (long)Math.Floor(limits.SodiumMaxMg),
            Prices.SodiumPerMg,
            unit: 1
        );
        if (limits.LactoseMaxPerDayG is { } lactose)
            AtMost(LimitKind.Lactose, i => i.Lactose, lactose, Prices.Lactose);
        FatShareOfEnergy();
        Shares();

        // 9 kcal/g of fat against 4 of carbohydrate and protein: 9 F <= p (9 F + 4 C + 4 P)
        void FatShareOfEnergy()
        {
            var p = Thousandths(limits.FatMaxEnergyShare);
            Keep(
                LimitKind.Fat,
                Of(i => 9 * (1000 - p) * i.Fat - 4 * p * (i.Carbohydrate + i.Protein)),
                -Row.Unbounded,
                0,
                Prices.Fat,
                step: 9 * (1000 - p)
            );
        }

        void Shares()
        {
            Share(LimitKind.DrinksShare, i => i.Drunk, limits.DrinksShareMax, Prices.DrinksShare);
            var least = Thousandths(limits.DrinksShareMin);
            Keep(
                LimitKind.DrinksShare,
                Of(i => 1000 * i.Drunk - least * i.Carbohydrate),
                0,
                Row.Unbounded,
                Prices.DrinksShare,
                step: 1000
            );
            var wanted = Thousandths(limits.DrinksShareAim);
            model.Prefer(
                Of(i => 1000 * i.Drunk - wanted * i.Carbohydrate),
                0,
                0,
                Prices.OffAimOfDrinks,
                "near the aim of what is drunk",
                step: 1000
            );
            Share(
                LimitKind.SugaryShare,
                i => i.FromSugaryFood,
                limits.SugaryShareMax,
                Prices.SugaryShare
            );
        }

        void Share(LimitKind kind, Func<Item, long> part, decimal most, long price)
        {
            var share = Thousandths(most);
            Keep(
                kind,
                Of(i => 1000 * part(i) - share * i.Carbohydrate),
                -Row.Unbounded,
                0,
                price,
                step: 1000
            );
        }

        Sum Of(Func<Item, long> perStep) => Sum.OfAmounts(plates, perStep);

        void AtMost(LimitKind kind, Func<Item, long> perStep, decimal most, long price) =>
            Keep(
                kind,
                Of(perStep),
                -Row.Unbounded,
                Math.Max(0, Bounds.Hundredths(most) - model.RoomHundredths),
                price
            );

        void Keep(
            LimitKind kind,
            Sum sum,
            long low,
            long high,
            long price,
            decimal unit = 0.01m,
            long step = 1
        ) =>
            model.Prefer(
                sum,
                low,
                high,
                price,
                $"{kind} of the day",
                new Limit(kind, day, unit),
                step
            );
    }

    private static long Thousandths(decimal share) => (long)Math.Round(share * 1000);
}
