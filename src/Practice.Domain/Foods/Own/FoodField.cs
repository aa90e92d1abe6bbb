namespace Practice.Domain.Foods.Own;

/// <summary>What can be wrong about a food that a practice writes down; forms and tables of import go by these names.</summary>
public enum FoodField
{
    /// <summary>Name in UK words.</summary>
    Name,

    /// <summary>Name in US words.</summary>
    UsName,

    /// <summary>Section of the shopping list.</summary>
    Group,

    /// <summary>What it counts as the same thing as.</summary>
    Family,

    /// <summary>Energy, kcal.</summary>
    Energy,

    /// <summary>Available carbohydrate, g.</summary>
    Carbohydrate,

    /// <summary>Sugars, g.</summary>
    Sugars,

    /// <summary>Glucose, g.</summary>
    Glucose,

    /// <summary>Fructose, g.</summary>
    Fructose,

    /// <summary>Sucrose, g.</summary>
    Sucrose,

    /// <summary>Lactose, g.</summary>
    Lactose,

    /// <summary>Fibre, g.</summary>
    Fibre,

    /// <summary>Protein, g.</summary>
    Protein,

    /// <summary>Fat, g.</summary>
    Fat,

    /// <summary>Sodium, mg.</summary>
    Sodium,

    /// <summary>Potassium, mg.</summary>
    Potassium,

    /// <summary>Water, g.</summary>
    Water,

    /// <summary>Caffeine, mg.</summary>
    Caffeine,

    /// <summary>Counted, weighed or poured.</summary>
    Style,

    /// <summary>What one piece is called.</summary>
    Unit,

    /// <summary>What several pieces are called.</summary>
    UnitPlural,

    /// <summary>What one piece is called in US words.</summary>
    UsUnit,

    /// <summary>What several pieces are called in US words.</summary>
    UsUnitPlural,

    /// <summary>What a piece, or 100 ml, weighs.</summary>
    Grams,

    /// <summary>Whether a piece can be halved.</summary>
    CanBeHalved,

    /// <summary>The smallest helping.</summary>
    Least,

    /// <summary>The largest helping.</summary>
    Most,

    /// <summary>Household measures.</summary>
    Measures,

    /// <summary>Allergens.</summary>
    Allergens,

    /// <summary>What diets care about.</summary>
    Traits,

    /// <summary>Parts it plays in meals.</summary>
    Roles,

    /// <summary>Sittings it suits.</summary>
    Occasions,

    /// <summary>Where its facts come from.</summary>
    Source,
}

/// <summary>Something wrong, or odd, about a food that a practice writes down.</summary>
/// <param name="Field">Where.</param>
/// <param name="Text">What, and what to do.</param>
/// <param name="IsWarning">Whether it may stay as it is: odd, not wrong.</param>
public sealed record FoodFault(FoodField Field, string Text, bool IsWarning = false);
