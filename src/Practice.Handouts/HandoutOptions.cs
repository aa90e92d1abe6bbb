using NodaTime;
using Practice.Domain.Practices;

namespace Practice.Handouts;

/// <summary>For whom a paper is written.</summary>
public enum HandoutVariant
{
    /// <summary>Household measures, grams and carbohydrate.</summary>
    Full,

    /// <summary>Household words only: no number with a unit.</summary>
    NumberFree,

    /// <summary>Full content in large type.</summary>
    LargePrint,
}

/// <summary>What is asked of a paper.</summary>
public sealed record HandoutOptions
{
    /// <summary>For whom; a plan that is number-free stays so whatever is asked.</summary>
    public HandoutVariant Variant { get; init; }

    /// <summary>Paper; null for the practice's own.</summary>
    public PaperSize? Paper { get; init; }

    /// <summary>Number of the plan version.</summary>
    public required int Version { get; init; }

    /// <summary>Day of issue; null for a draft, which says so on every page.</summary>
    public LocalDate? IssuedOn { get; init; }

    /// <summary>Who issued it.</summary>
    public string IssuedBy { get; init; } = "";

    /// <summary>Day from which the countdown is counted.</summary>
    public required LocalDate Today { get; init; }

    /// <summary>Language tag of the document.</summary>
    public string Language { get; init; } = "en-GB";
}
