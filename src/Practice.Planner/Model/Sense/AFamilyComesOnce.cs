namespace Practice.Planner.Model.Sense;

/// <summary>What a person would call the same thing again is not served twice at one sitting; nor is the same food in two parts.</summary>
internal static class AFamilyComesOnce
{
    public static void Add(MenuModel model, Plate plate)
    {
        foreach (
            var family in plate.Candidates.GroupBy(c => c.Food.Family).Where(f => f.Count() > 1)
        )
        {
            var sum = new Sum();
            foreach (var candidate in family)
                sum.Plus(candidate.Present);
            model.Require(plate, sum, -Row.Unbounded, 1, $"{family.Key} comes twice");
        }
    }
}
