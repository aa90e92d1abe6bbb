using Practice.Domain.Evidence;
using Practice.Domain.Screening.Questions;

namespace Practice.Domain.Screening.Rules;

/// <summary>
/// Ketoacidosis with near-normal glucose has followed long exercise; experts advise to stop the medicine beforehand.
/// </summary>
internal sealed class Sglt2InhibitorsNeedThePrescriber : ScreeningRule
{
    public override Source Source => Sources.Sglt2Statement;

    public override bool When(ScreenedCase screened) =>
        screened.TakesAnyOf(Medicines.Sglt2Inhibitor);

    public override Findings Then(ScreenedCase screened) =>
        new()
        {
            Holds =
            [
                Hold(
                    "sglt2-inhibitor",
                    "SGLT2 inhibitor",
                    "Ketoacidosis with near-normal glucose can follow long exercise. Expert advice is to "
                        + "stop at least 24 hours before a marathon. Needed: the prescriber's decision on when to "
                        + "stop and start again."
                ),
            ],
            Cautions =
            [
                TellClient(
                    "sglt2-inhibitor",
                    "Pause your diabetes or heart medicine before the race only in the way your prescriber "
                        + "has told you."
                ),
            ],
        };
}
