using NodaTime;
using Practice.Domain.Clients;
using Practice.Domain.Quantities;
using Practice.Domain.Screening;
using Practice.Domain.Screening.Questions;

namespace Practice.Domain.Tests.Screening;

/// <summary>A healthy adult with nothing to report, and what one changed fact makes of her screening.</summary>
internal static class Screened
{
    public static readonly LocalDate Today = new(2026, 9, 1);

    public static Client Adult(decimal kg = 70, LocalDate? born = null, Diet? diet = null)
    {
        var client = Client.Register(
            Guid.Parse("11111111-1111-1111-1111-111111111111"),
            "Nora",
            "Field",
            born ?? new LocalDate(1990, 5, 17),
            new Physique { Sex = Sex.Female, HeightCm = 170 },
            new BodyMassEntry(Today, BodyMass.OfKilograms(kg))
        );
        client.Restrict(diet ?? Diet.Unrestricted);
        return client;
    }

    public static ScreeningOutcome Outcome(
        ScreeningAnswers? answers = null,
        Client? client = null,
        Duration? expectedFinish = null
    ) =>
        ScreeningRules.Evaluate(
            answers ?? Questionnaire.NothingToReport,
            client ?? Adult(),
            Today,
            expectedFinish
        );

    /// <summary>What one answer makes of a screening with nothing else to report.</summary>
    public static ScreeningOutcome By(Question question, params Choice[] choices) =>
        Outcome(Questionnaire.NothingToReport.With(question, [.. choices]));

    public static ScreeningOutcome ByYes(Question question) => By(question, Choice.Yes);

    public static ScreeningOutcome Taking(params Choice[] medicines) =>
        By(Medicines.Taken, medicines);

    public static ScreeningOutcome Eating(Diet diet) => Outcome(client: Adult(diet: diet));

    public static string[] HoldKeys(this ScreeningOutcome outcome) =>
        [.. outcome.Holds.Select(hold => hold.Key)];

    /// <summary>Keys of the cautions beyond those that everybody gets.</summary>
    public static string[] CautionKeys(this ScreeningOutcome outcome) =>
        [
            .. outcome
                .Cautions.Select(caution => caution.Key)
                .Where(key => !key.StartsWith("general-", StringComparison.Ordinal)),
        ];

    public static Caution Caution(this ScreeningOutcome outcome, string key) =>
        Assert.Single(outcome.Cautions, caution => caution.Key == key);

    /// <summary>Adjustments compare by content: the set of allergens by its members.</summary>
    public static void Same(Adjustments expected, Adjustments actual)
    {
        Assert.True(
            expected.ExcludedAllergens.SetEquals(actual.ExcludedAllergens),
            $"allergens: {string.Join(", ", actual.ExcludedAllergens)}"
        );
        Assert.Equal(
            expected with
            {
                ExcludedAllergens = [],
            },
            actual with
            {
                ExcludedAllergens = [],
            }
        );
    }
}
