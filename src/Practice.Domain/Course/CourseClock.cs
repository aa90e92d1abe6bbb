using System.Globalization;
using NodaTime;
using NodaTime.Text;

namespace Practice.Domain.Course;

/// <summary>Times and places of a race in words, the same in every culture.</summary>
public static class CourseClock
{
    private static readonly DurationPattern Elapsed = DurationPattern.CreateWithInvariantCulture(
        "H:mm"
    );
    private static readonly DurationPattern Exact = DurationPattern.CreateWithInvariantCulture(
        "H:mm:ss"
    );

    /// <summary>Time since the start to the minute: <c>1:25</c>.</summary>
    public static string Words(Duration elapsed) => Elapsed.Format(ToTheMinute(elapsed));

    /// <summary>Time since the start to the second: <c>1:25:07</c>.</summary>
    public static string ToTheSecond(Duration elapsed) =>
        Exact.Format(Duration.FromSeconds(Math.Round(elapsed.TotalSeconds)));

    /// <summary>Time since the start, rounded to the minute: screen, paper and phone must all say the same clock.</summary>
    public static Duration ToTheMinute(Duration elapsed) =>
        Duration.FromMinutes(Math.Round(elapsed.TotalMinutes));

    /// <summary>By the clock of the race, to the minute.</summary>
    public static LocalTime At(LocalDateTime start, Duration elapsed) =>
        start.PlusMinutes((long)ToTheMinute(elapsed).TotalMinutes).TimeOfDay;

    /// <summary>A place: <c>12.5 km</c>.</summary>
    public static string Place(decimal km) =>
        string.Create(CultureInfo.InvariantCulture, $"{km:0.#} km");
}
