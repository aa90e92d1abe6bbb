namespace Practice.Domain.Screening.Questions;

/// <summary>Eating disorders and signs of too little energy.</summary>
public static class EatingAndEnergy
{
    /// <summary>Never.</summary>
    public static Choice Never { get; } = new("never", "No, never");

    /// <summary>In the past.</summary>
    public static Choice InThePast { get; } = new("past", "In the past");

    /// <summary>Present.</summary>
    public static Choice AtPresent { get; } = new("present", "Yes, at present");

    /// <summary>Suspected by client, family, coach or practitioner.</summary>
    public static Choice Suspected { get; } =
        new("suspected", "Nobody has said so, but I or somebody near me worries about it");

    /// <summary>Eating disorder, present or past.</summary>
    public static Question EatingDisorder { get; } =
        Question.OneOf(
            "eating-disorder",
            "Do you have an eating disorder, or have you had one?",
            [Never, InThePast, AtPresent, Suspected]
        ) with
        {
            Help =
                "We ask everyone, because it changes how we write the plan. Your answer stays with your "
                + "practitioner.",
        };

    /// <summary>Not assessed.</summary>
    public static Choice NotAssessed { get; } = new("not-assessed", "Not assessed");

    /// <summary>Green light.</summary>
    public static Choice Green { get; } = new("green", "Green");

    /// <summary>Yellow light.</summary>
    public static Choice Yellow { get; } = new("yellow", "Yellow");

    /// <summary>Orange light.</summary>
    public static Choice Orange { get; } = new("orange", "Orange");

    /// <summary>Red light.</summary>
    public static Choice Red { get; } = new("red", "Red");

    /// <summary>The colour a clinician gave. The tool records it and never works one out.</summary>
    public static Question RedsColour { get; } =
        Question.OneOf(
            "reds-colour",
            "Has a clinician assessed you for low energy availability (REDs)? Which colour did she give?",
            [NotAssessed, Green, Yellow, Orange, Red]
        ) with
        {
            Help = "REDs means that the body gets too little energy for the training it does.",
        };

    /// <summary>No first period, or none for a year.</summary>
    public static Choice NoPeriods { get; } =
        new("no-periods", "Periods that never began, or none for a year or longer");

    /// <summary>Missed periods.</summary>
    public static Choice MissedPeriods { get; } =
        new("missed-periods", "Three or more periods in a row that did not come");

    /// <summary>Low hormones on a blood test.</summary>
    public static Choice LowHormones { get; } =
        new("low-hormones", "A blood test with low testosterone or a low thyroid hormone (T3)");

    /// <summary>Stress fracture or bone stress injury.</summary>
    public static Choice BoneStress { get; } =
        new("bone-stress", "A stress fracture or bone stress injury in the past two years");

    /// <summary>Low bone density.</summary>
    public static Choice LowBoneDensity { get; } =
        new("low-bone-density", "A scan with low bone density");

    /// <summary>Growth that slowed.</summary>
    public static Choice SlowGrowth { get; } =
        new("slow-growth", "For those still growing: growth slower than expected");

    /// <summary>Signs that call for an assessment.</summary>
    public static Question EnergySigns { get; } =
        Question.AnyOf(
            "energy-signs",
            "Have you had any of these?",
            [NoPeriods, MissedPeriods, LowHormones, BoneStress, LowBoneDensity, SlowGrowth]
        ) with
        {
            Help = "Leave out periods missed because of pregnancy, menopause or contraception.",
        };

    /// <summary>The section.</summary>
    public static QuestionSection Section { get; } =
        new("eating-and-energy", "Eating and energy", [EatingDisorder, RedsColour, EnergySigns]);
}
