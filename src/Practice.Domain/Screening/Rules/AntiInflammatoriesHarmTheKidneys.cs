using Practice.Domain.Evidence;
using Practice.Domain.Screening.Questions;

namespace Practice.Domain.Screening.Rules;

/// <summary>
/// Who takes anti-inflammatory painkillers is asked why; the warning itself goes to everybody.
/// </summary>
internal sealed class AntiInflammatoriesHarmTheKidneys : ScreeningRule
{
    public override Source Source => Sources.Lipman2017;

    public override bool When(ScreenedCase screened) => screened.TakesAnyOf(Medicines.Nsaid);

    public override Findings Then(ScreenedCase screened) =>
        new()
        {
            Cautions =
            [
                TellPractitioner(
                    "nsaid",
                    "Takes anti-inflammatory painkillers: ask when and why, and whether the prescriber "
                        + "knows of the race. Kidney injury, gut bleeding and low blood sodium are the concerns."
                ),
            ],
        };
}
