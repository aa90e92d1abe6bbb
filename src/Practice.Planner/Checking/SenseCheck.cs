using Practice.Domain.Plans;
using Practice.Planner.Model;

namespace Practice.Planner.Checking;

/// <summary>What of a menu makes no sense as a meal, or comes too often: the rows of the model, told in words.</summary>
internal static class SenseCheck
{
    public static IEnumerable<Shortfall> Of(MenuRequest request)
    {
        var model = MenuModel.ToEdit(request);
        var values = PresentMenu.ValuesIn(model);
        foreach (var row in model.Rows)
        {
            if (row.IsLink || row.CostOf(row.SumOf(values)) == 0)
                continue;
            if (row.Limit is { Kind: LimitKind.Variety } limit)
                yield return new Shortfall(
                    LimitKind.Variety,
                    request.Days[limit.Day].Date,
                    null,
                    row.Excess(row.SumOf(values)),
                    $"On {request.Days[limit.Day].Date.DayOfWeek}: {row.Says}"
                );
            else if (
                row.IsSense
                && model.Plates[row.Plate].Occasion is { Portions.IsEmpty: false } occasion
            )
                yield return new Shortfall(
                    LimitKind.MealSense,
                    request.Days[model.Plates[row.Plate].Day].Date,
                    occasion.Kind,
                    1,
                    $"At {LimitWords.NameOf(occasion.Kind)}: {row.Says}"
                );
        }
    }
}
