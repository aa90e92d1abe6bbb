using System.Collections.Immutable;
using Practice.Domain.Caseload;
using Practice.Domain.Foods.Own;
using Practice.Service.Desks;
using Practice.Store.Foods;

namespace Practice.Service.Foods;

/// <summary>What became of keeping a food.</summary>
public abstract record KeepFoodOutcome;

/// <summary>It is on file and served from now on.</summary>
/// <param name="Key">Key of the food.</param>
public sealed record FoodKept(Guid Key) : KeepFoodOutcome;

/// <summary>Nothing was kept: the sheet has errors.</summary>
/// <param name="Faults">The errors, each with its field.</param>
public sealed record FoodRefused(ImmutableArray<FoodFault> Faults) : KeepFoodOutcome
{
    internal static FoodRefused At(FoodField field, string text) => new([new(field, text)]);
}

/// <summary>Nothing was kept: somebody else changed it meanwhile.</summary>
/// <param name="Theirs">What is on file now; null when it is gone.</param>
public sealed record FoodChangedElsewhere(OnFile<OwnFood>? Theirs) : KeepFoodOutcome;

/// <summary>Writes down a food of the practice's own, or changes one, and takes it out of use. Nothing is deleted.</summary>
public sealed class KeepFood(OwnFoodStore foods, PracticeCalendar calendar)
{
    private static readonly FoodRefused Taken = FoodRefused.At(
        FoodField.Name,
        "There is a food of that name in use."
    );

    private static readonly FoodRefused Full = FoodRefused.At(
        FoodField.Name,
        $"There are {OwnFoods.MostInUse} foods of your own in use already. Retire some first."
    );

    /// <summary>A new food.</summary>
    public async Task<KeepFoodOutcome> Run(Desk desk, FoodSheet sheet, CancellationToken cancel)
    {
        NotAllowedException.Unless(desk.MayDecide);
        if (Errors(sheet) is { IsEmpty: false } faults)
            return new FoodRefused(faults);
        if (await IsFull(desk, cancel))
            return Full;
        var food = OwnFood.Of(desk.PracticeId, sheet);
        var note = desk.Note("food-added", food.Id, calendar.Now);
        return await foods.Add([food], [note], cancel) ? new FoodKept(food.Id) : Taken;
    }

    /// <summary>Changes one; plans made before keep what they were made with.</summary>
    /// <param name="desk">Who acts.</param>
    /// <param name="food">The food as it was read; nobody's later change is overwritten.</param>
    /// <param name="sheet">What the form says.</param>
    /// <param name="cancel">Cancels.</param>
    public Task<KeepFoodOutcome> Revise(
        Desk desk,
        OnFile<OwnFood> food,
        FoodSheet sheet,
        CancellationToken cancel
    )
    {
        NotAllowedException.Unless(desk.MayDecide);
        if (Errors(sheet) is { IsEmpty: false } faults)
            return Task.FromResult<KeepFoodOutcome>(new FoodRefused(faults));
        food.Value.Revise(sheet);
        return Save(desk, food, "food-revised", cancel);
    }

    /// <summary>Takes one out of use.</summary>
    public Task<KeepFoodOutcome> Retire(Desk desk, OnFile<OwnFood> food, CancellationToken cancel)
    {
        NotAllowedException.Unless(desk.MayDecide);
        food.Value.Retire(calendar.Now);
        return Save(desk, food, "food-retired", cancel);
    }

    /// <summary>Puts one back into use.</summary>
    public async Task<KeepFoodOutcome> PutBack(
        Desk desk,
        OnFile<OwnFood> food,
        CancellationToken cancel
    )
    {
        NotAllowedException.Unless(desk.MayDecide);
        if (await IsFull(desk, cancel))
            return Full;
        food.Value.PutBack();
        return await Save(desk, food, "food-put-back", cancel);
    }

    private async Task<KeepFoodOutcome> Save(
        Desk desk,
        OnFile<OwnFood> food,
        string what,
        CancellationToken cancel
    ) =>
        await foods.Save(food, desk.Note(what, food.Value.Id, calendar.Now), cancel) switch
        {
            null => Taken,
            Conflict<OwnFood>(var theirs) => new FoodChangedElsewhere(theirs),
            _ => new FoodKept(food.Value.Id),
        };

    private async Task<bool> IsFull(Desk desk, CancellationToken cancel) =>
        (await foods.NamesInUse(desk.PracticeId, cancel)).Count >= OwnFoods.MostInUse;

    private static ImmutableArray<FoodFault> Errors(FoodSheet sheet) =>
        [.. FoodSheetChecks.Of(sheet).Where(fault => !fault.IsWarning)];
}
