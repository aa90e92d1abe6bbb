namespace Practice.Planner.Model.Sense;

/// <summary>A food on the plate is served in one of its step counts, and one that is not is not.</summary>
internal static class AFoodIsServedInItsSteps
{
    public static void Add(MenuModel model, Plate plate)
    {
        foreach (var c in plate.Candidates.Where(c => !c.IsLocked))
        {
            Tie(new Sum().Plus(c.Amount).Plus(c.Present, -c.Servings[0]), 0, Row.Unbounded);
            Tie(new Sum().Plus(c.Amount).Plus(c.Present, -c.Servings[^1]), -Row.Unbounded, 0);
        }

        void Tie(Sum sum, long low, long high) =>
            model.Require(plate, sum, low, high, "an amount belongs to a food", isLink: true);
    }
}
