using Practice.Domain.Foods;
using Practice.Domain.Quantities;

namespace Practice.Domain.Practices;

/// <summary>The face of a practice as its owner sets it; the logo is handed over by itself.</summary>
public sealed record BrandDetails
{
    /// <summary>The most characters of the registration line.</summary>
    public const int MostRegistration = 200;

    /// <summary>The most characters of the line at the foot of papers.</summary>
    public const int MostFooter = 300;

    /// <summary>Name on screens and papers, 1 to 200 characters.</summary>
    public required string Name { get; init; }

    /// <summary>Accent colour, <c>#RRGGBB</c>.</summary>
    public required string Accent { get; init; }

    /// <summary>Contact line at the foot of every paper.</summary>
    public string Footer { get; init; } = "";

    /// <summary>Professional registration as the practice wants it printed.</summary>
    public string RegistrationLine { get; init; } = "";

    /// <summary>Paper it prints on.</summary>
    public PaperSize Paper { get; init; }

    /// <summary>Kitchen words of its papers unless a client's differ.</summary>
    public HouseholdUnits Units { get; init; }

    /// <summary>The details of a practice as they stand.</summary>
    public static BrandDetails Of(PracticeProfile practice)
    {
        ArgumentNullException.ThrowIfNull(practice);
        return new()
        {
            Name = practice.Name,
            Accent = practice.Accent,
            Footer = practice.Footer,
            RegistrationLine = practice.RegistrationLine,
            Paper = practice.Paper,
            Units = practice.Units,
        };
    }

    /// <summary>A practice with this face.</summary>
    /// <exception cref="ArgumentException">A line cannot be kept or the accent is no colour; the message says which.</exception>
    public PracticeProfile ApplyTo(PracticeProfile practice)
    {
        ArgumentNullException.ThrowIfNull(practice);
        var name = TypedText.Checked(Name, 200, "The name");
        if (name.Length == 0)
            throw new ArgumentException("The name: it is needed.");
        if (!Colour.TryParse(Accent, out var accent))
            throw new ArgumentException("The accent: write it like #0B6E62.");
        return practice with
        {
            Name = name,
            Accent = accent.ToString(),
            Footer = TypedText.Checked(Footer, MostFooter, "The foot of papers"),
            RegistrationLine = TypedText.Checked(
                RegistrationLine,
                MostRegistration,
                "The registration"
            ),
            Paper = Paper,
            Units = Units,
        };
    }
}
