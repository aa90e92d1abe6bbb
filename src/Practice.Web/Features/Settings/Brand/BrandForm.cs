using System.ComponentModel.DataAnnotations;
using Practice.Domain.Foods;
using Practice.Domain.Practices;
using Practice.Web.Parts;

namespace Practice.Web.Features.Settings.Brand;

/// <summary>What is typed about the practice's face.</summary>
public sealed class BrandForm
{
    [Required(ErrorMessage = "Papers need a name.")]
    [Typed(200)]
    public string? Name { get; set; }

    [Required(ErrorMessage = "Choose a colour.")]
    [RegularExpression("^#[0-9A-Fa-f]{6}$", ErrorMessage = "Write it like #0B6E62.")]
    public string? Accent { get; set; }

    [Typed(BrandDetails.MostFooter)]
    public string? Footer { get; set; }

    [Typed(BrandDetails.MostRegistration)]
    public string? RegistrationLine { get; set; }

    public PaperSize Paper { get; set; }

    public HouseholdUnits Units { get; set; }

    public static BrandForm Of(PracticeProfile practice) =>
        new()
        {
            Name = practice.Name,
            Accent = practice.Accent,
            Footer = practice.Footer,
            RegistrationLine = practice.RegistrationLine,
            Paper = practice.Paper,
            Units = practice.Units,
        };

    public BrandDetails Read() =>
        new()
        {
            Name = Name ?? "",
            Accent = Accent ?? "",
            Footer = Footer ?? "",
            RegistrationLine = RegistrationLine ?? "",
            Paper = Paper,
            Units = Units,
        };
}
