using System.Globalization;
using NodaTime;
using Practice.Domain.Screening;

namespace Practice.Domain.Course;

/// <summary>Servings of a product as a step: what they bring, and what they are called.</summary>
public static class Serving
{
    /// <summary>Makes a step, still without a place.</summary>
    /// <param name="product">The product.</param>
    /// <param name="count">Servings or cups, 1 or more.</param>
    /// <param name="cupMl">Size of the station's cup, ml; null for what is carried.</param>
    public static CourseStep Of(Product product, int count, decimal? cupMl)
    {
        ArgumentNullException.ThrowIfNull(product);
        ArgumentOutOfRangeException.ThrowIfLessThan(count, 1);
        var times = count * ShareOf(product, cupMl);
        return new CourseStep
        {
            Id = 0,
            Km = 0,
            Elapsed = Duration.Zero,
            ProductId = product.Id,
            Name = product.Name,
            Count = count,
            Words = WordsOf(product, count, cupMl is not null),
            FoodG = product.IsDrink ? 0 : product.ServingG * count,
            Ml = product.IsDrink ? (product.ServingMl ?? 0) * times : 0,
            CarbohydrateG = product.CarbohydrateG * times,
            GlucoseG = product.GlucoseG * times,
            FructoseG = product.FructoseG * times,
            SodiumMg = product.SodiumMg * times,
            CaffeineMg = product.CaffeineMg * times,
        };
    }

    /// <summary>A cup of a station against the volume that the product's values hold for; 1 for what is eaten.</summary>
    public static decimal ShareOf(Product product, decimal? cupMl)
    {
        ArgumentNullException.ThrowIfNull(product);
        return product.IsDrink && cupMl is { } cup && product.ServingMl is > 0 and var serving
            ? cup / serving
            : 1;
    }

    private static string WordsOf(Product product, int count, bool fromCup)
    {
        var number = count.ToString(CultureInfo.InvariantCulture);
        var name = SafeName(product);
        if (product.IsDrink)
            return fromCup
                ? $"{number} {(count == 1 ? "cup" : "cups")} of {name}"
                : $"{number} {(count == 1 ? "drink" : "drinks")} from the bottle: {name}";
        return $"{number} × {name}";
    }

    /// <summary>The name where it holds no number with a unit, which not every reader may have; else what it is.</summary>
    private static string SafeName(Product product) =>
        NumberFree.Allows(product.Name) && product.Name.Length > 0
            ? char.ToLowerInvariant(product.Name[0]) + product.Name[1..]
            : product.Kind.ToString().ToLowerInvariant();
}
