using System.Collections.Immutable;
using NodaTime;
using Practice.Domain.Foods;
using Practice.Domain.Plans;
using Practice.Domain.Practices;
using Practice.Domain.Rehearsals;
using Practice.Domain.Tests.Plans;

namespace Practice.Domain.Tests.Rehearsals;

public class RehearsalReviewTests
{
    [Fact]
    public void Sittings_move_to_the_days_before_the_run()
    {
        var sittings = Sample.Full.Part.Sittings(Sample.Plan(), Sample.RunOn, 1);

        Assert.Equal(Sample.RunOn.PlusDays(-2), sittings[0].Date);
        Assert.Equal(Sample.RunOn.PlusDays(-1), sittings[^1].Date);
        Assert.Equal(Sample.RunOn.PlusDays(-2), Sample.Full.Part.FirstEatenOn(Sample.RunOn));
        Assert.Equal(
            Sample.Plan().Days.Sum(d => d.Limits.CarbohydrateAimG),
            sittings.Sum(s => s.CarbohydrateAimG),
            6
        );
    }

    [Fact]
    public void A_part_may_begin_in_the_evening()
    {
        var evening = new RehearsedPart(Guid.Empty, 1, 1, OccasionKind.EveningMeal);

        Assert.Equal(
            [OccasionKind.EveningMeal, OccasionKind.Supper],
            evening.Sittings(Sample.Plan(), Sample.RunOn, 1).Select(s => s.Kind)
        );
    }

    [Fact]
    public void A_smaller_dose_is_one_that_a_person_would_serve()
    {
        var half = Sample.Full.Part.Sittings(Sample.Plan(), Sample.RunOn, 0.5m);
        var whole = Sample.Full.Part.Sittings(Sample.Plan(), Sample.RunOn, 1);

        Assert.All(
            half.SelectMany(s => s.Portions),
            p => Assert.Contains(p.Steps, p.Serving.Steps.AsEnumerable())
        );
        Assert.Equal(whole.Sum(s => s.CarbohydrateAimG) / 2, half.Sum(s => s.CarbohydrateAimG));
    }

    [Fact]
    public void Eaten_as_planned_brings_what_the_plates_bring()
    {
        var review = Sample.Review(s => EatenOccasion.AsPlanned(s));

        Assert.All(
            review.Sittings,
            s => Assert.Equal(s.PlannedCarbohydrateG, s.Eaten.CarbohydrateG)
        );
        Assert.Equal(0, review.Unknown);
        Assert.Equal(10m, review.PlannedGPerKg, 6);
    }

    [Fact]
    public void Amounts_swaps_extras_and_leftovers_are_reckoned()
    {
        var toast = Portion.Of(SampleFood.Toast, MealRole.Bread, 2);
        var jam = Portion.Of(SampleFood.Toast with { Id = "jam" }, MealRole.Spread, 1);
        var sitting = new RehearsedSitting(
            Sample.RunOn,
            OccasionKind.Breakfast,
            new LocalTime(7, 0),
            60,
            [toast]
        );
        decimal Eaten(EatenPortion told, params ImmutableArray<Portion> extras) =>
            SittingReview
                .Of(sitting, new(sitting.Date, sitting.Kind, [told], extras))
                .Eaten.CarbohydrateG;
        var slice = 0.3m * 46.7m;

        Assert.Equal(2 * slice, Eaten(EatenPortion.AsPlanned("toast")));
        Assert.Equal(slice, Eaten(EatenPortion.Amount("toast", 0.5m)));
        Assert.Equal(slice, Eaten(EatenPortion.Replaced("toast", jam)));
        Assert.Equal(0, Eaten(EatenPortion.Replaced("toast", "soup")));
        Assert.Equal(0, Eaten(EatenPortion.Left("toast")));
        Assert.Equal(slice, Eaten(EatenPortion.Left("toast"), jam));
    }

    [Fact]
    public void What_was_not_told_is_said_and_counts_as_nothing()
    {
        var review = Sample.Review(_ => null);

        Assert.Equal(0, review.Eaten.CarbohydrateG);
        Assert.Equal(review.Sittings.Sum(s => s.Sitting.Portions.Length), review.Unknown);
        Assert.Equal(Compliance.NotLoaded, review.Compliance);
    }

