namespace Practice.Domain.Screening.Questions;

/// <summary>Pregnancy and breastfeeding.</summary>
public static class Pregnancy
{
    /// <summary>Neither.</summary>
    public static Choice Neither { get; } = new("no", "No, or it does not apply to me");

    /// <summary>Pregnant, or possibly so.</summary>
    public static Choice Pregnant { get; } = new("pregnant", "Pregnant, or I may be");

    /// <summary>Breastfeeding.</summary>
    public static Choice Breastfeeding { get; } = new("breastfeeding", "Breastfeeding");

    /// <summary>Pregnant or breastfeeding.</summary>
    public static Question Status { get; } =
        Question.OneOf(
            "pregnancy",
            "Are you pregnant or breastfeeding?",
            [Neither, Pregnant, Breastfeeding]
        );

    /// <summary>The section.</summary>
    public static QuestionSection Section { get; } =
        new("pregnancy", "Pregnancy and breastfeeding", [Status]);
}
