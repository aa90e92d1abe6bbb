namespace Practice.Domain.Screening.Questions;

/// <summary>Blood sugar. The medicines that matter here are asked in <see cref="Medicines"/>.</summary>
public static class Diabetes
{
    /// <summary>No diabetes.</summary>
    public static Choice No { get; } = new("no", "No, never");

    /// <summary>Type 1.</summary>
    public static Choice Type1 { get; } = new("type-1", "Yes, type 1");

    /// <summary>Type 2.</summary>
    public static Choice Type2 { get; } = new("type-2", "Yes, type 2");

    /// <summary>Another kind, or the client cannot say which.</summary>
    public static Choice OtherOrUnsure { get; } =
        new("other-or-unsure", "Yes, another type, or I am not sure which");

    /// <summary>Raised blood sugar short of diabetes.</summary>
    public static Choice Prediabetes { get; } = new("prediabetes", "Prediabetes");

    /// <summary>Diabetes in an earlier pregnancy, since gone.</summary>
    public static Choice PastGestational { get; } =
        new("past-gestational", "Only in a past pregnancy");

    /// <summary>Which kind of diabetes.</summary>
    public static Question Kind { get; } =
        Question.OneOf(
            "diabetes",
            "Do you have diabetes, or have you had it?",
            [No, Type1, Type2, OtherOrUnsure, Prediabetes, PastGestational]
        ) with
        {
            Help = "Prediabetes means that a doctor found your blood sugar higher than usual.",
        };

    /// <summary>The section.</summary>
    public static QuestionSection Section { get; } = new("diabetes", "Blood sugar", [Kind]);
}
