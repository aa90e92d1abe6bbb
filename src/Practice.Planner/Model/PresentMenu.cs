namespace Practice.Planner.Model;

/// <summary>States the menu that a request already holds in the variables of a model.</summary>
internal static class PresentMenu
{
    /// <summary>Values of the present menu; each plate follows its named pattern or the one it breaks least.</summary>
    public static long[] ValuesIn(MenuModel model)
    {
        var values = new long[model.Variables.Count];
        foreach (var plate in model.Plates)
        {
            foreach (var portion in plate.Occasion.Portions)
            {
                var candidate = plate.Candidates.FirstOrDefault(c => c.Kept == portion);
                if (candidate is null)
                    continue;
                values[candidate.Present] = 1;
                values[candidate.Amount] = portion.Steps;
            }
            values[Followed(model, plate, values)] = 1;
        }
        return values;
    }

    private static int Followed(MenuModel model, Plate plate, long[] values)
    {
        var named = plate.Patterns.FirstOrDefault(p => p.Pattern.Name == plate.Occasion.Pattern);
        if (named is not null)
            return named.Chosen;
        var rows = model.Rows.Where(r => r.Plate == plate.Index).ToList();
        return plate.Patterns.Select(p => p.Chosen).MinBy(Breach);

        long Breach(int pattern)
        {
            values[pattern] = 1;
            var cost = rows.Sum(r => r.CostOf(r.SumOf(values))) + model.Costs[pattern];
            values[pattern] = 0;
            return cost;
        }
    }
}
