using System.ComponentModel.DataAnnotations;
using Practice.Domain.Quantities;

namespace Practice.Web.Parts;

/// <summary>A text that can be kept: not too long, no half and no unseen characters.</summary>
/// <param name="most">The most characters it may have.</param>
public sealed class TypedAttribute(int most) : ValidationAttribute
{
    /// <summary>The most characters it may have.</summary>
    public int Most => most;

    /// <summary>Whether it may have line ends.</summary>
    public bool OfLines { get; set; }

    protected override ValidationResult? IsValid(
        object? value,
        ValidationContext validationContext
    ) =>
        TypedText.Problem(value as string, most, OfLines) is { } problem
            ? new ValidationResult(problem, [validationContext.MemberName!])
            : ValidationResult.Success;
}
