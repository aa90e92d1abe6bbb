using System.Collections.Immutable;

namespace Practice.Domain.Foods.Own;

/// <summary>What people call the same thing again, as the library knows it: bread, biscuit, juice.</summary>
public static class FoodFamilies
{
    /// <summary>All of them, by name.</summary>
    public static ImmutableSortedSet<string> All { get; } =
        FoodLibrary.Standard.All.Select(food => food.Family).ToImmutableSortedSet();

    /// <summary><c>cold meat</c>, for <c>cold-meat</c></summary>
    public static string Name(string family)
    {
        ArgumentNullException.ThrowIfNull(family);
        return family.Replace('-', ' ');
    }
}
