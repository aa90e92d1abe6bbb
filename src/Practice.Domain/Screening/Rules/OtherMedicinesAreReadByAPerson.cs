using Practice.Domain.Evidence;
using Practice.Domain.Screening.Questions;

namespace Practice.Domain.Screening.Rules;

/// <summary>
/// A medicine that is not on the list is looked up by the practitioner.
/// </summary>
internal sealed class OtherMedicinesAreReadByAPerson : ScreeningRule
{
    public override Source Source => Sources.DieteticPractice;

    public override bool When(ScreenedCase screened) => screened.Answers.Has(Medicines.Others);

    public override Findings Then(ScreenedCase screened) =>
        new()
        {
            Cautions =
            [
                TellPractitioner(
                    "other-medicines",
                    $"Not on the list, to be looked up: {screened.Answers.WordsOn(Medicines.Others)}."
                ),
            ],
        };
}
