namespace Practice.Web.Parts.Plots;

/// <summary>A point of a line, with its band where it has one.</summary>
/// <param name="X">Place on the level axis.</param>
/// <param name="Middle">The value.</param>
/// <param name="Low">Lower end of the band.</param>
/// <param name="High">Upper end of the band.</param>
/// <param name="Name">What the point says when asked.</param>
public sealed record PlotPoint(double X, double Middle, double Low, double High, string Name = "")
{
    /// <summary>A point without a band.</summary>
    public static PlotPoint Measured(double x, double value, string name) =>
        new(x, value, value, value, name);
}

/// <summary>A named place on the level axis.</summary>
/// <param name="At">Where.</param>
/// <param name="Name">What it is called.</param>
public sealed record PlotMark(double At, string Name);
