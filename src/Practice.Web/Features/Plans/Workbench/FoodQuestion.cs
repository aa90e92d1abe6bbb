using System.Collections.Immutable;
using NodaTime;
using Practice.Domain.Foods;
using Practice.Domain.Plans;

namespace Practice.Web.Features.Plans.Workbench;

/// <summary>A food that can be chosen, and what speaks for it.</summary>
public sealed record FoodOffer(Portion Portion, string? Note);

/// <summary>A food is to be chosen for a plate: in another's place, or beside what is there.</summary>
public sealed record FoodQuestion
{
    public required LocalDate Date { get; init; }
    public required OccasionKind Kind { get; init; }
    public required string Title { get; init; }
    public required string Hint { get; init; }

    /// <summary>The portion that goes; null when a food is added.</summary>
    public PortionRef? Replaces { get; init; }

    /// <summary>What is offered; null while it is being looked for.</summary>
    public ImmutableArray<FoodOffer>? Offers { get; init; }

    /// <summary>What else a hand may add, beyond what is offered.</summary>
    public FoodLibrary Others { get; init; } = new([]);

    public static FoodQuestion Swap(RaceWeekPlan plan, PortionRef portion) =>
        new()
        {
            Date = portion.Date,
            Kind = portion.Kind,
            Replaces = portion,
            Title = $"Instead of {plan[portion.Date][portion.Kind].Find(portion.FoodId)!.Name}",
            Hint = "The sitting keeps its carbohydrate within 3 g.",
        };

    public static FoodQuestion Add(LocalDate date, OccasionKind kind, EligibleFoods foods) =>
        new()
        {
            Date = date,
            Kind = kind,
            Title = "Add a food",
            Hint =
                "What goes with the plate comes first; search finds the rest of what this client may eat.",
            Others = new FoodLibrary(foods.AddableByHand),
        };

    public FoodQuestion With(ImmutableArray<SwapOption> swaps) =>
        this with
        {
            Offers = [.. swaps.Select(s => new FoodOffer(s.Portion, s.Note))],
        };

    public FoodQuestion With(ImmutableArray<Portion> additions) =>
        this with
        {
            Offers = [.. additions.Select(p => new FoodOffer(p, null))],
        };
}
