using System.ComponentModel.DataAnnotations;
using System.Globalization;
using NodaTime;

namespace Practice.Web.Features.Clients.Details;

/// <summary>A time on the course as people type it: <c>1:41:00</c>, or <c>41:20</c> for minutes and seconds.</summary>
[AttributeUsage(AttributeTargets.Property)]
public sealed class RaceTimeAttribute : ValidationAttribute
{
    public RaceTimeAttribute()
        : base("Type it as hours:minutes:seconds, such as 1:41:00.") { }

    public override bool IsValid(object? value) =>
        value is null or "" || (value is string text && Read(text) is not null);

    /// <summary>The time; null where the text is none.</summary>
    public static Duration? Read(string? text)
    {
        var parts = (text ?? "").Trim().Split(':');
        if (
            parts.Length is < 2 or > 3
            || !parts.All(p =>
                p.Length is 1 or 2
                && int.TryParse(p, NumberStyles.None, CultureInfo.InvariantCulture, out _)
            )
        )
            return null;
        var numbers = parts.Select(p => int.Parse(p, CultureInfo.InvariantCulture)).ToArray();
        if (numbers[1..].Any(n => n > 59))
            return null;
        var seconds = numbers.Aggregate(0, (sum, n) => sum * 60 + n);
        return seconds == 0 ? null : Duration.FromSeconds(seconds);
    }

    /// <summary>A time as it would be typed.</summary>
    public static string Write(Duration time) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"{(int)time.TotalHours}:{time.Minutes:00}:{time.Seconds:00}"
        );
}
