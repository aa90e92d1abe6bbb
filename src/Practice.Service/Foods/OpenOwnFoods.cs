using System.Collections.Immutable;
using Practice.Domain.Caseload;
using Practice.Domain.Foods.Own;
using Practice.Service.Desks;
using Practice.Store.Foods;

namespace Practice.Service.Foods;

/// <summary>What a practice added to the library.</summary>
/// <param name="Foods">Its own foods by name, retired ones included.</param>
/// <param name="Measures">Its measures for foods of the library.</param>
public sealed record OwnFoods(
    ImmutableArray<OnFile<OwnFood>> Foods,
    ImmutableArray<OwnMeasure> Measures
)
{
    /// <summary>
    /// The most foods of its own that a practice has in use. Own rule: each is weighed for every sitting of every menu,
    /// and all of them are read with every plan.
    /// </summary>
    public const int MostInUse = 300;
}

/// <summary>Opens what a practice added to the library.</summary>
public sealed class OpenOwnFoods(OwnFoodStore foods)
{
    public async Task<OwnFoods> Run(Desk desk, CancellationToken cancel) =>
        new(
            await foods.All(desk.PracticeId, cancel),
            await foods.Measures(desk.PracticeId, cancel)
        );

    /// <summary>One food; null when the practice has no such.</summary>
    public Task<OnFile<OwnFood>?> One(Desk desk, Guid foodId, CancellationToken cancel) =>
        foods.Find(desk.PracticeId, foodId, cancel);
}
