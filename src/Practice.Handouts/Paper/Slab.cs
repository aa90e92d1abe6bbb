namespace Practice.Handouts.Paper;

/// <summary>
/// A strip across the page that does not break. Every block becomes slabs; pages are filled with slabs; nothing else
/// is ever broken.
/// </summary>
internal sealed class Slab
{
    /// <summary>Its height, pt.</summary>
    public required double Height { get; init; }

    /// <summary>Draws it with its top left corner there.</summary>
    public required Action<double, double> Draw { get; init; }

    /// <summary>Space above it; none at the top of a page.</summary>
    public double Before { get; set; }

    /// <summary>Whether the next slab must be on the same page.</summary>
    public bool KeepsWithNext { get; set; }

    /// <summary>Whether it begins a page.</summary>
    public bool BeginsPage { get; set; }

    /// <summary>Height of what should stay on one page from here on; zero for nothing in particular.</summary>
    public double Together { get; set; }

    /// <summary>
    /// Draws it over a height, down to the foot of the page: such a slab takes what room is left and is left out where
    /// that is less than its height.
    /// </summary>
    public Action<double, double, double>? Fill { get; init; }

    /// <summary>Drawn above it where it begins a page: the head of a table that goes on.</summary>
    public RunningHead? Head { get; init; }

    public static double HeightOf(IReadOnlyList<Slab> slabs) =>
        slabs.Select((s, i) => s.Height + (i == 0 ? 0 : s.Before)).Sum();

    public static void DrawAll(IReadOnlyList<Slab> slabs, double x, double y)
    {
        for (var i = 0; i < slabs.Count; i++)
        {
            y += i == 0 ? 0 : slabs[i].Before;
            slabs[i].Draw(x, y);
            y += slabs[i].Height;
        }
    }
}

/// <summary>A head repeated on pages on which something goes on.</summary>
/// <param name="Height">Its height, pt.</param>
/// <param name="Draw">Draws it with its top left corner there.</param>
internal sealed record RunningHead(double Height, Action<double, double> Draw);
