using Practice.Domain.Foods;
using Practice.Service.Desks;
using Practice.Store.Foods;

namespace Practice.Service.Foods;

/// <summary>
/// The foods that a practice plans with: those of the library, with its own measures, and its own. The one place where
/// they come together; planner, search, swaps and trials are handed what comes of it.
/// </summary>
public sealed class Larder(OwnFoodStore foods)
{
    public async Task<FoodLibrary> Run(Desk desk, CancellationToken cancel) =>
        FoodLibrary.With(
            [.. (await foods.All(desk.PracticeId, cancel)).Select(f => f.Value)],
            await foods.Measures(desk.PracticeId, cancel)
        );
}
