namespace Practice.Web.Parts.Notices;

/// <summary>A fact as a line of name and value.</summary>
/// <param name="Name">What it is.</param>
/// <param name="Value">What it says; empty for nothing.</param>
public sealed record FactLine(string Name, string Value);
