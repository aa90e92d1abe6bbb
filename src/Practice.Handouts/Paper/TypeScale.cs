namespace Practice.Handouts.Paper;

/// <summary>A style of text.</summary>
/// <param name="Face">Cut.</param>
/// <param name="Size">Size, pt.</param>
/// <param name="Leading">Line height as a multiple of the size.</param>
/// <param name="IsFigure">Whether digits stand on a fixed pitch.</param>
internal sealed record TextStyle(
    Face Face,
    double Size,
    double Leading = 1.4,
    bool IsFigure = false
);

/// <summary>The sizes of a paper.</summary>
/// <param name="Factor">How much larger than usual.</param>
internal sealed record TypeScale(double Factor)
{
    public static TypeScale Usual { get; } = new(1);

    /// <summary>Body of 16 pt: common practice for large print, no source.</summary>
    public static TypeScale Large { get; } = new(1.7);

    public bool IsLarge => Factor > 1;

    public TextStyle Body => new(Face.Regular, 9.4 * Factor, 1.45);
    public TextStyle Lead => new(Face.Regular, 10.2 * Factor, 1.5);
    public TextStyle Small => new(Face.Regular, 8 * Factor, 1.4);
    public TextStyle Label => new(Face.SemiBold, 7.6 * Factor, 1.35);
    public TextStyle Cell => new(Face.Regular, 9.2 * Factor, 1.32);
    public TextStyle Heading2 => new(Face.Bold, Gentle(15.5), 1.25);
    public TextStyle Heading3 => new(Face.SemiBold, Gentle(10.4), 1.35);
    public TextStyle Running => new(Face.Regular, Gentle(7.2), 1.4);

    /// <summary>A length that grows with the type.</summary>
    public double Space(double points) => points * Factor;

    /// <summary>Large type need not grow as much as small.</summary>
    public double Gentle(double size) => size * (1 + (Factor - 1) * 0.65);
}
