using Practice.Domain.Quantities;
using Practice.Domain.Rehearsals;

namespace Practice.Web.Features.Portal.Answers;

/// <summary>Drinks, weight, urine, sleep: what is asked of the body beside the gut.</summary>
internal static class BodyAnswers
{
    public const string Glasses = "glasses";
    public const string MassBefore = "mass.before";
    public const string MassAfter = "mass.after";
    public const string Urine = "urine";
    public const string Sleep = "sleep";
    public const string Ill = "ill";

    /// <summary>A glass, ml: common practice, no source; the same as in the words of a portion.</summary>
    public const decimal GlassMl = 250;

    public static Feedback Read(PageAnswers answers, Feedback feedback, bool mayWeigh) =>
        feedback with
        {
            FluidMl = answers.Number(Glasses, 0, 40) * GlassMl,
            MassBefore = mayWeigh ? Mass(answers, MassBefore) : null,
            MassAfter = mayWeigh ? Mass(answers, MassAfter) : null,
            UrineColour = (int?)answers.Number(Urine, 1, 8),
            SleepHours = answers.Number(Sleep, 0, 24),
            IllOrPeriod = answers.Ticked(Ill),
        };

    private static BodyMass? Mass(PageAnswers answers, string field) =>
        answers.Number(field, BodyMass.MinimumKg, BodyMass.MaximumKg) is { } kilograms
            ? BodyMass.OfKilograms(kilograms)
            : null;

    public static void Write(PageAnswers answers, Feedback feedback)
    {
        answers.Number(Glasses, feedback.FluidMl / GlassMl);
        answers.Number(MassBefore, feedback.MassBefore?.Kilograms);
        answers.Number(MassAfter, feedback.MassAfter?.Kilograms);
        answers.Number(Urine, feedback.UrineColour);
        answers.Number(Sleep, feedback.SleepHours);
        answers.Tick(Ill, feedback.IllOrPeriod);
    }
}
