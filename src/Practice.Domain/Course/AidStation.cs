using System.Collections.Immutable;

namespace Practice.Domain.Course;

/// <summary>A place where the organiser hands out food and drink.</summary>
/// <param name="Km">Distance from the start, km.</param>
/// <param name="Offers">Keys of the products handed out, such as <see cref="Product.WaterId"/>.</param>
/// <param name="CupMl">What a runner gets down from one cup, ml, 50 to 500.</param>
/// <param name="Name">Name, where it has one.</param>
public sealed record AidStation(
    decimal Km,
    ImmutableArray<string> Offers,
    decimal CupMl = 150,
    string Name = ""
)
{
    /// <summary>Whether it hands out a product.</summary>
    public bool Has(string productId) => Offers.Contains(productId);
}
