namespace Practice.Domain.Screening.Questions;

/// <summary>Blood pressure, heart and kidneys.</summary>
public static class HeartAndKidneys
{
    /// <summary>Normal blood pressure, as far as known.</summary>
    public static Choice NormalPressure { get; } = new("no", "No");

    /// <summary>High, and treated to the doctor's satisfaction.</summary>
    public static Choice ControlledPressure { get; } =
        new("controlled", "Yes, and my doctor says it is under control");

    /// <summary>High, and not under control or not known to be.</summary>
    public static Choice UncontrolledPressure { get; } =
        new("uncontrolled", "Yes, and it is not under control or I do not know");

    /// <summary>High blood pressure.</summary>
    public static Question BloodPressure { get; } =
        Question.OneOf(
            "blood-pressure",
            "Has a doctor told you that you have high blood pressure?",
            [NormalPressure, ControlledPressure, UncontrolledPressure]
        );

    /// <summary>Heart failure.</summary>
    public static Choice HeartFailure { get; } = new("heart-failure", "Heart failure");

    /// <summary>A limit on drinking set by a doctor.</summary>
    public static Choice FluidLimit { get; } =
        new("fluid-limit", "A doctor has limited how much I may drink");

    /// <summary>Cardiomyopathy.</summary>
    public static Choice Cardiomyopathy { get; } =
        new("cardiomyopathy", "A disease of the heart muscle (cardiomyopathy)");

    /// <summary>Heart attack, operation or the like not long ago.</summary>
    public static Choice RecentEvent { get; } =
        new("recent-event", "A heart attack, heart operation or stroke in the past year");

    /// <summary>Disturbed rhythm.</summary>
    public static Choice Arrhythmia { get; } =
        new("arrhythmia", "A disturbed heart rhythm (arrhythmia)");

    /// <summary>Fainting without known cause.</summary>
    public static Choice Fainting { get; } =
        new("fainting", "Fainting or near-fainting that nobody has explained");

    /// <summary>Chest pain without known cause.</summary>
    public static Choice ChestPain { get; } =
        new("chest-pain", "Chest pain that nobody has explained");

    /// <summary>Another heart disease.</summary>
    public static Choice OtherHeart { get; } =
        new("other", "Another heart condition, or a heart condition in the past");

    /// <summary>Heart conditions and their warning signs.</summary>
    public static Question Heart { get; } =
        Question.AnyOf(
            "heart",
            "Do any of these apply to you?",
            [
                HeartFailure,
                FluidLimit,
                Cardiomyopathy,
                RecentEvent,
                Arrhythmia,
                Fainting,
                ChestPain,
                OtherHeart,
            ]
        );

    /// <summary>Chronic kidney disease.</summary>
    public static Question Kidneys { get; } =
        Question.YesNo("kidney-disease", "Do you have a kidney disease?") with
        {
            Help =
                "Also if you have a single kidney, a transplant or dialysis. Kidney stones alone: no.",
        };

    /// <summary>The section.</summary>
    public static QuestionSection Section { get; } =
        new("heart-and-kidneys", "Heart and kidneys", [BloodPressure, Heart, Kidneys]);
}
