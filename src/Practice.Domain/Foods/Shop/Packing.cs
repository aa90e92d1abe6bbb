using System.Collections.Immutable;

namespace Practice.Domain.Foods.Shop;

/// <summary>What the size of a pack counts.</summary>
public enum PackedBy
{
    /// <summary>Grams.</summary>
    Grams,

    /// <summary>Millilitres.</summary>
    Millilitres,

    /// <summary>Pieces.</summary>
    Pieces,
}

/// <summary>A size in which a pack is sold.</summary>
/// <param name="Said">As the shelf says it: <c>1 kg</c>, <c>2 pints</c>, <c>6</c>.</param>
/// <param name="Amount">In grams, millilitres or pieces.</param>
public sealed record PackSize(string Said, decimal Amount);

/// <summary>How the shops of one country commonly pack a food. Common practice, no source.</summary>
/// <param name="Pack">One pack: <c>bag</c>.</param>
/// <param name="Packs">Several.</param>
/// <param name="By">What its size counts.</param>
/// <param name="Sizes">The sizes.</param>
public sealed record Packing(string Pack, string Packs, PackedBy By, ImmutableArray<PackSize> Sizes)
{
    /// <summary>Packs of one size that cover an amount: the size of which least is left over, of those the fewest.</summary>
    /// <param name="needed">Grams, millilitres or pieces, above 0.</param>
    public (int Count, PackSize Size) For(decimal needed)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(needed);
        return Sizes
            .Select(size => (Count: (int)decimal.Ceiling(needed / size.Amount), Size: size))
            .OrderBy(packs => packs.Count * packs.Size.Amount)
            .ThenBy(packs => packs.Count)
            .First();
    }
}
