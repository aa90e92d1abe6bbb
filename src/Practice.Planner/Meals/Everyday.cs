using System.Collections.Frozen;
using Practice.Domain.Foods;

namespace Practice.Planner.Meals;

/// <summary>
/// Foods of the standard library that most kitchens know: chosen before the rest unless the client says otherwise. A
/// judgement from memory for European and North American kitchens, no source; a practice's own foods count as everyday.
/// </summary>
internal static class Everyday
{
    private static readonly FrozenSet<string> Foods = """
        white-bread white-toast white-bread-thick bagel bagel-toasted english-muffin baguette sourdough-toast crusty-roll
        soft-roll burger-bun pitta wrap raisin-bread crumpet rice-cakes malt-loaf scone focaccia garlic-bread naan
        gf-white-bread gf-roll gf-wrap vegan-gf-bread croissant
        pancakes pancakes-reduced-fat waffles crepes gf-pancakes vegan-pancakes vegan-gf-pancakes
        pretzels gf-pretzels crackers breadsticks rice-crackers water-biscuits
        corn-flakes crisped-rice frosted-flakes puffed-rice gf-corn-flakes gf-rice-pops
        rolled-oats rolled-oats-gf instant-oats semolina cream-of-rice
        milk-skimmed milk-1-percent milk-semi-skimmed milk-lactose-free milk-skimmed-lactose-free oat-drink rice-drink
        soya-drink almond-drink
        yoghurt-fruit yoghurt-fruit-fat-free yoghurt-vanilla yoghurt-fruit-lactose-free yoghurt-vanilla-lactose-free
        yoghurt-plain soya-yoghurt soya-yoghurt-fruit coconut-yoghurt
        rice-pudding rice-pudding-rice-drink custard soya-custard jelly sorbet ice-cream-light frozen-yoghurt
        apple-crumble semolina-pudding
        orange-juice apple-juice grape-juice pineapple-juice cranberry-drink mango-nectar peach-nectar apple-grape-juice
        squash lemonade-still cola lemon-lime ginger-ale iced-tea
        hot-chocolate chocolate-milk chocolate-milk-lactose-free soya-chocolate fruit-smoothie rice-smoothie
        banana-shake soya-banana-shake strawberry-shake-lactose-free chocolate-rice-shake malted-milk
        banana grapes melon-cantaloupe honeydew watermelon mango pineapple clementine apple-peeled strawberries orange
        peach blueberries peaches-syrup peaches-juice pears-syrup pears-juice pineapple-tinned mandarins-tinned
        apricots-tinned fruit-cocktail fruit-cocktail-syrup apple-compote fruit-puree-pouch raisins sultanas dates
        ham turkey-slices chicken-slices chicken-shredded roast-beef-cold tuna tuna-mayonnaise boiled-egg scrambled-egg
        egg-mayonnaise cottage-cheese cheddar-low-fat mozzarella cream-cheese-light tofu-slices tofu-scramble
        chicken-breast turkey-breast cod haddock salmon prawns beef-steak tofu-firm seitan omelette vegetarian-sausage
        tomato-sauce passata-sauce pepper-sauce bolognese chicken-tomato-sauce tuna-tomato-sauce white-sauce
        gf-white-sauce cheese-sauce gravy teriyaki-glaze tamari-honey tamari-maple sweet-chilli sweet-and-sour
        sweet-and-sour-gf curry-sauce thin-dal yoghurt-dip ketchup
        jelly-sweets fruit-gummies marshmallows sponge-fingers fig-rolls rich-tea ginger-biscuits butter-biscuits
        gf-biscuits muffin-low-fat crisped-rice-bar cereal-bar fruit-bar banana-bread swiss-roll gingerbread meringue
        angel-cake sponge-cake gf-sponge gf-banana-muffin vegan-sponge
        sports-drink-6 sports-drink-8 carb-mix
        strawberry-jam apricot-jam marmalade honey peanut-butter chocolate-spread maple-syrup golden-syrup brown-sugar
        strawberry-topping
        white-pasta fresh-pasta gf-pasta gnocchi gf-gnocchi white-rice basmati jasmine easy-cook-rice quick-rice
        risotto-rice pilau-rice egg-noodles rice-noodles couscous polenta
        thin-pizza pizza-marinara gf-pizza gf-pizza-cheese
        potatoes baked-potato mash mash-oil sweet-potato carrots courgette pumpkin spinach green-beans butternut
        beetroot tomato cucumber lettuce red-pepper grilled-vegetables
        """.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries).ToFrozenSet();

    public static bool Is(Food food) =>
        Foods.Contains(food.Id) || FoodLibrary.Standard.Find(food.Id) is null;

    /// <summary>All keys of the list, for the test that they exist.</summary>
    public static IEnumerable<string> Keys => Foods;
}
