using System.Collections.Immutable;
using Practice.Domain.Foods;

namespace Practice.Domain.Practices;

/// <summary>Paper a practice prints on.</summary>
public enum PaperSize
{
    /// <summary>210 × 297 mm.</summary>
    A4,

    /// <summary>8.5 × 11 in.</summary>
    Letter,
}

/// <summary>A practice and the face it shows to its clients.</summary>
public sealed record PracticeProfile
{
    /// <summary>The accent of a practice that has not chosen one.</summary>
    public const string DefaultAccent = "#0B6E62";

    /// <summary>Key of the practice; every record it owns bears it.</summary>
    public required Guid PracticeId { get; init; }

    /// <summary>Name on screens and papers, 1 to 200 characters.</summary>
    public required string Name { get; init; }

    /// <summary>Accent colour, <c>#RRGGBB</c>.</summary>
    public string Accent { get; init; } = DefaultAccent;

    /// <summary>Logo as a PNG file; empty for none.</summary>
    public ImmutableArray<byte> LogoPng { get; init; } = [];

    /// <summary>Contact line at the foot of every paper.</summary>
    public string Footer { get; init; } = "";

    /// <summary>Professional registration as the practice wants it printed.</summary>
    public string RegistrationLine { get; init; } = "";

    /// <summary>Paper it prints on.</summary>
    public PaperSize Paper { get; init; }

    /// <summary>Kitchen words of its papers unless a client's differ.</summary>
    public HouseholdUnits Units { get; init; }

    /// <summary>What its plans begin with, and how long it keeps what is quiet.</summary>
    public PracticeDefaults Defaults { get; init; } = new();
}
