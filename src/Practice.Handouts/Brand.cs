namespace Practice.Handouts;

/// <summary>How a practice looks on paper.</summary>
public sealed record Brand
{
    /// <summary>Accent of a practice that has not chosen one.</summary>
    public const string DefaultAccent = "#0B6E62";

    /// <summary>Name of the practice.</summary>
    public required string PracticeName { get; init; }

    /// <summary>Accent colour as <c>#RRGGBB</c>; anything else prints in <see cref="DefaultAccent"/>.</summary>
    public string AccentHex { get; init; } = DefaultAccent;

    /// <summary>Logo as 8-bit PNG; null for none.</summary>
    public ReadOnlyMemory<byte>? LogoPng { get; init; }

    /// <summary>What the practice says at the foot of every page: address, telephone, web.</summary>
    public string FooterText { get; init; } = "";

    /// <summary>Registration of the practitioner, such as "Registered nutritionist, no. 12345".</summary>
    public string RegistrationLine { get; init; } = "";

    /// <summary>Paper the practice prints on unless asked otherwise.</summary>
    public PaperSize Paper { get; init; }
}

/// <summary>Paper sizes.</summary>
public enum PaperSize
{
    /// <summary>210 × 297 mm.</summary>
    A4,

    /// <summary>8.5 × 11 in.</summary>
    Letter,
}
