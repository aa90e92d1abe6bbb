using System.Collections.Immutable;
using Practice.Domain.Foods;
using Practice.Domain.Plans;
using Practice.Planner.Checking;
using Practice.Planner.Model;

namespace Practice.Planner.Editing;

/// <summary>Foods that could stand in for a portion, the sitting's carbohydrate within 3 g, best first.</summary>
internal static class PortionSwaps
{
    private const long WithinHundredths = 300;
    private const int Most = 16;

    // a swap for the like is what is usually meant
    private const long OtherRole = 2_000;
    private const long OtherFamily = 500;

    public static ImmutableArray<SwapOption> For(MenuRequest request, PortionRef reference)
    {
        var edit = new PlateEdit(request, reference.Date, reference.Kind);
        var goes = edit.Plate.Candidates.FirstOrDefault(c => c.Kept?.FoodId == reference.FoodId);
        if (goes is null)
            return [];
        var was = goes.Item.Carbohydrate * goes.Kept!.Steps;
        var options =
            from comes in edit.Plate.Candidates
            where comes.Food.Id != goes.Food.Id && Interchange.Between(goes.Role, comes.Role)
            where
                !edit.Plate.Candidates.Any(c => c.Food.Id == comes.Food.Id && edit.IsOnThePlate(c))
            from steps in comes.Servings
            let difference = comes.Item.Carbohydrate * steps - was
            where Math.Abs(difference) <= WithinHundredths
            let trial = edit.Try(goes, comes, steps)
            where trial is not null
            group (comes, steps, trial) by comes.Food.Id into food
            select food.MinBy(o => o.trial.Cost) into best
            orderby Standing(request, best.comes, best.trial), best.trial.Cost
                + (best.comes.Role == goes.Role ? 0 : OtherRole)
                + (best.comes.Food.Family == goes.Food.Family ? 0 : OtherFamily)
            let portion = Portion.Of(best.comes.Food, best.comes.Role, best.steps, request.Units)
            select new SwapOption(
                portion,
                portion.Nutrients.CarbohydrateG - goes.Kept.Nutrients.CarbohydrateG,
                Note(request, goes.Kept, portion, best.trial)
            );
        return [.. options.Take(Most)];
    }

    // known to sit well, then what keeps the day's limits, then the rest, suspects last
    private static int Standing(MenuRequest request, Candidate comes, Trial trial)
    {
        var (id, tastes) = (comes.Food.Id, request.Tastes);
        return tastes.Suspect.Contains(id) ? 3
            : trial.PushedOver is not null ? 2
            : tastes.Tolerated.Contains(id) || tastes.Likes.Contains(id) ? 0
            : 1;
    }

    private static string? Note(MenuRequest request, Portion was, Portion now, Trial trial)
    {
        var tastes = request.Tastes;
        return trial.PushedOver is { } kind ? $"{LimitWords.NameOf(kind)} past its limit"
            : tastes.Suspect.Contains(now.FoodId) ? "suspected in rehearsal"
            : tastes.Tolerated.Contains(now.FoodId) ? "tolerated in rehearsal"
            : tastes.Likes.Contains(now.FoodId) ? "liked"
            : was.Nutrients.FibreG - now.Nutrients.FibreG >= 0.5m ? "less fibre"
            : was.Grams - now.Grams >= Math.Max(50, was.Grams / 4) ? "lighter"
            : null;
    }
}
