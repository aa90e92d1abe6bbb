using Practice.Domain.Foods;
using Practice.Domain.Quantities;
using Practice.Domain.Rehearsals;
using Practice.Service.Portal;

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

    /// <summary>The international pound of 1959, kg.</summary>
    private const decimal PoundKg = 0.45359237m;

    /// <summary>The unit of the reader's scales.</summary>
    public static string MassUnit(PhoneFile phone) => InPounds(phone) ? "lb" : "kg";

    public static Feedback Read(PageAnswers answers, Feedback feedback, PhoneFile phone) =>
        feedback with
        {
            FluidMl = answers.Number(Glasses, 0, 40) * GlassMl,
            MassBefore = Mass(answers, MassBefore, phone),
            MassAfter = Mass(answers, MassAfter, phone),
            UrineColour = (int?)answers.Number(Urine, 1, 8),
            SleepHours = answers.Number(Sleep, 0, 24),
            IllOrPeriod = answers.Ticked(Ill),
        };

    private static BodyMass? Mass(PageAnswers answers, string field, PhoneFile phone)
    {
        var unit = InPounds(phone) ? PoundKg : 1;
        // whole pounds that lie inside the range, so that what is named is taken
        var (low, high) = (
            Math.Ceiling(BodyMass.MinimumKg / unit),
            Math.Floor(BodyMass.MaximumKg / unit)
        );
        return phone.MayWeigh && answers.Number(field, low, high) is { } typed
            ? BodyMass.OfKilograms(Math.Round(typed * unit, 2))
            : null;
    }

    private static bool InPounds(PhoneFile phone) => phone.Units == HouseholdUnits.UsCustomary;

    private static decimal? Shown(BodyMass? mass, PhoneFile phone) =>
        InPounds(phone) && mass is { } known
            ? Math.Round(known.Kilograms / PoundKg, 1)
            : mass?.Kilograms;

    public static void Write(PageAnswers answers, Feedback feedback, PhoneFile phone)
    {
        answers.Number(Glasses, feedback.FluidMl / GlassMl);
        answers.Number(MassBefore, Shown(feedback.MassBefore, phone));
        answers.Number(MassAfter, Shown(feedback.MassAfter, phone));
        answers.Number(Urine, feedback.UrineColour);
        answers.Number(Sleep, feedback.SleepHours);
        answers.Tick(Ill, feedback.IllOrPeriod);
    }
}
