using System.Globalization;

namespace Practice.Benchmarks;

/// <summary>Measured values and their quantiles, as cells of a table.</summary>
internal sealed class Figures
{
    private readonly List<double> _values = [];

    public void Add(double value) => _values.Add(value);

    public string Row(string name, string format = "0.00") =>
        $"| {name} | {_values.Count} | {At(0.5, format)} | {At(0.95, format)} | {At(1, format)} |";

    /// <summary>How many do not exceed a value.</summary>
    public int AtMost(double value) => _values.Count(v => v <= value);

    public static string Head =>
        """
            | measure | n | median | p95 | worst |
            |---|---|---|---|---|
            """;

    // the smallest value that so many do not exceed
    private string At(double share, string format)
    {
        if (_values.Count == 0)
            return "-";
        var sorted = _values.Order().ToList();
        var place = Math.Max(0, (int)Math.Ceiling(share * sorted.Count) - 1);
        return sorted[place].ToString(format, CultureInfo.InvariantCulture);
    }
}