    // Own rule: 0.90 and 0.70 of the plan, and 7 g/kg for a full rehearsal.
    [Theory]
    [InlineData(RehearsalKind.Full, 10, 9, Compliance.Met)]
    [InlineData(RehearsalKind.Full, 10, 8.9, Compliance.Partly)]
    [InlineData(RehearsalKind.Full, 10, 7, Compliance.Partly)]
    [InlineData(RehearsalKind.Full, 10, 6.9, Compliance.NotLoaded)]
    [InlineData(RehearsalKind.Full, 8, 6.9, Compliance.NotLoaded)]
    [InlineData(RehearsalKind.Partial, 7.5, 6.9, Compliance.Met)]
    [InlineData(RehearsalKind.Full, 6, 5.5, Compliance.Met)]
    public void Intake_is_met_partly_met_or_no_loading(
        RehearsalKind kind,
        double planned,
        double eaten,
        Compliance compliance
    ) => Assert.Equal(compliance, ComplianceRule.Of(kind, (decimal)planned, (decimal)eaten));

    // Own rule: up to 2 pass, 3 and 4 adapt, 5 and more fail; vomiting and a stop fail.
    [Theory]
    [InlineData(0, TrialVerdict.Pass)]
    [InlineData(2, TrialVerdict.Pass)]
    [InlineData(3, TrialVerdict.Adapt)]
    [InlineData(4, TrialVerdict.Adapt)]
    [InlineData(5, TrialVerdict.Fail)]
    public void The_worst_score_decides(int peak, TrialVerdict verdict) =>
        Assert.Equal(verdict, TrialVerdicts.OfPeak(peak, SymptomThresholds.House));

    [Fact]
    public void Vomiting_or_a_stop_fails_whatever_the_scores_say()
    {
        var calm = new Feedback { ReceivedAt = default };

        Assert.Equal(TrialVerdict.Pass, TrialVerdicts.Of(calm, SymptomThresholds.House));
        Assert.Equal(
            TrialVerdict.Fail,
            TrialVerdicts.Of(calm with { Vomited = true }, SymptomThresholds.House)
        );
        Assert.Equal(
            TrialVerdict.Fail,
            TrialVerdicts.Of(
                calm with
                {
                    Run = new RunFeedback { StoppedByGut = true },
                },
                SymptomThresholds.House
            )
        );
    }

    [Fact]
    public void Doses_are_parts_of_the_full_amount_and_never_above_one()
    {
        var review = Sample.Review(s =>
            new(
                s.Date,
                s.Kind,
                [.. s.Portions.Select(p => EatenPortion.Amount(p.FoodId, 0.5m))],
                []
            )
        );
        var greedy = Sample.Review(s =>
            new(s.Date, s.Kind, [.. s.Portions.Select(p => EatenPortion.Amount(p.FoodId, 3))], [])
        );

        var trials = FoodTrial.Of([review, greedy], massKg: 70);

        Assert.Equal([0.5, 1], trials.Select(t => t.DoseOf("toast")));
    }

    [Fact]
    public void A_trial_with_a_warning_sign_teaches_nothing_about_food()
    {
        var review = Sample.Review(EatenOccasion.AsPlanned);
        var bad = review with
        {
            Feedback = review.Feedback with { WarningSigns = [WarningSign.BloodInStool] },
        };

        Assert.Empty(FoodTrial.Of([bad], massKg: 70));
    }

    // Own rule: 0.10, and 0.10 more for each strain, at most 0.50.
    [Fact]
    public void Each_strain_raises_the_chance_of_symptoms_without_food()
    {
        Assert.Equal(0.1, TrialStrains.None.Leak, 12);
        var strained = TrialStrains.Of(
            new Feedback
            {
                ReceivedAt = default,
                IllOrPeriod = true,
                MassBefore = Practice.Domain.Quantities.BodyMass.OfKilograms(70),
                MassAfter = Practice.Domain.Quantities.BodyMass.OfKilograms(68.5m),
                Run = new RunFeedback
                {
                    AtRaceEffort = Duration.FromMinutes(91),
                    WetBulbGlobeC = 23.1m,
                    CaffeineMg = 211,
                },
            },
            massKg: 70
        );

        Assert.Equal(5, strained.Count);
        Assert.Equal(0.5, strained.Leak, 12);
        Assert.Equal(0.2, new TrialStrains { Hot = true }.Leak, 12);
    }
}
