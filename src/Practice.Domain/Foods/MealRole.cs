namespace Practice.Domain.Foods;

/// <summary>The part a food plays in a meal. One food may play several (honey: spread, topping or syrup).</summary>
public enum MealRole
{
    /// <summary>Bread that carries a spread or a filling.</summary>
    Bread,

    /// <summary>What is spread on bread.</summary>
    Spread,

    /// <summary>What fills a sandwich or tops a savoury toast.</summary>
    Filling,

    /// <summary>Cold breakfast cereal, never eaten dry.</summary>
    Cereal,

    /// <summary>Grain cooked to porridge.</summary>
    Porridge,

    /// <summary>Milk or plant drink poured on cereal or porridge.</summary>
    Milk,

    /// <summary>A sweet topping of cereal, porridge or yoghurt.</summary>
    Topping,

    /// <summary>Pancake, waffle or a like batter bread.</summary>
    Pancake,

    /// <summary>Syrup for pancakes.</summary>
    Syrup,

    /// <summary>Yoghurt or milk pudding eaten as the main thing.</summary>
    Yoghurt,

    /// <summary>Fruit, fresh, tinned, dried or puréed.</summary>
    Fruit,

    /// <summary>A drink with carbohydrate.</summary>
    Drink,

    /// <summary>A filling shake or smoothie.</summary>
    Shake,

    /// <summary>A sweet bite: biscuit, cake, bar, sweets.</summary>
    SweetBite,

    /// <summary>A salty bite: pretzels, crackers, rice crackers.</summary>
    SavouryBite,

    /// <summary>Pasta or gnocchi.</summary>
    Pasta,

    /// <summary>Cooked rice.</summary>
    Rice,

    /// <summary>Cooked noodles.</summary>
    Noodles,

    /// <summary>Potato and other starchy roots.</summary>
    Potato,

    /// <summary>Couscous, polenta and like grains.</summary>
    Grain,

    /// <summary>Pizza or flatbread meal in one piece.</summary>
    Pizza,

    /// <summary>Steamed or griddled savoury cakes eaten with a dip or stew: idli, dosa, arepa, injera.</summary>
    SavouryCake,

    /// <summary>The dip, chutney or thin stew that goes with savoury cakes.</summary>
    Dip,

    /// <summary>Sauce for pasta, grain or potato.</summary>
    PastaSauce,

    /// <summary>Sauce for rice or noodles.</summary>
    RiceSauce,

    /// <summary>Protein food of a main meal.</summary>
    Protein,

    /// <summary>Soft cooked vegetable at a main meal.</summary>
    Vegetable,

    /// <summary>Raw vegetable beside a sandwich or pizza.</summary>
    Salad,

    /// <summary>A little bread beside a main meal.</summary>
    SideBread,

    /// <summary>Flatbread beside rice.</summary>
    SideFlatbread,

    /// <summary>A sweet end to a main meal.</summary>
    Dessert,
}
