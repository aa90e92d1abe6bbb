using Practice.Planner.Meals;

namespace Practice.Planner.Model.Sense;

/// <summary>Bread is spread, cereal is wetted, pasta is sauced: each dependant in measure with its host.</summary>
internal static class WhatGoesTogetherIsInMeasure
{
    public static void Add(MenuModel model, Plate plate)
    {
        foreach (var coupling in Couplings.All)
        {
            var given = Cover(plate, coupling.Dependants.Contains);
            var most = new Sum()
                .Plus(given, 100)
                .Plus(Cover(plate, coupling.Hosts.Contains), -Percent(coupling.Most));
            model.Require(plate, most, -Row.Unbounded, 0, coupling.Says);

            if (coupling.Least <= 0)
                continue;
            var least = new Sum()
                .Plus(given, 100)
                .Plus(Cover(plate, coupling.Needing.Contains), -Percent(coupling.Least));
            model.Require(plate, least, 0, Row.Unbounded, coupling.Says);
        }
    }

    private static Sum Cover(Plate plate, Func<Practice.Domain.Foods.MealRole, bool> plays) =>
        Sum.OfAmounts(plate, item => plays(item.Role) ? item.Cover : 0);

    private static long Percent(double share) => (long)Math.Round(share * 100);
}
