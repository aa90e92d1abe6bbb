using Practice.Domain.Foods;
using Practice.Planner.Meals;
using Practice.Planner.Model;

namespace Practice.Domain.Tests.Planner;

/// <summary>The meals are data written by hand: a misspelt key would be a rule that never works.</summary>
public sealed class MealDataTests
{
    private static readonly Item[] Items =
    [
        .. FoodLibrary.Standard.All.SelectMany(f => f.Roles.Select(r => new Item(f, r))),
    ];

    [Fact]
    public void Every_everyday_food_is_in_the_library()
    {
        Assert.DoesNotContain(Everyday.Keys, id => FoodLibrary.Standard.Find(id) is null);
    }

    [Fact]
    public void Every_ban_forbids_something()
    {
        Assert.All(
            PairBans.All,
            ban =>
            {
                Assert.Contains(Items, i => ban.One(i));
                Assert.Contains(Items, i => ban.Other(i));
            }
        );
    }

    [Fact]
    public void Every_part_of_every_meal_has_foods_that_suit_its_sittings()
    {
        foreach (var pattern in MealPatterns.All)
        foreach (var kind in pattern.At)
        foreach (var part in pattern.Parts)
            Assert.True(
                Array.Exists(Items, i => i.Role == part.Role && i.Food.Occasions.Contains(kind)),
                $"{pattern.Name} at {kind}: no {part.Role}"
            );
    }

    [Fact]
    public void Every_host_says_how_much_cover_it_wants_and_every_dependant_gives_some()
    {
        foreach (var coupling in Couplings.All)
        {
            Assert.DoesNotContain(
                Items,
                i => coupling.Least > 0 && coupling.Needing.Contains(i.Role) && i.Cover <= 0
            );
            Assert.DoesNotContain(Items, i => coupling.Dependants.Contains(i.Role) && i.Cover <= 0);
        }
    }
}
