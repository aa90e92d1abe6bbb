using Practice.Planner.Meals;

namespace Practice.Planner.Model.Sense;

/// <summary>A staple of one kitchen is not served with the sauce of another: no injera with sweet chilli.</summary>
internal static class ADishKeepsToItsKitchen
{
    public static void Add(MenuModel model, Plate plate)
    {
        var kitchens = plate
            .Candidates.Where(c => Cuisines.IsBuiltOn(c.Item))
            .Select(c => Cuisines.Of(c.Food))
            .OfType<string>()
            .Distinct()
            .Order(StringComparer.Ordinal);
        foreach (var kitchen in kitchens)
        {
            var staple = Sum.OfPresence(
                plate,
                c => Cuisines.IsBuiltOn(c.Item) && Cuisines.Of(c.Food) == kitchen
            );
            foreach (
                var companion in plate.Candidates.Where(c =>
                    Cuisines.GoesWith(c.Item)
                    && Cuisines.Of(c.Food) is { } other
                    && other != kitchen
                )
            )
                model.Require(
                    plate,
                    new Sum().Plus(staple).Plus(companion.Present),
                    -Row.Unbounded,
                    1,
                    $"{companion.Food.Name} is of another kitchen"
                );
        }
    }
}
