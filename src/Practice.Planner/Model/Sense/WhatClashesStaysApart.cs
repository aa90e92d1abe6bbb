using Practice.Planner.Meals;

namespace Practice.Planner.Model.Sense;

/// <summary>Two foods that do not belong on one plate are not both on it.</summary>
internal static class WhatClashesStaysApart
{
    public static void Add(MenuModel model, Plate plate)
    {
        foreach (var ban in PairBans.All)
        {
            var one = Sum.OfPresence(plate, c => ban.One(c.Item));
            var other = Sum.OfPresence(plate, c => ban.Other(c.Item));
            if (!one.IsEmpty && !other.IsEmpty)
                model.Require(plate, one.Plus(other), -Row.Unbounded, 1, ban.Says);
        }
    }
}
