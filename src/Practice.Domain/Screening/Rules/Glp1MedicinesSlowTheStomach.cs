using Practice.Domain.Evidence;
using Practice.Domain.Screening.Questions;

namespace Practice.Domain.Screening.Rules;

/// <summary>
/// GLP-1 medicines slow the emptying of the stomach: early fullness, nausea, and often too little eaten.
/// </summary>
internal sealed class Glp1MedicinesSlowTheStomach : ScreeningRule
{
    public override Source Source => Sources.ClinicalKnowledge;

    public override bool When(ScreenedCase screened) => screened.TakesAnyOf(Medicines.Glp1Agonist);

    public override Findings Then(ScreenedCase screened) =>
        new()
        {
            Cautions =
            [
                TellClient(
                    "glp1-small-meals",
                    "You may feel full early: eat small meals more often, drink more of your carbohydrate, "
                        + "and rehearse it before the race."
                ),
                TellPractitioner(
                    "glp1-energy",
                    "Early fullness and nausea make underfuelling likely: check that enough energy is eaten "
                        + "through the week."
                ),
            ],
            // how much smaller is a rule of this tool: no published figure
            Adjustments = new() { OccasionWeightFactor = 0.75m },
        };
}
