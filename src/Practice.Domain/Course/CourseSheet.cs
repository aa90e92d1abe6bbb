using System.Collections.Immutable;

namespace Practice.Domain.Course;

/// <summary>What is known and decided of a race's course: the document the practitioner works on.</summary>
public sealed record CourseSheet
{
    /// <summary>Version of this shape in stored documents.</summary>
    public int Shape { get; init; } = 1;

    /// <summary>The course.</summary>
    public required CourseProfile Profile { get; init; }

    /// <summary>Aid stations, in order.</summary>
    public ImmutableArray<AidStation> Stations { get; init; } = [];

    /// <summary>What is carried or handed out; water is always known.</summary>
    public ImmutableArray<Product> Products { get; init; } = [];

    /// <summary>What the practitioner decided.</summary>
    public CourseChoices Choices { get; init; } = new();

    /// <summary>What to take, in order of the course; empty until planned.</summary>
    public ImmutableArray<CourseStep> Steps { get; init; } = [];

    /// <summary>A product of the course; null when it is not known.</summary>
    public Product? Find(string productId) =>
        productId == Product.WaterId
            ? Products.FirstOrDefault(p => p.Id == productId) ?? Product.Water
            : Products.FirstOrDefault(p => p.Id == productId);

    /// <summary>The sheet with stations in order of the course and none beyond its end.</summary>
    public CourseSheet WithStations(IEnumerable<AidStation> stations) =>
        this with
        {
            Stations =
            [
                .. stations
                    .Where(s => s.Km > 0 && s.Km < Profile.DistanceKm)
                    .DistinctBy(s => s.Km)
                    .OrderBy(s => s.Km),
            ],
        };
}
