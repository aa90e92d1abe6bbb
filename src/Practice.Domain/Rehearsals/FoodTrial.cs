using System.Collections.Immutable;
using NodaTime;

namespace Practice.Domain.Rehearsals;

/// <summary>One trial as the reckoning of suspect foods sees it.</summary>
/// <param name="On">Day of the run.</param>
/// <param name="HadSymptoms">Whether the gut was in trouble.</param>
/// <param name="Strains">What may have brought symptoms on without food.</param>
/// <param name="Doses">Dose of each food eaten, by key: amount over a full amount, above 0 to 1.</param>
public sealed record FoodTrial(
    LocalDate On,
    bool HadSymptoms,
    TrialStrains Strains,
    ImmutableDictionary<string, double> Doses
)
{
    /// <summary>Dose of a food, 0 to 1.</summary>
    public double DoseOf(string foodId) => Doses.GetValueOrDefault(foodId);

    /// <summary>
    /// The trials in reviewed rehearsals. A food's full amount is the most of it that any rehearsal would have had at
    /// full dose, or the most eaten where it was never planned. Trials with a warning sign are left out: those are for a
    /// doctor.
    /// </summary>
    /// <param name="reviews">The rehearsals.</param>
    /// <param name="massKg">Body mass, kg, for caffeine.</param>
    /// <param name="symptomsFrom">Score from which the gut counts as in trouble: 5, or 3 for a second look.</param>
    public static ImmutableArray<FoodTrial> Of(
        IEnumerable<RehearsalReview> reviews,
        decimal massKg,
        int symptomsFrom = Symptom.SevereFrom
    )
    {
        var read = reviews.Where(r => r.Feedback.WarningSigns.IsEmpty).ToList();
        var eaten = read.Select(Eaten).ToList();
        var full = Most(eaten).SetItems(Most(read.Select(Planned)));
        return
        [
            .. read.Zip(
                eaten,
                (review, amounts) =>
                    new FoodTrial(
                        review.Details.RunOn,
                        review.Symptoms.Peak >= symptomsFrom
                            || review.Feedback.Vomited
                            || review.Feedback.Run is { StoppedByGut: true },
                        TrialStrains.Of(review.Feedback, massKg),
                        amounts.ToImmutableDictionary(
                            food => food.Key,
                            food => (double)Math.Min(1, food.Value / full[food.Key])
                        )
                    )
            ),
        ];
    }

    private static ImmutableDictionary<string, decimal> Eaten(RehearsalReview review) =>
        Sum(
            review
                .Sittings.SelectMany(s => s.Portions)
                .Where(p => p.Eaten is { Grams: > 0 })
                .Select(p => (p.Eaten!.Value.FoodId, p.Eaten.Value.Grams))
        );

    private static ImmutableDictionary<string, decimal> Planned(RehearsalReview review) =>
        Sum(
            review
                .Sittings.SelectMany(s => s.Sitting.Portions)
                .Select(p => (p.FoodId, p.Grams / review.Details.Dose))
        );

    private static ImmutableDictionary<string, decimal> Sum(
        IEnumerable<(string FoodId, decimal Grams)> amounts
    ) =>
        amounts
            .GroupBy(a => a.FoodId, a => a.Grams)
            .ToImmutableDictionary(food => food.Key, food => food.Sum());

    private static ImmutableDictionary<string, decimal> Most(
        IEnumerable<ImmutableDictionary<string, decimal>> trials
    ) =>
        trials
            .SelectMany(trial => trial)
            .GroupBy(food => food.Key, food => food.Value)
            .ToImmutableDictionary(food => food.Key, food => food.Max());
}
