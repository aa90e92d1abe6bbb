using NodaTime;
using Practice.Domain.Foods;
using Practice.Domain.Plans;
using Practice.Domain.Rehearsals;
using Practice.Web.Parts;

namespace Practice.Web.Features.Portal.Pages;

/// <summary>What the phone pages say, in the client's words.</summary>
internal static class PhoneSay
{
    /// <summary>Today, Saturday 4 October</summary>
    public static string Day(LocalDate day, LocalDate today) =>
        Period.DaysBetween(today, day) switch
        {
            0 => $"Today, {Say.Day(day)}",
            1 => $"Tomorrow, {Say.Day(day)}",
            _ => Say.Day(day),
        };

    public static string Capital(string words) => char.ToUpperInvariant(words[0]) + words[1..];

    public static string Portion(Portion portion, HouseholdUnits units, bool isNumberFree) =>
        isNumberFree ? PortionWords.NumberFree(portion, units) : PortionWords.Full(portion, units);

    /// <summary>The amount alone, to choose another.</summary>
    public static string Amount(Portion portion, HouseholdUnits units, bool isNumberFree) =>
        isNumberFree
            ? PortionWords.NumberFree(portion, units)
            : PortionWords.Household(portion, units);

    public static string Moment(SymptomMoment moment) =>
        moment switch
        {
            SymptomMoment.Before => "Before the run, while eating the plan",
            SymptomMoment.During => "On the run",
            SymptomMoment.End => "At the end of the run",
            SymptomMoment.TwoHoursAfter => "Two hours later",
            _ => "The day after",
        };

    public static string Standing(RehearsalStatus status) =>
        status switch
        {
            RehearsalStatus.Booked => "To be logged",
            RehearsalStatus.FedBack => "Sent. You can still change it.",
            _ => "Read by your nutritionist",
        };

    /// <summary>The colours of the chart of eight, 1 to 8 (Armstrong 1994; the words are ours).</summary>
    public static IReadOnlyList<string> UrineColours { get; } =
    [
        "almost clear",
        "very pale",
        "pale yellow",
        "yellow",
        "deep yellow",
        "amber",
        "dark amber",
        "brown",
    ];
}
