using System.Collections.Immutable;
using Practice.Domain.Foods.Own;

namespace Practice.Domain.Foods;

/// <summary>Aisle-level kind of a food; also the section of the shopping list.</summary>
public enum FoodGroup
{
    /// <summary>Bread, rolls, flatbreads, crispbreads.</summary>
    Bakery,

    /// <summary>Breakfast cereal, oats, semolina.</summary>
    Cereal,

    /// <summary>Rice, pasta, noodles, grains, flour products.</summary>
    Starch,

    /// <summary>Potatoes, roots and vegetables.</summary>
    Vegetable,

    /// <summary>Fresh, tinned and dried fruit.</summary>
    Fruit,

    /// <summary>Milk, yoghurt, cheese, and the plant-based in their place.</summary>
    Dairy,

    /// <summary>Meat, fish, eggs, tofu.</summary>
    Protein,

    /// <summary>Jams, honey, nut butters.</summary>
    Spread,

    /// <summary>Sauces, condiments, dips.</summary>
    Sauce,

    /// <summary>Biscuits, cakes, sweets, crisps.</summary>
    Snack,

    /// <summary>Desserts.</summary>
    Dessert,

    /// <summary>Juices, squashes, soft drinks, shakes.</summary>
    Drink,

    /// <summary>Made for sport: drink mixes, gels, chews, bars.</summary>
    Sports,
}

/// <summary>What a food is or is not, as far as diets care. Judgements for a typical recipe: a label always wins.</summary>
[Flags]
public enum FoodTraits
{
    /// <summary>Nothing of note.</summary>
    None = 0,

    /// <summary>Holds meat, poultry or a slaughter by-product such as gelatine.</summary>
    Meat = 1,

    /// <summary>Holds pork.</summary>
    Pork = 2,

    /// <summary>Holds beef.</summary>
    Beef = 4,

    /// <summary>Holds fish or shellfish.</summary>
    Seafood = 8,

    /// <summary>Holds an animal's product that is neither flesh, milk nor egg: honey.</summary>
    AnimalProduct = 16,

    /// <summary>Holds alcohol.</summary>
    Alcohol = 32,

    /// <summary>Sweets and chocolate: not twice a day.</summary>
    Confectionery = 64,

    /// <summary>Made for sport.</summary>
    SportsProduct = 128,

    /// <summary>A stand-in (gluten-free, lactose-free, plant-based) that only those who need it want.</summary>
    Substitute = 256,

    /// <summary>Rich in fermentable sugars by judgement: not for a low-FODMAP plan.</summary>
    HighFodmap = 512,

    /// <summary>Sugar carries it: counted in the sugary share of the day.</summary>
    Sugary = 1024,

    /// <summary>Sweetened with polyols or aspartame.</summary>
    Sweetener = 2048,

    /// <summary>Raw or undercooked animal food, or unpasteurised.</summary>
    RawAnimal = 4096,

    /// <summary>Wholegrain, bran or legume: left out in the last days unless tolerated.</summary>
    HighResidue = 8192,

    /// <summary>Uncertified oats: not for coeliac disease.</summary>
    UncertifiedOats = 16384,
}

/// <summary>A part a food can play, with how much host one step of it covers, or gives to be covered.</summary>
/// <param name="Role">The part.</param>
/// <param name="Cover">Cover units of one step in that role; used by the couplings of meals.</param>
public sealed record FoodRole(MealRole Role, int Cover);

/// <summary>Where the facts of a food come from.</summary>
/// <param name="Dataset">Name and release of the dataset, or what else it is.</param>
/// <param name="Record">Number of the record in it; null when derived.</param>
/// <param name="Note">What was adjusted and why.</param>
public sealed record FoodOrigin(string Dataset, string? Record, string? Note = null);

/// <summary>A generic food of the library.</summary>
public sealed record Food
{
    /// <summary>Stable lower-case key, such as <c>white-rice-boiled</c>.</summary>
    public required string Id { get; init; }

    /// <summary>Name in UK words.</summary>
    public required string Name { get; init; }

    /// <summary>Name in US words where it differs.</summary>
    public string? UsName { get; init; }

    /// <summary>Aisle-level kind.</summary>
    public required FoodGroup Group { get; init; }

    /// <summary>What a person would call the same thing again: at most one of a family in one sitting.</summary>
    public required string Family { get; init; }

    /// <summary>Cuisine it belongs to, such as <c>south-asian</c>; null for everyone's.</summary>
    public string? Cuisine { get; init; }

    /// <summary>Whether its carbohydrate counts as drunk.</summary>
    public bool IsLiquid { get; init; }

    /// <summary>Nutrients of 100 g as eaten.</summary>
    public required Nutrients Per100G { get; init; }

    /// <summary>How it is served.</summary>
    public required Serving Serving { get; init; }

    /// <summary>Allergens a typical recipe holds.</summary>
    public ImmutableArray<Allergen> Allergens { get; init; } = [];

    /// <summary>Traits diets care about.</summary>
    public FoodTraits Traits { get; init; }

    /// <summary>Parts it plays in meals.</summary>
    public required ImmutableArray<FoodRole> Roles { get; init; }

    /// <summary>Sittings it suits.</summary>
    public required ImmutableArray<OccasionKind> Occasions { get; init; }

    /// <summary>Where its facts come from.</summary>
    public required FoodOrigin Origin { get; init; }

    /// <summary>Nutrients of one step of the serving.</summary>
    public Nutrients PerStep => Per100G.ForGrams(Serving.StepGrams);

    /// <summary>
    /// Whether it holds no cereal with gluten: wheat, barley, rye or oats. Certified oats are not in it, for whether
    /// oats are tolerated is each client's own question.
    /// </summary>
    public bool IsGlutenFree =>
        !Allergens.Any(a =>
            a is Allergen.Wheat or Allergen.Barley or Allergen.Rye or Allergen.Oats
        );

    /// <summary>
    /// Whether it is free of lactose: no milk in it, or at most 0.1 g in 100 g, the limit products sold as lactose-free
    /// usually keep (common practice, no source).
    /// </summary>
    public bool IsLactoseFree => !Allergens.Contains(Allergen.Milk) || Per100G.LactoseG <= 0.1m;

    /// <summary>Whether nothing in it comes from animals.</summary>
    public bool IsVegan =>
        IsVegetarian
        && !Is(FoodTraits.AnimalProduct)
        && !Allergens.Contains(Allergen.Milk)
        && !Allergens.Contains(Allergen.Eggs);

    /// <summary>Whether there is no meat, fish, shellfish or gelatine in it.</summary>
    public bool IsVegetarian => !Is(FoodTraits.Meat) && !Is(FoodTraits.Seafood);

    /// <summary>Whether a practice wrote it down itself.</summary>
    public bool IsOwn => Origin.Dataset == OwnFood.Dataset;

    /// <summary>Whether it has all of the given traits.</summary>
    public bool Is(FoodTraits traits) => (Traits & traits) == traits;

    /// <summary>The name in the reader's words.</summary>
    public string NameIn(HouseholdUnits units) =>
        units == HouseholdUnits.UsCustomary ? UsName ?? Name : Name;

    /// <summary>The food with more household measures.</summary>
    internal Food WithMeasures(IEnumerable<HouseholdMeasure> measures)
    {
        var all = Serving.Measures.AddRange(measures);
        return all.Length == Serving.Measures.Length
            ? this
            : this with
            {
                Serving = Serving with { Measures = all },
            };
    }
}
