using Practice.Domain.Foods;

namespace Practice.Web.Features.Foods.Ours;

/// <summary>A household measure as it is being typed.</summary>
public sealed class MeasureLine
{
    public string? Name { get; set; }
    public string? Plural { get; set; }
    public decimal? Grams { get; set; }

    /// <summary>Whether nothing was typed.</summary>
    public bool IsEmpty =>
        string.IsNullOrWhiteSpace(Name) && string.IsNullOrWhiteSpace(Plural) && Grams is null;

    public static MeasureLine Of(HouseholdMeasure measure) =>
        new()
        {
            Name = measure.Name,
            Plural = measure.Plural,
            Grams = measure.Grams,
        };

    public HouseholdMeasure Read() =>
        new(Name?.Trim() ?? "", Plural?.Trim() ?? "", Grams ?? 0, IsOwn: true);
}
