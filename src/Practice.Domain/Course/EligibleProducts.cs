using System.Collections.Immutable;
using Practice.Domain.Clients;
using Practice.Domain.Foods;
using Practice.Domain.Screening;

namespace Practice.Domain.Course;

/// <summary>A product the client does not get, and why.</summary>
/// <param name="Product">The product.</param>
/// <param name="Reason">Why, in words.</param>
public sealed record ExcludedProduct(Product Product, string Reason);

/// <summary>
/// Which products of a course the client may have. What falls out here never comes back: no algorithm trades it. A label
/// nobody has read rules a product out where an allergen matters.
/// </summary>
/// <param name="Allowed">What the planner may use.</param>
/// <param name="Excluded">The others with the reason.</param>
public sealed record EligibleProducts(
    ImmutableArray<Product> Allowed,
    ImmutableArray<ExcludedProduct> Excluded
)
{
    /// <summary>Sorts the products of a case. Water is always among the allowed.</summary>
    public static EligibleProducts For(CourseCase course)
    {
        ArgumentNullException.ThrowIfNull(course);
        var allowed = ImmutableArray.CreateBuilder<Product>();
        var excluded = ImmutableArray.CreateBuilder<ExcludedProduct>();
        if (course.Sheet.Products.All(p => p.Id != Product.WaterId))
            allowed.Add(Product.Water);
        foreach (var product in course.Sheet.Products)
            if (WhyNot(product, course) is { } reason)
                excluded.Add(new ExcludedProduct(product, reason));
            else
                allowed.Add(product);
        return new EligibleProducts(allowed.ToImmutable(), excluded.ToImmutable());
    }

    /// <summary>Why a client does not get a product; null when nothing speaks against it.</summary>
    public static string? WhyNot(Product product, CourseCase course)
    {
        ArgumentNullException.ThrowIfNull(product);
        ArgumentNullException.ThrowIfNull(course);
        if (product.Kind == ProductKind.Water)
            return null;
        return Allergic(product, course.Diet, course.Adjustments)
            ?? Screened(product, course)
            ?? Refused(product, course.Diet);
    }

    private static string? Allergic(Product product, Diet diet, Adjustments adjustments)
    {
        var banned = adjustments.ExcludedAllergens.Union(diet.Allergies);
        if (banned.IsEmpty && string.IsNullOrWhiteSpace(diet.OtherAllergy))
            return null;
        if (product.Allergens is not { } held)
            return "nobody has read its label for allergens";
        foreach (var allergen in held)
            if (banned.Contains(allergen))
                return $"allergy or screening: {allergen.InWords()}";
        return null;
    }

    private static string? Screened(Product product, CourseCase course)
    {
        var adjustments = course.Adjustments;
        if ((product.Traits & adjustments.ExcludedTraits) is not FoodTraits.None and var traits)
            return $"excluded by screening: {traits.InWords()}";
        if (adjustments.NoFructoseAtAll && product.FructoseG > 0)
            return "excluded by screening: fructose or sucrose";
        if ((adjustments.NoSucroseAtAll || adjustments.NoFructoseAtAll) && product.HasSucrose)
            return "excluded by screening: sucrose";
        if (product.CaffeineMg > 0 && CaffeineRules.IsRuledOut(course))
            return "caffeine is ruled out for this client";
        if (product.CaffeineMg > 0 && course.Choices.CaffeineMgPerKg == 0)
            return "caffeine was not rehearsed";
        if (
            adjustments.LactoseMaxPerOccasionG is 0
            && product.Allergens?.Contains(Allergen.Milk) != false
        )
            return "excluded by screening: lactose";
        return product.Kind == ProductKind.Salt && adjustments.NoAddedSodium
            ? "no salt is added for this client"
            : null;
    }

    private static string? Refused(Product product, Diet diet)
    {
        if (
            (product.Traits & (diet.Refused | FoodTraits.Alcohol))
            is not FoodTraits.None
                and var refused
        )
            return $"refused: {refused}";
        var flesh = product.Traits & (FoodTraits.Meat | FoodTraits.Pork | FoodTraits.Beef);
        var seafood = product.Traits & FoodTraits.Seafood;
        var animal =
            product.Traits.HasFlag(FoodTraits.AnimalProduct)
            || product.Allergens?.Any(a => a is Allergen.Milk or Allergen.Eggs) == true;
        return diet.Pattern switch
        {
            DietPattern.Pescatarian when flesh != FoodTraits.None => "not pescatarian",
            DietPattern.Vegetarian or DietPattern.Vegan when (flesh | seafood) != FoodTraits.None =>
                "not vegetarian",
            DietPattern.Vegan when animal => "not vegan",
            _ => null,
        };
    }
}
