using Practice.Benchmarks;
using Practice.Domain.Foods;
using Practice.Domain.Plans;

namespace Practice.Domain.Tests.Planner;

public sealed class EditTests
{
    private static readonly MenuRequest Menu = Sample.FilledEve;
    private static readonly PlanDay Eve = Menu.Days[0];

    [Fact]
    public void A_menu_that_keeps_its_limits_is_left_alone()
    {
        var rebalanced = Rebalance(Menu);

        Assert.Empty(rebalanced.Changes);
        Assert.Equal(Eve, rebalanced.Day);
        Assert.True(rebalanced.Proven);
    }

    [Fact]
    public void A_portion_cut_and_locked_is_made_up_for_by_few_changes_elsewhere()
    {
        var (kind, portion) = Largest();
        var steps = portion.Serving.Steps.Last(s => 4 * s <= 3 * portion.Steps);
        var edited = Menu.With(
            kind,
            o =>
                o with
                {
                    Portions = o.Portions.Replace(
                        portion,
                        portion with
                        {
                            Steps = steps,
                            IsLocked = true,
                        }
                    ),
                }
        );

        var rebalanced = Rebalance(edited);

        Assert.Equal(steps, rebalanced.Day[kind].Find(portion.FoodId)!.Steps);
        Assert.True(rebalanced.Day[kind].Find(portion.FoodId)!.IsLocked);
        Assert.InRange(rebalanced.Changes.Length, 1, 6);
        Assert.Empty(rebalanced.Shortfalls);
    }

    [Fact]
    public void What_rebalance_says_it_changed_is_what_it_changed()
    {
        var (kind, portion) = Largest();
        var edited = Menu.With(kind, o => o with { Portions = o.Portions.Remove(portion) });

        var rebalanced = Rebalance(edited);

        Assert.NotEmpty(rebalanced.Changes);
        var replayed = edited.Days[0];
        foreach (var change in rebalanced.Changes)
        {
            var plate = replayed[change.Occasion];
            var rest = plate.Portions.Where(p =>
                p.FoodId != (change.Before ?? change.After)!.FoodId
            );
            replayed = replayed.With(
                plate with
                {
                    Portions = change.After is { } after ? [.. rest, after] : [.. rest],
                }
            );
        }
        Assert.Equal(rebalanced.Day.Totals.CarbohydrateG, replayed.Totals.CarbohydrateG);
        Assert.Equal(rebalanced.Day.Totals.FibreG, replayed.Totals.FibreG);
    }

    [Fact]
    public void All_portions_locked_leave_nothing_to_change()
    {
        var locked = Menu with
        {
            Days =
            [
                Eve with
                {
                    Occasions =
                    [
                        .. Eve.Occasions.Select(o =>
                            o with
                            {
                                Portions = [.. o.Portions.Select(p => p with { IsLocked = true })],
                            }
                        ),
                    ],
                },
            ],
        };

        var rebalanced = Rebalance(locked);

        Assert.DoesNotContain(rebalanced.Changes, c => c.Before is not null);
    }

    [Fact]
    public void Swaps_keep_the_carbohydrate_within_three_grams_and_the_meal_in_sense()
    {
        foreach (var occasion in Eve.Occasions)
        foreach (var portion in occasion.Portions)
        {
            var swaps = Sample.Planner.Swaps(
                Menu,
                new PortionRef(Eve.Date, occasion.Kind, portion.FoodId)
            );

            foreach (var swap in swaps)
            {
                var swapped = Menu.With(
                    occasion.Kind,
                    o => o with { Portions = o.Portions.Replace(portion, swap.Portion) }
                );
                var difference =
                    swapped.Days[0][occasion.Kind].Totals.CarbohydrateG
                    - occasion.Totals.CarbohydrateG;
                Assert.InRange(difference, -3.1m, 3.1m);
                Assert.Equal(difference, swap.CarbohydrateDifferenceG, 1);
                Assert.Empty(MenuReading.Complaints(Menu, swapped.Days));
            }
        }
    }

