using Practice.Domain.Plans;
using Practice.Planner.Meals;

namespace Practice.Planner.Model.Quality;

/// <summary>The same sitting on following days: other food when the client wants change, the same when not.</summary>
internal static class BetweenDays
{
    public static void Add(MenuModel model)
    {
        var repeats = model.Request.Style == MenuStyle.Repeat;
        foreach (var today in model.Plates)
        foreach (
            var later in model.Plates.Where(s => s.Day == today.Day + 1 && s.Kind == today.Kind)
        )
        {
            foreach (var (one, other) in Shared(today, later))
                if (repeats)
                    Differ(one.Present, other.Present, Prices.DifferentFood);
                else if (!Repetition.MayReturn(one.Role))
                    Coincide(
                        one.Present,
                        other.Present,
                        Repetition.IsNoticed(one.Role) ? Prices.SameNoticedFood : Prices.SameFood
                    );

            foreach (var one in today.Patterns)
            foreach (var other in later.Patterns.Where(p => p.Pattern == one.Pattern))
                if (repeats)
                    Differ(one.Chosen, other.Chosen, Prices.DifferentPattern);
                else
                    Coincide(one.Chosen, other.Chosen, Prices.SamePattern);
        }

        void Coincide(int one, int other, long price) =>
            model.Prefer(
                new Sum().Plus(one).Plus(other),
                -Row.Unbounded,
                1,
                price,
                "the same as the day before"
            );

        void Differ(int one, int other, long price) =>
            model.Prefer(
                new Sum().Plus(one).Plus(other, -1),
                -Row.Unbounded,
                0,
                price,
                "not the same as the day before"
            );
    }

    private static IEnumerable<(Candidate, Candidate)> Shared(Plate today, Plate later)
    {
        var there = later.Candidates.ToDictionary(c => (c.Food.Id, c.Role));
        foreach (var one in today.Candidates)
            if (there.TryGetValue((one.Food.Id, one.Role), out var other))
                yield return (one, other);
    }
}
