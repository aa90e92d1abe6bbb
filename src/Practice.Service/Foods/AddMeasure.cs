using Practice.Domain.Foods;
using Practice.Domain.Foods.Own;
using Practice.Service.Desks;
using Practice.Store.Foods;

namespace Practice.Service.Foods;

/// <summary>Adds a household measure to a food of the library.</summary>
public sealed class AddMeasure(OwnFoodStore foods, PracticeCalendar calendar)
{
    private const int Most = 300;

    /// <exception cref="ArgumentException">The measure cannot be kept; the message says why.</exception>
    public async Task Run(
        Desk desk,
        string foodId,
        HouseholdMeasure measure,
        CancellationToken cancel
    )
    {
        NotAllowedException.Unless(desk.MayDecide);
        var food =
            FoodLibrary.Standard.Find(foodId)
            ?? throw new ArgumentException("Choose a food of the library.");
        var own = OwnMeasure.Of(desk.PracticeId, food, measure);
        if ((await foods.Measures(desk.PracticeId, cancel)).Length >= Most)
            throw new ArgumentException($"There are {Most} measures already. Remove some first.");
        if (!await foods.Add(own, desk.Note("measure-added", own.Id, calendar.Now), cancel))
            throw new ArgumentException($"{food.Name} has a {own.Name} already.");
    }

    /// <summary>Takes a measure away; what was planned with it keeps it.</summary>
    public Task Remove(Desk desk, Guid measureId, CancellationToken cancel)
    {
        NotAllowedException.Unless(desk.MayDecide);
        return foods.Remove(
            measureId,
            desk.Note("measure-removed", measureId, calendar.Now),
            cancel
        );
    }
}
