using System.Collections.Immutable;
using Practice.Domain.Foods;

namespace Practice.Domain.Course;

/// <summary>
/// Generic products to begin with. Their values are typical, written from memory, and name no maker: the label of what
/// the client really carries always wins, its allergens too.
/// </summary>
public static class CourseProducts
{
    /// <summary>Plain water, gels, chews, drinks, a bar, ordinary foods and salt.</summary>
    public static ImmutableArray<Product> Standard { get; } =
    [
        Product.Water,
        Gel("gel", "Energy gel, 2:1", 40, 25, 16.7m, 8.3m, 50, waterMl: 150),
        Gel("gel-strong", "Energy gel, 1:0.8", 50, 30, 16.7m, 13.3m, 60, waterMl: 150),
        Gel("gel-isotonic", "Isotonic gel", 60, 22, 17, 5, 30, waterMl: 0),
        Gel("gel-caffeine", "Energy gel with caffeine", 40, 25, 16.7m, 8.3m, 50, 150, 75),
        new()
        {
            Id = "chews",
            Name = "Chews, four",
            Kind = ProductKind.Chews,
            ServingG = 25,
            CarbohydrateG = 20,
            GlucoseG = 13.5m,
            FructoseG = 6.5m,
            SodiumMg = 40,
            WaterNeedMl = 100,
            CarryLimit = 6,
            Allergens = [],
            HasSucrose = true,
        },
        new()
        {
            Id = "drink",
            Name = "Sports drink",
            Kind = ProductKind.Drink,
            ServingMl = 150,
            CarbohydrateG = 9,
            GlucoseG = 6,
            FructoseG = 3,
            SodiumMg = 75,
            Allergens = [],
        },
        new()
        {
            Id = "bottle",
            Name = "Drink mix",
            Kind = ProductKind.Drink,
            ServingMl = 125,
            CarbohydrateG = 10,
            GlucoseG = 6.7m,
            FructoseG = 3.3m,
            SodiumMg = 60,
            CarryLimit = 4,
            Allergens = [],
        },
        new()
        {
            Id = "bar",
            Name = "Half an oat bar",
            Kind = ProductKind.Bar,
            ServingG = 30,
            CarbohydrateG = 20,
            GlucoseG = 14,
            FructoseG = 6,
            SodiumMg = 60,
            WaterNeedMl = 150,
            CarryLimit = 4,
            Allergens = [Allergen.Oats, Allergen.Soya],
            Traits = FoodTraits.SportsProduct | FoodTraits.UncertifiedOats,
            HasSucrose = true,
        },
        new()
        {
            Id = "banana",
            Name = "Half a banana",
            Kind = ProductKind.Food,
            ServingG = 50,
            CarbohydrateG = 11,
            GlucoseG = 6.5m,
            FructoseG = 4.5m,
            Allergens = [],
            Traits = FoodTraits.None,
            HasSucrose = true,
        },
        new()
        {
            Id = "potato",
            Name = "Salted boiled potato",
            Kind = ProductKind.Food,
            ServingG = 60,
            CarbohydrateG = 11,
            GlucoseG = 11,
            SodiumMg = 200,
            Allergens = [],
            Traits = FoodTraits.None,
        },
        new()
        {
            Id = "salt",
            Name = "Salt capsule",
            Kind = ProductKind.Salt,
            ServingG = 1,
            SodiumMg = 200,
            WaterNeedMl = 150,
            CarryLimit = 6,
            Allergens = [],
        },
    ];

    /// <summary>What a course begins with: gels and isotonic gels carried, water and a drink at the stations.</summary>
    public static ImmutableArray<Product> ToBeginWith { get; } =
    [
        .. Standard.Where(p =>
            p.Id is Product.WaterId or "gel" or "gel-isotonic" or "gel-caffeine" or "drink"
        ),
    ];

    private static Product Gel(
        string id,
        string name,
        decimal grams,
        decimal carbohydrate,
        decimal glucose,
        decimal fructose,
        decimal sodium,
        decimal waterMl,
        decimal caffeine = 0
    ) =>
        new()
        {
            Id = id,
            Name = name,
            Kind = ProductKind.Gel,
            ServingG = grams,
            CarbohydrateG = carbohydrate,
            GlucoseG = glucose,
            FructoseG = fructose,
            SodiumMg = sodium,
            CaffeineMg = caffeine,
            WaterNeedMl = waterMl,
            CarryLimit = 8,
            Allergens = [],
        };
}
