namespace Practice.Web.Shell;

/// <summary>What every screen shows of the practice; handed from the page into the circuit, so plain and small.</summary>
/// <param name="Name">Name of the practice.</param>
/// <param name="Accent">Its accent, <c>#RRGGBB</c>.</param>
/// <param name="HasLogo">Whether there is a logo to show.</param>
/// <param name="Theme"><c>light</c>, <c>dark</c>, or null for the system's.</param>
public sealed record PracticeFace(string Name, string? Accent, bool HasLogo, string? Theme);
