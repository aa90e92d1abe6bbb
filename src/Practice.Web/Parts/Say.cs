using System.Globalization;
using NodaTime;
using NodaTime.Text;
using Practice.Domain.Evidence;
using Practice.Domain.Foods;
using Practice.Domain.Quantities;

namespace Practice.Web.Parts;

/// <summary>Days, sittings and numbers as the screens say them, the same on every machine.</summary>
public static class Say
{
    private static readonly CultureInfo English = CultureInfo.InvariantCulture;

    private static readonly LocalDatePattern DayPattern = LocalDatePattern.Create(
        "dddd d MMMM",
        English
    );
    private static readonly LocalDatePattern ShortPattern = LocalDatePattern.Create(
        "ddd d MMM",
        English
    );
    private static readonly LocalDatePattern DayAndYear = LocalDatePattern.Create(
        "d MMM yyyy",
        English
    );
    private static readonly LocalTimePattern Clock = LocalTimePattern.CreateWithInvariantCulture(
        "HH:mm"
    );

    /// <summary>Saturday 4 October</summary>
    public static string Day(LocalDate day) => DayPattern.Format(day);

    /// <summary>Sat 4 Oct</summary>
    public static string ShortDay(LocalDate day) => ShortPattern.Format(day);

    /// <summary>4 Oct 2026</summary>
    public static string WithYear(LocalDate day) => DayAndYear.Format(day);

    /// <summary>09:30</summary>
    public static string Time(LocalTime time) => Clock.Format(time);

    /// <summary>Sat 4 Oct, 09:30</summary>
    public static string Moment(LocalDateTime at) => $"{ShortDay(at.Date)}, {Time(at.TimeOfDay)}";

    /// <summary>3 h 45 min</summary>
    public static string Span(Duration span) =>
        span.Minutes == 0
            ? $"{(int)span.TotalHours} h"
            : $"{(int)span.TotalHours} h {span.Minutes:00} min";

    /// <summary>A number with that many decimals, rounded as everywhere.</summary>
    public static string Number(decimal value, int decimals = 0) => Rounding.Shown(value, decimals);

    /// <summary>42.2 km, held together</summary>
    public static string Distance(decimal kilometres) => Rounding.Distance(kilometres);

    /// <summary>12 portions, 1 portion</summary>
    public static string Count(int count, string one, string several) =>
        $"{count.ToString(CultureInfo.InvariantCulture)} {(count == 1 ? one : several)}";

    public static string Name(OccasionKind kind) =>
        kind switch
        {
            OccasionKind.Breakfast => "Breakfast",
            OccasionKind.MorningSnack => "Morning snack",
            OccasionKind.Lunch => "Lunch",
            OccasionKind.AfternoonSnack => "Afternoon snack",
            OccasionKind.LateAfternoonSnack => "Late afternoon snack",
            OccasionKind.EveningMeal => "Evening meal",
            OccasionKind.Supper => "Supper",
            _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, null),
        };

    /// <summary>Tree nuts, for <c>TreeNuts</c>: names of the trade are its words already.</summary>
    public static string Words<T>(T name)
        where T : struct, Enum
    {
        var words = new System.Text.StringBuilder();
        foreach (var letter in name.ToString())
            if (char.IsUpper(letter) && words.Length > 0)
                words.Append(' ').Append(char.ToLowerInvariant(letter));
            else
                words.Append(letter);
        return words.ToString();
    }

    /// <summary>How far a source can be leant on.</summary>
    public static string Name(Provenance provenance) =>
        provenance switch
        {
            Provenance.Published => "Published",
            Provenance.FromMemory => "From memory: check before relying on it",
            Provenance.CommonPractice => "Common practice, no source claimed",
            Provenance.OwnRule => "A rule of this tool, yours to change",
            _ => throw new ArgumentOutOfRangeException(nameof(provenance), provenance, null),
        };

    /// <summary>12 days to go, Tomorrow, Today, 3 days ago</summary>
    public static string DaysAway(int days) =>
        days switch
        {
            0 => "Today",
            1 => "Tomorrow",
            -1 => "Yesterday",
            < 0 => $"{Count(-days, "day", "days")} ago",
            _ => $"in {Count(days, "day", "days")}",
        };
}
