namespace Practice.Domain.Screening.Questions;

/// <summary>Stomach and bowel.</summary>
public static class Gut
{
    /// <summary>Irritable bowel syndrome.</summary>
    public static Question IrritableBowel { get; } =
        Question.YesNo("ibs", "Do you have irritable bowel syndrome (IBS)?");

    /// <summary>Whether low FODMAP was rehearsed and suited.</summary>
    public static Question LowFodmapSuits { get; } =
        Question.YesNo(
            "low-fodmap-rehearsed",
            "Have you eaten a low-FODMAP diet before long training, and did it suit you?"
        ) with
        {
            Help = "Low FODMAP means few of the sugars that ferment in the gut.",
            After = new FollowUp(IrritableBowel, [Choice.Yes]),
        };

    /// <summary>No inflammatory bowel disease.</summary>
    public static Choice NoInflammation { get; } = new("no", "No");

    /// <summary>In remission.</summary>
    public static Choice InRemission { get; } = new("remission", "Yes, quiet at present");

    /// <summary>Active.</summary>
    public static Choice Active { get; } = new("active", "Yes, active or I am not sure");

    /// <summary>Inflammatory bowel disease.</summary>
    public static Question InflammatoryBowel { get; } =
        Question.OneOf(
            "ibd",
            "Do you have Crohn's disease or ulcerative colitis?",
            [NoInflammation, InRemission, Active]
        );

    /// <summary>Stoma.</summary>
    public static Question Stoma { get; } = Question.YesNo("stoma", "Do you have a stoma?");

    /// <summary>Operations that shrink or bypass the stomach.</summary>
    public static Question StomachSurgery { get; } =
        Question.YesNo(
            "stomach-surgery",
            "Have you had an operation on your stomach, such as a bypass, a sleeve or its removal?"
        );

    /// <summary>Blood.</summary>
    public static Choice Blood { get; } = new("blood", "Blood in the stool");

    /// <summary>Weight lost without trying.</summary>
    public static Choice WeightLoss { get; } = new("weight-loss", "Weight lost without trying");

    /// <summary>Symptoms that wake.</summary>
    public static Choice AtNight { get; } = new("at-night", "Gut trouble that wakes me at night");

    /// <summary>Fever.</summary>
    public static Choice Fever { get; } = new("fever", "Gut trouble with fever");

    /// <summary>Signs that belong before a doctor.</summary>
    public static Question WarningSigns { get; } =
        Question.AnyOf(
            "gut-warning-signs",
            "Do you have any of these at present?",
            [Blood, WeightLoss, AtNight, Fever]
        );

    /// <summary>The section.</summary>
    public static QuestionSection Section { get; } =
        new(
            "gut",
            "Stomach and bowel",
            [IrritableBowel, LowFodmapSuits, InflammatoryBowel, Stoma, StomachSurgery, WarningSigns]
        );
}
