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
            group (comes, steps, trial, difference) by comes.Food.Id into food
            select food.MinBy(o => o.trial.Cost) into best
            orderby best.trial.Cost
                + (best.comes.Role == goes.Role ? 0 : OtherRole)
                + (best.comes.Food.Family == goes.Food.Family ? 0 : OtherFamily)
            select new SwapOption(
                Portion.Of(best.comes.Food, best.comes.Role, best.steps, request.Units),
                best.difference / 100m,
                Note(request, goes, best.comes, best.steps, best.trial)
            );
        return [.. options.Take(Most)];
    }

    private static string? Note(
        MenuRequest request,
        Candidate goes,
        Candidate comes,
        int steps,
        Trial trial
    )
    {
        var was = goes.Kept!;
        var now = Portion.Of(comes.Food, comes.Role, steps);
        return trial.PushedOver is { } kind ? $"{LimitWords.NameOf(kind)} past its limit"
            : request.Tastes.Suspect.Contains(comes.Food.Id) ? "suspected in rehearsal"
            : request.Tastes.Tolerated.Contains(comes.Food.Id) ? "tolerated in rehearsal"
            : request.Tastes.Likes.Contains(comes.Food.Id) ? "liked"
            : was.Nutrients.FibreG - now.Nutrients.FibreG >= 0.5m ? "less fibre"
            : was.Grams - now.Grams >= Math.Max(50, was.Grams / 4) ? "lighter"
            : null;
    }
}
