using System.Collections.Immutable;
using Practice.Domain.Foods;

namespace Practice.Domain.Course;

/// <summary>What a product is on the course.</summary>
public enum ProductKind
{
    /// <summary>Plain water.</summary>
    Water,

    /// <summary>A drink with carbohydrate or salts.</summary>
    Drink,

    /// <summary>A gel.</summary>
    Gel,

    /// <summary>Chews.</summary>
    Chews,

    /// <summary>A bar.</summary>
    Bar,

    /// <summary>Ordinary food: a banana, a sandwich, salted potatoes.</summary>
    Food,

    /// <summary>Salt in a capsule or tablet.</summary>
    Salt,
}

/// <summary>Something to take on the course. Generic: no maker's name.</summary>
public sealed record Product
{
    /// <summary>Key of plain water, which every course knows.</summary>
    public const string WaterId = "water";

    /// <summary>Plain water; a serving is 150 ml.</summary>
    public static Product Water { get; } =
        new()
        {
            Id = WaterId,
            Name = "Water",
            Kind = ProductKind.Water,
            ServingMl = 150,
            Allergens = [],
        };

    /// <summary>Key within the course.</summary>
    public required string Id { get; init; }

    /// <summary>Generic name, 1 to 60 characters.</summary>
    public required string Name { get; init; }

    /// <summary>What it is.</summary>
    public required ProductKind Kind { get; init; }

    /// <summary>Weight of one serving, g, 0 to 500; of no account for drinks.</summary>
    public decimal ServingG { get; init; }

    /// <summary>Volume that the values below hold for, ml; null for what is not drunk. From a cup they scale with its size.</summary>
    public decimal? ServingMl { get; init; }

    /// <summary>Available carbohydrate of one serving, g, 0 to 200.</summary>
    public decimal CarbohydrateG { get; init; }

    /// <summary>
    /// Of it absorbed as glucose, g: glucose, maltodextrin, starch and half of the sucrose. With fructose it makes up
    /// the carbohydrate.
    /// </summary>
    public decimal GlucoseG { get; init; }

    /// <summary>Of it absorbed as fructose, g: fructose and half of the sucrose.</summary>
    public decimal FructoseG { get; init; }

    /// <summary>Sodium of one serving, mg, 0 to 2000.</summary>
    public decimal SodiumMg { get; init; }

    /// <summary>Caffeine of one serving, mg, 0 to 300.</summary>
    public decimal CaffeineMg { get; init; }

    /// <summary>Water to be drunk with one serving, ml, 0 to 500.</summary>
    public decimal WaterNeedMl { get; init; }

    /// <summary>Servings the client can carry at once, 0 to 60; 0 for what only stations hand out.</summary>
    public int CarryLimit { get; init; }

    /// <summary>Whether what is carried is filled up at each station that hands it out (a bottle).</summary>
    public bool RefillsAtStations { get; init; }

    /// <summary>Allergens it holds or may hold; null when nobody has read the label, which rules it out for an allergic client.</summary>
    public ImmutableArray<Allergen>? Allergens { get; init; }

    /// <summary>Traits that diets and screening care about.</summary>
    public FoodTraits Traits { get; init; } = FoodTraits.SportsProduct;

    /// <summary>Whether it holds sucrose (table sugar), read from the label.</summary>
    public bool HasSucrose { get; init; }

    /// <summary>Whether it is drunk.</summary>
    public bool IsDrink => Kind is ProductKind.Water or ProductKind.Drink;

    /// <summary>Whether the client can carry it.</summary>
    public bool IsCarried => CarryLimit > 0;
}
