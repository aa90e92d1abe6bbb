using System.Globalization;

namespace Practice.Domain.Plans;

/// <summary>Counts as a kitchen says them: <c>2½</c> in figures, <c>two and a half</c> in words.</summary>
public static class KitchenNumber
{
    private static readonly (decimal Value, string Figure, string Words)[] Fractions =
    [
        (0.25m, "¼", "a quarter"),
        (1m / 3m, "⅓", "a third"),
        (0.5m, "½", "a half"),
        (2m / 3m, "⅔", "two thirds"),
        (0.75m, "¾", "three quarters"),
    ];

    private static readonly string[] Ones =
    [
        .. "zero one two three four five six seven eight nine ten eleven twelve".Split(' '),
        .. "thirteen fourteen fifteen sixteen seventeen eighteen nineteen".Split(' '),
    ];

    private static readonly string[] Tens =
    [
        .. "- - twenty thirty forty fifty sixty seventy eighty ninety".Split(' '),
    ];

    /// <summary><c>½</c>, <c>3</c>, <c>2½</c>; a count that is no kitchen fraction keeps two decimals.</summary>
    public static string Figures(decimal count)
    {
        var (whole, fraction) = Split(count);
        if (fraction is null)
            return count.ToString("0.##", CultureInfo.InvariantCulture);
        var figure = fraction.Value.Figure;
        return whole == 0 ? figure : whole.ToString(CultureInfo.InvariantCulture) + figure;
    }

    /// <summary><c>half a bagel</c>, <c>a bagel</c>, <c>two and a half bagels</c>.</summary>
    public static string Phrase(decimal count, string one, string several)
    {
        var (whole, fraction) = Split(count);
        if (count == 1)
            return WithArticle(one);
        if (fraction is not { Value: > 0 } part)
            return $"{Words(whole)} {several}";
        if (whole > 0)
            return $"{Words(whole)} and {part.Words} {several}";
        return part.Value == 0.5m
            ? $"half {WithArticle(one)}"
            : $"{part.Words} of {WithArticle(one)}";
    }

    /// <summary>Whether one of it or several is meant: <c>½ bagel</c>, <c>1 bagel</c>, <c>1½ bagels</c>.</summary>
    public static bool IsPlural(decimal count) => count > 1;

    private static (int Whole, (decimal Value, string Figure, string Words)? Fraction) Split(
        decimal count
    )
    {
        var whole = (int)decimal.Truncate(count);
        var rest = count - whole;
        if (rest < 0.01m)
            return (whole, null);
        var near = Fractions.MinBy(f => Math.Abs(f.Value - rest));
        return Math.Abs(near.Value - rest) < 0.01m ? (whole, near) : (whole, null);
    }

    /// <summary>A whole number from 0 to 99 in words; <c>many</c> above.</summary>
    public static string Words(int number) =>
        number switch
        {
            < 20 => Ones[number],
            < 100 when number % 10 == 0 => Tens[number / 10],
            < 100 => $"{Tens[number / 10]}-{Ones[number % 10]}",
            _ => "many",
        };

    private static string WithArticle(string noun) =>
        ("aeiou".Contains(char.ToLowerInvariant(noun[0]), StringComparison.Ordinal) ? "an " : "a ")
        + noun;
}
