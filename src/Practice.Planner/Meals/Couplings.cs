using System.Collections.Immutable;
using Practice.Domain.Foods;
using static Practice.Domain.Foods.MealRole;

namespace Practice.Planner.Meals;

/// <summary>
/// How much of one part goes with another, in cover units: a host says how much cover one step of it wants, a
/// dependant how much it gives. Ten units are one slice of toast; 100 g of cooked rice are a hundred.
/// </summary>
/// <param name="Says">The rule, and what is wrong when it is broken.</param>
/// <param name="Dependants">What covers.</param>
/// <param name="Hosts">What is covered.</param>
/// <param name="Least">Least cover given, as a part of the cover wanted.</param>
/// <param name="Most">Most cover given.</param>
/// <param name="NeedingHosts">Hosts that need the least; all of them when empty.</param>
internal sealed record Coupling(
    string Says,
    ImmutableArray<MealRole> Dependants,
    ImmutableArray<MealRole> Hosts,
    double Least,
    double Most,
    ImmutableArray<MealRole> NeedingHosts = default
)
{
    public ImmutableArray<MealRole> Needing => NeedingHosts.IsDefault ? Hosts : NeedingHosts;
}

/// <summary>What goes together and in what measure. Common practice, no source.</summary>
internal static class Couplings
{
    public static ImmutableArray<Coupling> All { get; } =
    [
        new(
            "bread wants a spread or filling, and no more than it carries",
            [Spread, Filling],
            [Bread],
            0.5,
            1.15
        ),
        new(
            "cereal and porridge want milk, and no more than a bowl holds",
            [Milk],
            [Cereal, Porridge],
            0.75,
            1.6
        ),
        new(
            "a topping goes on cereal, porridge or yoghurt",
            [Topping],
            [Cereal, Porridge, Yoghurt],
            0,
            0.65
        ),
        new("pancakes want syrup, and syrup pancakes", [Syrup], [Pancake], 0.4, 0.9),
        new(
            "pasta and grain want sauce",
            [PastaSauce],
            [Pasta, Grain, Potato],
            0.7,
            1.3,
            [Pasta, Grain]
        ),
        new("rice and noodles want sauce", [RiceSauce], [Rice, Noodles], 0.6, 1.2),
        new("savoury cakes want a dip", [Dip], [SavouryCake], 0.4, 1.2),
    ];
}
