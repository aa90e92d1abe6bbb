using System.Collections.Immutable;
using NodaTime;
using NodaTime.Text;
using Practice.Domain.Quantities;

namespace Practice.Domain.Evidence;

/// <summary>One value that went into a formula, as it is shown to a reader.</summary>
/// <param name="Name">What it is, in the trade's words.</param>
/// <param name="Value">Value with its unit, as text.</param>
public sealed record BasisInput(string Name, string Value)
{
    /// <summary>A number with its unit, rounded for reading.</summary>
    public static BasisInput Of(string name, decimal value, string unit, int decimals = 0) =>
        new(name, $"{Rounding.Shown(value, decimals)} {unit}".TrimEnd());

    /// <summary>A day as a reader says it: "20 Nov 2026".</summary>
    public static string Day(LocalDate day) => ReadableDay.Format(day);

    private static readonly LocalDatePattern ReadableDay =
        LocalDatePattern.CreateWithInvariantCulture("d MMM uuuu");

    /// <summary>A computed number with its unit, rounded for reading.</summary>
    public static BasisInput Of(string name, double value, string unit, int decimals = 0) =>
        Of(name, (decimal)value, unit, decimals);
}

/// <summary>Why a number is what it is: formula, inputs and sources.</summary>
/// <param name="Formula">The relation in words and symbols.</param>
/// <param name="Inputs">The values put into it.</param>
/// <param name="Sources">Where the relation and its constants come from.</param>
/// <param name="Note">What a reader must also know (uncertainty, why a rule bent the number).</param>
public sealed record Basis(
    string Formula,
    ImmutableArray<BasisInput> Inputs,
    ImmutableArray<Source> Sources,
    string? Note = null
);
