namespace Practice.Planner.Model.Sense;

/// <summary>Where a role is only a side in some pattern, its amount there is a part of the usual largest helping.</summary>
internal static class ASideStaysASide
{
    public static void Add(MenuModel model, Plate plate)
    {
        foreach (var role in plate.Candidates.Where(c => !c.IsLocked).GroupBy(c => c.Role))
        {
            var parts = plate
                .Patterns.Select(p => (p.Chosen, Part: p.Pattern.Find(role.Key)))
                .Where(p => p.Part is not null)
                .ToList();
            if (parts.TrueForAll(p => p.Part!.Scale == 1))
                continue;
            foreach (var candidate in role)
            {
                var sum = new Sum().Plus(candidate.Amount);
                foreach (var (chosen, part) in parts)
                    sum.Plus(chosen, -Most(candidate, part!.Scale));
                model.Require(
                    plate,
                    sum,
                    -Row.Unbounded,
                    0,
                    $"{candidate.Food.Name} is more than a side"
                );
            }
        }
    }

    private static long Most(Candidate candidate, double scale) =>
        Math.Max(candidate.Servings[0], (long)Math.Floor(candidate.Servings[^1] * scale));
}