    [Fact]
    public void Rice_can_be_swapped_for_other_rice()
    {
        var riceMeal = Menu.With(
            OccasionKind.Lunch,
            o =>
                o with
                {
                    Pattern = "Rice",
                    Portions =
                    [
                        Serve("white-rice", MealRole.Rice, 6),
                        Serve("sweet-chilli", MealRole.RiceSauce, 3),
                        Serve("chicken-breast", MealRole.Protein, 3),
                    ],
                }
        );

        var swaps = Sample.Planner.Swaps(
            riceMeal,
            new PortionRef(Eve.Date, OccasionKind.Lunch, "white-rice")
        );

        Assert.Contains(
            swaps,
            s => s.Portion.FoodId != "white-rice" && s.Portion.Role == MealRole.Rice
        );
        Assert.DoesNotContain(swaps, s => s.Portion.Role == MealRole.Pasta);
    }

    [Fact]
    public void A_tolerated_food_comes_first_among_swaps_and_says_why()
    {
        var (kind, portion) = Drink();
        var reference = new PortionRef(Eve.Date, kind, portion.FoodId);
        var last = Sample
            .Planner.Swaps(Menu, reference)
            .Last(s => s.Note?.EndsWith("past its limit", StringComparison.Ordinal) != true)
            .Portion.FoodId;
        var known = Menu with { Tastes = Menu.Tastes with { Tolerated = [last] } };

        var swaps = Sample.Planner.Swaps(known, reference);

        Assert.Equal(last, swaps[0].Portion.FoodId);
        Assert.Equal("tolerated in rehearsal", swaps[0].Note);
    }

    [Fact]
    public void Additions_never_break_the_sense_of_a_meal()
    {
        foreach (var occasion in Eve.Occasions)
        foreach (var addition in Sample.Planner.Additions(Menu, Eve.Date, occasion.Kind))
        {
            var added = Menu.With(
                occasion.Kind,
                o => o with { Portions = o.Portions.Add(addition) }
            );
            Assert.Empty(MenuReading.Complaints(Menu, added.Days));
        }
    }

    [Fact]
    public void An_empty_plate_can_be_filled_by_hand_from_what_is_offered()
    {
        var empty = Menu.With(
            OccasionKind.Breakfast,
            o => o with { Portions = [], Pattern = null }
        );

        var offered = Sample.Planner.Additions(empty, Eve.Date, OccasionKind.Breakfast);

        Assert.Contains(
            offered,
            p => p.Role is MealRole.Cereal or MealRole.Bread or MealRole.Porridge
        );
    }

    [Fact]
    public void A_check_names_what_a_menu_misses()
    {
        var (kind, portion) = Largest();
        var edited = Menu.With(kind, o => o with { Portions = o.Portions.Remove(portion) });

        var shortfalls = Sample.Planner.Check(edited);

        Assert.Contains(
            shortfalls,
            s =>
                s.Kind == LimitKind.DayCarbohydrate
                && s.Text.StartsWith("Carbohydrate on Saturday is", StringComparison.Ordinal)
        );
        Assert.Contains(
            shortfalls,
            s => s.Kind == LimitKind.OccasionCarbohydrate && s.Occasion == kind
        );
    }

    [Fact]
    public void A_check_sees_a_spread_without_bread()
    {
        var honey = Serve("honey", MealRole.Spread, 1);
        var edited = Menu.With(OccasionKind.MorningSnack, o => o with { Portions = [honey] });

        Assert.Contains(
            Sample.Planner.Check(edited),
            s => s.Kind == LimitKind.MealSense && s.Occasion == OccasionKind.MorningSnack
        );
    }

    private static Rebalanced Rebalance(MenuRequest request) =>
        Sample.Planner.Rebalance(request, Eve.Date, TestContext.Current.CancellationToken);

    private static Portion Serve(string id, MealRole role, int steps) =>
        Portion.Of(Menu.Foods.Single(f => f.Id == id), role, steps);

    private static (OccasionKind, Portion) Largest() =>
        Eve
            .Occasions.SelectMany(o => o.Portions.Select(p => (o.Kind, p)))
            .Where(p => p.p.Serving.Steps.Length > 2)
            .MaxBy(p => p.p.Nutrients.CarbohydrateG);

    private static (OccasionKind, Portion) Drink() =>
        Eve
            .Occasions.SelectMany(o => o.Portions.Select(p => (o.Kind, p)))
            .First(p => p.p.Role == MealRole.Drink);
}
