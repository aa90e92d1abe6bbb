using System.ComponentModel.DataAnnotations;
using NodaTime;
using Practice.Domain.Screening;

namespace Practice.Web.Features.Clients.Screening;

/// <summary>What was typed about a clearance.</summary>
public sealed class ClearanceFields : IValidatableObject
{
    [Required(ErrorMessage = "Say who cleared it.")]
    public string? By { get; set; }

    public string? Profession { get; set; }

    [Required(ErrorMessage = "Choose the day.")]
    public DateOnly? On { get; set; }

    [Required(ErrorMessage = "Choose the last day.")]
    public DateOnly? Until { get; set; }

    [Required(ErrorMessage = "Say what was said.")]
    public string? WhatWasSaid { get; set; }

    public IEnumerable<ValidationResult> Validate(ValidationContext validationContext)
    {
        if (Until < On)
            yield return new ValidationResult("It ends before it begins.", [nameof(Until)]);
    }

    /// <summary>The clearance of a form that was found valid.</summary>
    public Clearance Read(Hold hold) =>
        new(
            hold.Key,
            By!.Trim(),
            Profession?.Trim() ?? "",
            LocalDate.FromDateOnly(On!.Value),
            LocalDate.FromDateOnly(Until!.Value),
            WhatWasSaid!.Trim()
        );
}
