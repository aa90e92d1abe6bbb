using System.Collections.Immutable;

namespace Practice.Domain.Evidence;

/// <summary>One value that went into a formula, as it is shown to a reader.</summary>
/// <param name="Name">What it is, in the trade's words.</param>
/// <param name="Value">Value with its unit, as text.</param>
public sealed record BasisInput(string Name, string Value);

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
