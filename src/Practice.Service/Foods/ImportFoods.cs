using Practice.Domain.Foods.Own;
using Practice.Domain.Tables;
using Practice.Service.Desks;
using Practice.Service.Tables;
using Practice.Store.Foods;

namespace Practice.Service.Foods;

/// <summary>Takes in a table of foods: all of them or none.</summary>
public sealed class ImportFoods(OwnFoodStore foods, PracticeCalendar calendar)
{
    /// <summary>The table as it would be taken in; nothing is kept.</summary>
    public async Task<ImportReading<FoodSheet>> Preview(
        Desk desk,
        ImportTable table,
        ColumnMatch match,
        CancellationToken cancel
    )
    {
        NotAllowedException.Unless(desk.MayDecide);
        return Reading.Of(
            table,
            match,
            FoodColumns.All,
            FoodColumns.Read,
            sheet =>
                OwnFood.KeyOf(sheet.Name) is { Length: > 0 } key
                    ? (nameof(FoodField.Name), key)
                    : null,
            await foods.NamesInUse(desk.PracticeId, cancel)
        );
    }

    /// <summary>Takes it in.</summary>
    public async Task<TakeOutcome> Run(
        Desk desk,
        ImportTable table,
        ColumnMatch match,
        CancellationToken cancel
    )
    {
        var reading = await Preview(desk, table, match, cancel);
        if (Reading.Refusal(reading, match, FoodColumns.All) is { } refusal)
            return refusal;
        var inUse = (await foods.NamesInUse(desk.PracticeId, cancel)).Count;
        if (inUse + reading.Rows.Length > OwnFoods.MostInUse)
            return new NothingTaken(
                $"A practice has at most {OwnFoods.MostInUse} foods of its own in use: {inUse} are, and the table has {reading.Rows.Length} more."
            );
        var added = reading.Rows.Select(r => OwnFood.Of(desk.PracticeId, r.Value)).ToList();
        var notes = added.Select(f => desk.Note("food-added", f.Id, calendar.Now, "from a table"));
        return await foods.Add(added, [.. notes], cancel)
            ? new Taken(added.Count)
            : new NothingTaken(
                "Somebody added a food of one of these names meanwhile. Look again."
            );
    }
}
