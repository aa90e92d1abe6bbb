using System.Globalization;
using Practice.Domain.Foods;
using Practice.Domain.Plans;

namespace Practice.Planner.Checking;

/// <summary>Says which limit is missed and by how much, in words a practitioner would use.</summary>
internal sealed class LimitWords(PlanDay day)
{
    /// <summary>The shortfalls of one value against its bounds; none when it lies between them.</summary>
    /// <param name="kind">What is held.</param>
    /// <param name="occasion">The sitting; null for the day.</param>
    /// <param name="value">What the menu brings.</param>
    /// <param name="low">Lower bound.</param>
    /// <param name="high">Upper bound.</param>
    /// <param name="unseen">A miss below this would not show in print.</param>
    public IEnumerable<Shortfall> Misses(
        LimitKind kind,
        OccasionKind? occasion,
        decimal value,
        decimal? low,
        decimal? high,
        decimal unseen
    )
    {
        if (low is { } least && value < least - unseen)
            yield return Miss(least - value, $"the least is {Amount(kind, least)}");
        if (high is { } most && value > most + unseen)
            yield return Miss(value - most, $"the most is {Amount(kind, most)}");

        Shortfall Miss(decimal amount, string bound) =>
            new(
                kind,
                day.Date,
                occasion,
                amount,
                $"{NameOf(kind)} {When(occasion)} is {Amount(kind, value)}; {bound}"
            );
    }

    private string When(OccasionKind? occasion) =>
        occasion is { } kind
            ? $"at {NameOf(kind)} on {day.Date.DayOfWeek}"
            : $"on {day.Date.DayOfWeek}";

    public static string NameOf(OccasionKind kind) =>
        kind switch
        {
            OccasionKind.Breakfast => "breakfast",
            OccasionKind.MorningSnack => "the morning snack",
            OccasionKind.Lunch => "lunch",
            OccasionKind.AfternoonSnack => "the afternoon snack",
            OccasionKind.LateAfternoonSnack => "the late-afternoon snack",
            OccasionKind.EveningMeal => "the evening meal",
            _ => "supper",
        };

    public static string NameOf(LimitKind kind) =>
        kind switch
        {
            LimitKind.DayCarbohydrate or LimitKind.OccasionCarbohydrate => "Carbohydrate",
            LimitKind.ProteinFloor or LimitKind.ProteinCeiling => "Protein",
            LimitKind.DrinksShare => "The share of carbohydrate drunk",
            LimitKind.OccasionWeight => "Weight of food and drink",
            LimitKind.SugaryShare => "The share from sugary foods",
            LimitKind.MealSense => "Meal sense",
            _ => kind.ToString(),
        };

    /// <summary>The limit in the middle of a sentence about a whole day.</summary>
    public static string InASentence(LimitKind kind) =>
        kind switch
        {
            LimitKind.DayCarbohydrate => "the day's carbohydrate",
            LimitKind.OccasionCarbohydrate => "the carbohydrate of each sitting",
            LimitKind.ProteinFloor => "the least protein",
            LimitKind.ProteinCeiling => "the most protein",
            _ => NameOf(kind).ToLowerInvariant(),
        };

    public static string Amount(LimitKind kind, decimal value) =>
        kind switch
        {
            LimitKind.DrinksShare or LimitKind.SugaryShare => Text(value, "0") + " %",
            LimitKind.Sodium => Text(value, "0") + " mg",
            LimitKind.OccasionWeight => Text(value, "0") + " g",
            LimitKind.DayCarbohydrate or LimitKind.OccasionCarbohydrate => Text(value, "0") + " g",
            _ => Text(value, "0.#") + " g",
        };

    private static string Text(decimal value, string format) =>
        value.ToString(format, CultureInfo.InvariantCulture);
}
