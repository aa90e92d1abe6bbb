using NodaTime;
using Practice.Domain.Clients;
using Practice.Domain.Screening.Questions;

namespace Practice.Domain.Screening;

/// <summary>What a screening rule looks at.</summary>
/// <param name="Answers">What the client answered.</param>
/// <param name="Client">The client: age, body mass and diet.</param>
/// <param name="Today">The day of the judgement.</param>
/// <param name="ExpectedFinish">How long the race is expected to take; null when no race is in view.</param>
internal sealed record ScreenedCase(
    ScreeningAnswers Answers,
    Client Client,
    LocalDate Today,
    Duration? ExpectedFinish
)
{
    /// <summary>Whether the client takes one of these medicines.</summary>
    public bool TakesAnyOf(params Choice[] medicines) =>
        Answers.SaysAnyOf(Medicines.Taken, [.. medicines]);
}
