using System.Globalization;
using NodaTime;
using Practice.Domain.Quantities;

namespace Practice.Domain.Rehearsals;

/// <summary>What a client told beside meals and symptoms, in short words for the practitioner: screen and report alike.</summary>
public static class ToldInShort
{
    /// <summary>How far and how long the client ran; null where nothing was told of a run.</summary>
    public static string? Run(Feedback feedback)
    {
        ArgumentNullException.ThrowIfNull(feedback);
        return feedback.Run switch
        {
            { DistanceKm: { } km, Time: { } time } => $"{Rounding.Distance(km)} in {Span(time)}",
            { Time: { } time } => Span(time),
            { DistanceKm: { } km } => Rounding.Distance(km),
            _ => null,
        };
    }

    /// <summary>What was taken, drunk, weighed and slept; only what was told.</summary>
    /// <param name="feedback">What the client told.</param>
    /// <param name="massAllowed">Whether body mass may be spoken of.</param>
    public static IEnumerable<string> Facts(Feedback feedback, bool massAllowed)
    {
        ArgumentNullException.ThrowIfNull(feedback);
        var run = feedback.Run;
        return new[]
        {
            run?.CarbohydrateGPerHour is { } rate ? $"{Whole(rate)}\u00A0g/h" : null,
            run?.FluidMl is { } ml ? $"{Whole(ml)}\u00A0ml drunk on the run" : null,
            run?.AtRaceEffort is { } hard && hard > Duration.Zero
                ? $"{Span(hard)} at race effort"
                : null,
            run?.CaffeineMg is { } caffeine ? $"{Whole(caffeine)}\u00A0mg caffeine" : null,
            run?.WetBulbGlobeC is { } heat ? $"heat stress about {Whole(heat)}\u00A0°C" : null,
            massAllowed && feedback.MassLoss is { } loss
                ? $"{One(loss * 100)}\u00A0% of body mass lost"
                : null,
            feedback.BreakfastPart is { } part
                ? $"{Whole(part * 100)}\u00A0% of the race breakfast"
                : null,
            feedback.FluidMl is { } beside ? $"{Whole(beside)}\u00A0ml beside the plan" : null,
            feedback.SleepHours is { } hours ? $"{One(hours)}\u00A0h of sleep" : null,
            feedback.UrineColour is { } colour ? $"urine {Whole(colour)} of 8" : null,
            feedback.IllOrPeriod ? "ill, or period-related symptoms" : null,
        }.OfType<string>();
    }

    private static string Span(Duration span)
    {
        var minutes = (int)Math.Round(span.TotalMinutes);
        return (minutes / 60, minutes % 60) switch
        {
            (0, var rest) => $"{Whole(rest)}\u00A0min",
            (var hours, 0) => $"{Whole(hours)}\u00A0h",
            var (hours, rest) =>
                $"{Whole(hours)}\u00A0h\u00A0{rest.ToString("00", CultureInfo.InvariantCulture)}\u00A0min",
        };
    }

    private static string One(decimal value) => Rounding.Shown(value, value % 1 == 0 ? 0 : 1);

    private static string Whole(decimal value) => Rounding.Shown(value, 0);
}
