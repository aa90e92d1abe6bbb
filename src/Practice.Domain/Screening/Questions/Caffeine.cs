namespace Practice.Domain.Screening.Questions;

/// <summary>Reasons to plan no caffeine, beyond those that other answers give.</summary>
public static class Caffeine
{
    /// <summary>Panic disorder.</summary>
    public static Choice PanicDisorder { get; } =
        new("panic-disorder", "I have panic attacks or a panic disorder");

    /// <summary>Told by a doctor.</summary>
    public static Choice DoctorsAdvice { get; } =
        new("doctors-advice", "A doctor has told me to avoid it");

    /// <summary>Own choice.</summary>
    public static Choice OwnChoice { get; } = new("own-choice", "I do not want any");

    /// <summary>Why no caffeine.</summary>
    public static Question Avoided { get; } =
        Question.AnyOf(
            "caffeine-avoided",
            "Is there a reason to leave out caffeine?",
            [PanicDisorder, DoctorsAdvice, OwnChoice]
        );

    /// <summary>The section.</summary>
    public static QuestionSection Section { get; } = new("caffeine", "Caffeine", [Avoided]);
}
