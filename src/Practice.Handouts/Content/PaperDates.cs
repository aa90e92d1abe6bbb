using System.Globalization;
using NodaTime;

namespace Practice.Handouts.Content;

/// <summary>Dates and times as the reader writes them; the same on every machine.</summary>
internal sealed record PaperDates(bool IsAmerican)
{
    private static readonly CultureInfo Names = CultureInfo.InvariantCulture;

    public static PaperDates For(string language) =>
        new(language.StartsWith("en-US", StringComparison.OrdinalIgnoreCase));

    /// <summary><c>Sunday 14 June</c>, <c>Sunday, June 14</c>.</summary>
    public string Day(LocalDate date) =>
        date.ToString(IsAmerican ? "dddd, MMMM d" : "dddd d MMMM", Names);

    /// <summary><c>Sun 14 Jun</c>, <c>Sun, Jun 14</c>.</summary>
    public string ShortDay(LocalDate date) =>
        date.ToString(IsAmerican ? "ddd, MMM d" : "ddd d MMM", Names);

    /// <summary><c>14 June 2026</c>, <c>June 14, 2026</c>.</summary>
    public string Date(LocalDate date) =>
        date.ToString(IsAmerican ? "MMMM d, yyyy" : "d MMMM yyyy", Names);

    /// <summary><c>Sunday 14 June 2026</c>, <c>Sunday, June 14, 2026</c>.</summary>
    public string Full(LocalDate date) =>
        date.ToString(IsAmerican ? "dddd, MMMM d, yyyy" : "dddd d MMMM yyyy", Names);

    /// <summary><c>08:30</c>, <c>8:30 AM</c>.</summary>
    public string Time(LocalTime time) =>
        time.ToString(IsAmerican ? "h:mm tt" : "HH:mm", Names).Replace(' ', '\u00A0');
}
