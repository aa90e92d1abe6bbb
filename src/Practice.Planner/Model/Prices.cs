namespace Practice.Planner.Model;

/// <summary>
/// What a menu is charged for: <see cref="Food"/> points are one more food on a plate. Misses of limits are so much
/// dearer than wishes that a wish never buys a miss. Own rule, tuned by reading menus; no source.
/// </summary>
internal static class Prices
{
    // limits, per 0.01 g unless said otherwise
    public const long DayCarbohydrate = 800;
    public const long OccasionCarbohydrate = 80;
    public const long Fibre = 6000;
    public const long Fat = 300;
    public const long Protein = 300;
    public const long DrinksShare = 80;
    public const long Fructose = 60;
    public const long Lactose = 300;
    public const long SugaryShare = 40;
    public const long SodiumPerMg = 200;
    public const long WeightPerTenthOfGram = 80;
    public const long OncePerDay = 200_000;

    /// <summary>A broken rule of meal sense, where a lock or an edit makes it unavoidable.</summary>
    public const long BrokenSense = 120_000;

    /// <summary>An empty plate, when no meal can be made at all.</summary>
    public const long NothingFits = 10_000_000;

    // wishes
    public const long Food = 1000;
    public const long SeldomPattern = 2000;
    public const long OffAimOfOccasion = 2;
    public const long OffAimOfDay = 3;
    public const long OffAimOfDrinks = 1;
    public const long SolidGram = 8;
    public const long DrunkGram = 3;
    public const long NoProteinFood = 6000;
    public const long FibreHundredth = 1;
    public const long SecondDrink = 800;
    public const long NothingFreshAtBreakfast = 1500;
    public const long Whim = 800;

    // kinds of food
    public const long FruitBonus = 800;
    public const long VegetableBonus = 2500;
    public const long VegetableBonusOnTheEve = 1500;
    public const long ProteinBonus = 1000;
    public const long Confectionery = 2500;
    public const long SportsDrink = 1500;
    public const long SportsBite = 3000;
    public const long CaffeineLate = 4000;
    public const long SoftDrink = 800;
    public const long SyrupOnBread = 1500;
    public const long StandInNotWanted = 5000;
    public const long HighResidue = 8000;

    /// <summary>A food at this price is not thought of while a menu is improved.</summary>
    public const long LastResort = 5500;

    // tastes
    public const long LessUsual = 1800;
    public const long Liked = 3000;
    public const long Tolerated = 1500;
    public const long Suspect = 20_000;

    // again on the same day
    public const long FamilyAgain = 1500;
    public const long FoodAgain = 2000;
    public const long BreadAgain = 1200;
    public const long PatternAgain = 2000;

    // from day to day
    public const long SameNoticedFood = 2500;
    public const long SameFood = 1200;
    public const long SamePattern = 2000;
    public const long DifferentFood = 800;
    public const long DifferentPattern = 2000;
}
