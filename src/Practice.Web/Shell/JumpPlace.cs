using Practice.Web.Parts;

namespace Practice.Web.Shell;

/// <summary>Somewhere to go: a screen, a client, a race.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="Detail">What tells it from another of the same name; may be empty.</param>
/// <param name="Address">Where it is.</param>
/// <param name="Glyph">What kind of thing it is.</param>
public sealed record JumpPlace(string Name, string Detail, string Address, Glyph Glyph)
{
    /// <summary>Beginnings of other addresses that belong to it.</summary>
    public IReadOnlyList<string> Holds { get; init; } = [];
}
