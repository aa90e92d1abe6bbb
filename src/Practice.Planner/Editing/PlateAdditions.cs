using System.Collections.Immutable;
using NodaTime;
using Practice.Domain.Foods;
using Practice.Domain.Plans;
using Practice.Planner.Model;

namespace Practice.Planner.Editing;

/// <summary>Portions that could be added to a sitting without breaking its sense, best first.</summary>
internal static class PlateAdditions
{
    private const int Most = 24;

    public static ImmutableArray<Portion> For(
        MenuRequest request,
        LocalDate date,
        OccasionKind kind
    )
    {
        var edit = new PlateEdit(request, date, kind);
        var onThePlate = edit
            .Plate.Candidates.Where(edit.IsOnThePlate)
            .Select(c => c.Food.Id)
            .ToHashSet();
        var additions =
            from comes in edit.Plate.Candidates
            where !onThePlate.Contains(comes.Food.Id)
            from steps in comes.Servings
            let trial = edit.Try(goes: null, comes, steps)
            where trial is not null
            group (comes, steps, trial) by comes.Food.Id into food
            select food.MinBy(o => o.trial.Cost) into best
            orderby best.trial.Cost
            select Portion.Of(best.comes.Food, best.comes.Role, best.steps, request.Units);
        return [.. additions.Take(Most)];
    }
}
