namespace Practice.Planner.Model.Sense;

/// <summary>Each role is filled as often as the pattern asks, and a food is there only if the pattern has its role.</summary>
internal static class APatternTakesItsParts
{
    public static void Add(MenuModel model, Plate plate)
    {
        foreach (var role in plate.Candidates.GroupBy(c => c.Role))
        {
            var least = new Sum();
            var most = new Sum();
            var takesRole = new Sum();
            foreach (var candidate in role)
            {
                least.Plus(candidate.Present);
                most.Plus(candidate.Present);
            }
            var several = false;
            foreach (var (pattern, chosen) in plate.Patterns)
            {
                if (pattern.Find(role.Key) is not { } part)
                    continue;
                least.Plus(chosen, -part.Least);
                most.Plus(chosen, -part.Most);
                takesRole.Plus(chosen, -1);
                several |= part.Most > 1;
            }
            var name = role.Key.ToString();
            model.Require(plate, least, 0, Row.Unbounded, $"the meal lacks its {name}");
            model.Require(
                plate,
                most,
                -Row.Unbounded,
                0,
                $"the meal has no place for so much {name}"
            );
            if (several)
                foreach (var candidate in role)
                    model.Require(
                        plate,
                        new Sum().Plus(candidate.Present).Plus(takesRole),
                        -Row.Unbounded,
                        0,
                        $"the meal has no place for {candidate.Food.Name}"
                    );
        }
    }
}
