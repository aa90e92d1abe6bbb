using System.Collections.Immutable;
using System.Globalization;
using NodaTime;
using Practice.Domain.Clients;
using Practice.Domain.Evidence;
using Practice.Domain.Screening.Rules;

namespace Practice.Domain.Screening;

/// <summary>
/// Turns answers into holds, cautions and adjustments. The whole set needs the signature of a dietitian and a
/// physician in the country of use before it is relied on.
/// </summary>
public static class ScreeningRules
{
    /// <summary>Key of the hold on a screening with open questions.</summary>
    public const string IncompleteKey = "screening-incomplete";

    /// <summary>Key of the hold on a screening that is too old.</summary>
    public const string ExpiredKey = "screening-expired";

    /// <summary>Every rule. Their order means nothing.</summary>
    internal static ImmutableArray<ScreeningRule> All { get; } =
    [
        new ActiveBowelInflammationNeedsTheSpecialist(),
        new AllergiesAreListed(),
        new AnaphylaxisCallsForAnAutoInjector(),
        new AntiInflammatoriesHarmTheKidneys(),
        new BetaBlockersHideLowGlucose(),
        new BowelInflammationAsksForCare(),
        new BreastfeedingLimitsCaffeine(),
        new CaffeineIsLeftOutForTheHeart(),
        new CaffeineIsLeftOutOnRequest(),
        new CoeliacDiseaseExcludesGluten(),
        new CoeliacDiseaseExcludesOats(),
        new DiureticsShiftSodiumAndPotassium(),
        new EatingDisorderHistoryMeansNoNumbers(),
        new EatingDisorderNeedsItsTeam(),
        new EnergySignsCallForAnAssessment(),
        new ExerciseInducedAnaphylaxisNeedsTheAllergist(),
        new FluidLimitsComeFromThePhysician(),
        new FluvoxamineRulesOutCaffeine(),
        new FructoseMalabsorptionLimitsFructose(),
        new Glp1MedicinesSlowTheStomach(),
        new GutWarningSignsBelongBeforeADoctor(),
        new HeartConditionsNeedThePhysician(),
        new HereditaryFructoseIntoleranceNeedsTheMetabolicTeam(),
        new HighBloodPressureSwitchesSaltOff(),
        new InsulinNeedsTheDiabetesTeam(),
        new InsulinReleasersNeedThePrescriber(),
        new IrritableBowelRulesOutPolyols(),
        new KidneyDiseaseNeedsTheKidneyTeam(),
        new LactoseIntoleranceLimitsLactose(),
        new ListedAllergensAreNeverServed(),
        new LithiumKeepsSaltAndCaffeineSteady(),
        new LongOrLightMeansDrinkToThirst(),
        new LowFodmapAfterRehearsal(),
        new MedicinesTakenAwayFromFood(),
        new MedicinesThatClashWithCaffeine(),
        new MedicinesThatHoldWaterBack(),
        new MedicinesThatSlowCaffeine(),
        new MedicinesThatSlowGutAndSweat(),
        new OpenQuestionsHold(),
        new OrangeLightFeedsTheBodyFirst(),
        new OtherMedicinesAreReadByAPerson(),
        new PhenylketonuriaNeedsTheMetabolicTeam(),
        new PrediabetesAsksForCare(),
        new PregnancyNeedsTheObstetrician(),
        new RedLightHolds(),
        new SevereLactoseIntoleranceExcludesLactose(),
        new Sglt2InhibitorsNeedThePrescriber(),
        new StomaNeedsTheSpecialist(),
        new StomachSurgeryNeedsTheSurgicalDietitian(),
        new SucraseDeficiencyNeedsTheMetabolicTeam(),
        new TheCombinedPillSlowsCaffeine(),
        new Type2DiabetesStartsLower(),
        new UnclearDiabetesNeedsTheDiabetesTeam(),
        new Under18NeedsGuardianAndDietitian(),
        new UnlistedAllergenNeedsAPersonsReading(),
        new WarfarinNeedsSteadyVegetables(),
    ];

    /// <summary>What the answers mean for a client on a day. Pure: the same input, the same outcome.</summary>
    /// <param name="answers">What the client answered.</param>
    /// <param name="client">The client: age, body mass and allergies count too.</param>
    /// <param name="today">The day.</param>
    /// <param name="expectedFinish">How long the race is expected to take; null when no race is in view.</param>
    public static ScreeningOutcome Evaluate(
        ScreeningAnswers answers,
        Client client,
        LocalDate today,
        Duration? expectedFinish = null
    )
    {
        ArgumentNullException.ThrowIfNull(answers);
        ArgumentNullException.ThrowIfNull(client);
        return Evaluate(All, new ScreenedCase(answers, client, today, expectedFinish));
    }

    /// <summary>The outcome of given rules, whatever their order.</summary>
    internal static ScreeningOutcome Evaluate(
        IEnumerable<ScreeningRule> rules,
        ScreenedCase screened
    )
    {
        var findings = rules
            .Where(rule => rule.When(screened))
            .Select(rule => rule.Then(screened))
            .ToList();
        return new ScreeningOutcome(
            [
                .. findings
                    .SelectMany(f => f.Holds)
                    .DistinctBy(hold => hold.Key)
                    .OrderBy(hold => hold.Key, StringComparer.Ordinal),
            ],
            [
                .. findings
                    .SelectMany(f => f.Cautions)
                    .DistinctBy(caution => caution.Key)
                    .OrderBy(caution => caution.Key, StringComparer.Ordinal),
                .. GeneralCautions.All,
            ],
            findings.Aggregate(Adjustments.None, (all, f) => all.And(f.Adjustments))
        );
    }

    /// <summary>The hold on a screening that is too old. Only answering again lifts it.</summary>
    internal static Hold Expired(LocalDate takenOn) =>
        new(
            ExpiredKey,
            "Screening is out of date",
            $"The health questions were last gone through on "
                + $"{takenOn.ToString("d MMMM yyyy", CultureInfo.InvariantCulture)}. "
                + "Go through them again with the client: they count for six months.",
            Sources.DieteticPractice,
            LiftedBy.Answers
        );
}
