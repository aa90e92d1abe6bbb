using Practice.Domain.Quantities;
using Practice.Domain.Screening;
using Practice.Domain.Targets;

namespace Practice.Domain.Plans;

/// <summary>The plain words of a plan: how to drink and salt, and why it looks as it does.</summary>
public static class PlanAdvice
{
    /// <summary>
    /// Drinking and salting on loading days. Never beyond thirst plus a modest plan; no word on salt where screening
    /// switches it off. Holds no number with a unit, so that every reader may have it.
    /// </summary>
    public static FluidAdvice Fluids(Adjustments adjustments)
    {
        ArgumentNullException.ThrowIfNull(adjustments);
        var drinking = adjustments.ThirstOnly
            ? "Drink when you are thirsty, and stop when you are not. Do not drink to a schedule."
            : "Drink to thirst, and have one or two small glasses more than usual spread over the day: stored "
                + "carbohydrate takes water with it. Pale yellow urine is right; clear water all day is too much.";
        var salting = adjustments.NoAddedSodium
            ? null
            : "Salt your food as you normally would, perhaps a pinch more. Salt does not protect against drinking too much.";
        return new FluidAdvice(drinking, salting);
    }

    /// <summary>Why this plan, in a paragraph for the client.</summary>
    /// <param name="header">Who and what for.</param>
    /// <param name="targets">What the plan is held against.</param>
    /// <param name="adjustments">What screening changed; a number-free reader gets words only.</param>
    public static string Why(PlanHeader header, LoadingTargets targets, Adjustments adjustments)
    {
        ArgumentNullException.ThrowIfNull(header);
        ArgumentNullException.ThrowIfNull(targets);
        ArgumentNullException.ThrowIfNull(adjustments);
        var purpose = targets.Loads
            ? "Your muscles store the fuel you race on as carbohydrate. In these days you fill that store, so that it "
                + $"lasts further into {header.RaceName}."
            : $"{header.RaceName} is short enough for the fuel you carry anyway. You top it up on the day before and "
                + "need no more than that.";
        var amount = adjustments.NumberFree
            ? "Eat what is written here in the order of the day: more early, less in the evening, so that you sleep well."
            : $"A full day brings {Rounding.Shown(targets.CarbohydratePerDay.Aim ?? 0, 0)} g of carbohydrate, "
                + $"{Rounding.Shown(targets.CarbohydrateRate.Aim ?? 0, 1)} g for each kilogram of you: "
                + "more early, less in the evening.";
        var weight =
            targets.Loads && !adjustments.NoWeighing && !adjustments.NumberFree
                ? $" Expect to weigh about {TargetWords.Band(targets.BodyMassGain)} more: it is fuel and water, not fat."
            : targets.Loads
                ? " You may feel a little heavier and fuller: it is fuel and water, ready for race day."
            : "";
        var fibre = adjustments.NoLowResidue
            ? ""
            : " Foods are soft and low in fibre on purpose, which keeps the gut quiet; go back to your usual fibre after the race.";
        return $"{purpose} {amount}{weight}{fibre}";
    }
}
