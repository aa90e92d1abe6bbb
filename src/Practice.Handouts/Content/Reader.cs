using Practice.Domain.Foods;
using Practice.Domain.Plans;

namespace Practice.Handouts.Content;

/// <summary>For whom a paper is written.</summary>
/// <param name="IsNumberFree">Whether no number with a unit may be on it.</param>
/// <param name="IsLargePrint">Whether it is set in large type, with fewer columns.</param>
/// <param name="Units">Kitchen words.</param>
/// <param name="Dates">Dates and times.</param>
internal sealed record Reader(
    bool IsNumberFree,
    bool IsLargePrint,
    HouseholdUnits Units,
    PaperDates Dates
)
{
    public static Reader Of(RaceWeekPlan plan, HandoutOptions options) =>
        new(
            plan.NumberFree || options.Variant == HandoutVariant.NumberFree,
            options.Variant == HandoutVariant.LargePrint,
            plan.Units,
            PaperDates.For(options.Language)
        );
}
