using System.Collections.Immutable;
using CsCheck;
using NodaTime;
using Practice.Domain.Clients;
using Practice.Domain.Foods;
using Practice.Domain.Screening;
using Practice.Domain.Screening.Questions;

namespace Practice.Domain.Tests.Screening;

public class ScreeningRulesTests
{
    /// <summary>Every question answered by anything that its choices allow, follow-ups included.</summary>
    private static readonly Gen<ScreeningAnswers> AnyAnswers = Questionnaire
        .All.Where(question => !question.IsOptional)
        .Select(question => AnyAnswer(question).Select(choices => (question, choices)))
        .Aggregate(
            Gen.Const(ScreeningAnswers.None),
            (all, next) =>
                Gen.Select(
                    all,
                    next,
                    (answers, answer) => answers.With(answer.question, answer.choices)
                )
        );

    private static readonly Gen<Client> AnyClient = Gen.Select(
        Gen.Int[1950, 2012],
        Gen.Int[40, 110],
        Gen.Enum<Allergen>().Array[0, 3],
        Gen.OneOf<string?>(null, "", "corn"),
        (year, kg, allergies, other) =>
            Screened.Adult(
                kg,
                new LocalDate(year, 6, 30),
                new Diet { Allergies = [.. allergies.Distinct()], OtherAllergy = other }
            )
    );

    [Fact]
    public void A_healthy_adult_with_nothing_to_report_is_held_by_nothing()
    {
        var outcome = Screened.Outcome();

        Assert.Empty(outcome.Holds);
        Assert.Empty(outcome.CautionKeys());
        Screened.Same(Adjustments.None, outcome.Adjustments);
    }

    [Fact]
    public void Every_question_left_open_holds_the_plan()
    {
        foreach (
            var question in Questionnaire.All.Where(q => q is { IsOptional: false, After: null })
        )
        {
            var outcome = Screened.Outcome(Questionnaire.NothingToReport.Without(question));
            var hold = Assert.Single(outcome.Holds);
            Assert.Equal("screening-incomplete", hold.Key);
            Assert.Equal(LiftedBy.Answers, hold.LiftedBy);
        }
        Assert.Equal(["screening-incomplete"], Screened.Outcome(ScreeningAnswers.None).HoldKeys());
    }

    [Fact]
    public void An_answer_that_leads_on_holds_until_its_follow_up_is_answered()
    {
        var coeliac = Questionnaire.NothingToReport.WithYes(FoodAndTheBody.Coeliac);

        Assert.Equal(["screening-incomplete"], Screened.Outcome(coeliac).HoldKeys());
        Assert.Empty(Screened.Outcome(coeliac.With(FoodAndTheBody.CertifiedOats, Choice.No)).Holds);
    }

    [Fact]
    public void Of_several_rules_the_strictest_numbers_win_and_exclusions_add_up()
    {
        var answers = Questionnaire
            .NothingToReport.With(Diabetes.Kind, Diabetes.Type2)
            .WithYes(FoodAndTheBody.Coeliac)
            .With(FoodAndTheBody.CertifiedOats, Choice.No)
            .With(FoodAndTheBody.Fructose, FoodAndTheBody.FructoseMalabsorption)
            .WithYes(Gut.IrritableBowel)
            .WithYes(Gut.LowFodmapSuits)
            .WithYes(Gut.StomachSurgery)
            .With(Pregnancy.Status, Pregnancy.Breastfeeding)
            .With(Medicines.Taken, Medicines.Glp1Agonist, Medicines.CombinedPill, Medicines.Ssri);
        var young = Screened.Adult(
            born: new LocalDate(2010, 1, 1),
            diet: new Diet { Allergies = [Allergen.Peanuts] }
        );

        Screened.Same(
            new()
            {
                CarbohydrateRateLow = 5, // of 5 and 6
                CarbohydrateRateHigh = 7, // of 7 and 8
                CaffeineMaxMgPerDay = 0, // of 200, 200 and 0
                CaffeineMaxMgPerIntake = 0, // of 100 and 0
                NoRaceCaffeine = true,
                FructoseMaxPerOccasionG = 15,
                RaceFructoseMaxGPerHour = 30,
                OccasionWeightFactor = 0.5m, // of 0.5 and 0.75
                ThirstOnly = true,
                NumberFree = true,
                NoWeighing = true,
                ExcludedAllergens =
                [
                    Allergen.Wheat,
                    Allergen.Barley,
                    Allergen.Rye,
                    Allergen.Oats,
                    Allergen.Peanuts,
                ],
                ExcludedTraits =
                    FoodTraits.UncertifiedOats
                    | FoodTraits.Sweetener
                    | FoodTraits.HighFodmap
                    | FoodTraits.SportsProduct,
            },
            Screened.Outcome(answers, young).Adjustments
        );
    }

    [Fact]
    public void The_order_of_the_rules_does_not_matter()
    {
        Gen.Select(AnyAnswers, AnyClient, Gen.Shuffle(ScreeningRules.All.ToArray()))
            .Sample(
                (answers, client, shuffled) =>
                {
                    var screened = new ScreenedCase(
                        answers,
                        client,
                        Screened.Today,
                        Duration.FromHours(5)
                    );
                    var one = ScreeningRules.Evaluate(ScreeningRules.All, screened);
                    var other = ScreeningRules.Evaluate(shuffled, screened);
                    Assert.Equal(one.Holds, other.Holds);
                    Assert.Equal(one.Cautions, other.Cautions);
                    Screened.Same(one.Adjustments, other.Adjustments);
                },
                iter: 500
            );
    }

    [Fact]
    public void Reporting_one_thing_more_never_takes_a_hold_a_caution_or_a_restriction_away()
    {
        Gen.Select(AnyAnswers, AnyClient, Gen.OneOf(Reports().ToArray()))
            .Sample(
                (answers, client, report) =>
                {
                    var (question, choice) = report;
                    // where nothing was reported before: changing one illness into another is not one more
                    var without = answers.With(question, question.Choices[0]);
                    var with = without.With(question, choice);
                    var before = Screened.Outcome(without, client);
                    var after = Screened.Outcome(with, client);
                    Assert.Subset(after.HoldKeys().ToHashSet(), before.HoldKeys().ToHashSet());
                    // tolerated certified oats are the one answer that opens something: not a finding
                    if (question == FoodAndTheBody.CertifiedOats)
                        return;
                    Assert.Subset(
                        after.CautionKeys().ToHashSet(),
                        before.CautionKeys().ToHashSet()
                    );
                    Screened.Same(after.Adjustments, before.Adjustments.And(after.Adjustments));
                },
                iter: 2000
            );
    }

    [Fact]
    public void Adding_a_medicine_never_takes_a_hold_away()
    {
        Gen.Select(
                AnyAnswers,
                Gen.OneOf(Medicines.Taken.Choices.Remove(Choice.NoneOfThese).ToArray())
            )
            .Sample(
                (answers, medicine) =>
                {
                    var more = answers.Says(Medicines.Taken, medicine)
                        ? answers
                        : answers.Toggle(Medicines.Taken, medicine);
                    Assert.Subset(
                        Screened.Outcome(more).HoldKeys().ToHashSet(),
                        Screened.Outcome(answers).HoldKeys().ToHashSet()
                    );
                },
                iter: 500
            );
    }

    [Fact]
    public void Merging_is_the_same_in_any_order_and_grouping_and_none_changes_nothing()
    {
        Gen.Select(AnyAnswers, AnyAnswers, AnyAnswers)
            .Sample(
                (first, second, third) =>
                {
                    var a = Screened.Outcome(first).Adjustments;
                    var b = Screened.Outcome(second).Adjustments;
                    var c = Screened.Outcome(third).Adjustments;
                    Screened.Same(a.And(b), b.And(a));
                    Screened.Same(a.And(b).And(c), a.And(b.And(c)));
                    Screened.Same(a, a.And(Adjustments.None));
                    Screened.Same(a, a.And(a));
                },
                iter: 200
            );
    }

    [Fact]
    public void Nothing_that_a_client_reads_holds_a_number_with_a_unit()
    {
        Gen.Select(AnyAnswers, AnyClient)
            .Sample(
                (answers, client) =>
                {
                    foreach (
                        var caution in Screened
                            .Outcome(answers, client, Duration.FromHours(5))
                            .Cautions.Where(caution => caution.ForClient)
                    )
                        Assert.Empty(NumberFree.Violations(caution.Text));
                },
                iter: 500
            );
    }

    [Fact]
    public void One_key_says_one_thing()
    {
        var said = new Dictionary<string, Caution>();
        AnyAnswers.Sample(
            answers =>
            {
                var screened = new ScreenedCase(answers, Screened.Adult(50), Screened.Today, null);
                foreach (
                    var caution in ScreeningRules
                        .All.Where(rule => rule.When(screened))
                        .SelectMany(rule => rule.Then(screened).Cautions)
                )
                {
                    said.TryAdd(caution.Key, caution);
                    Assert.Equal(said[caution.Key], caution);
                }
            },
            iter: 500,
            threads: 1
        );
        Assert.True(said.Count > 40, $"only {said.Count} cautions were reached");
    }

    [Fact]
    public void Every_rule_says_why_with_its_own_source()
    {
        var silent = ScreeningRules.All.ToHashSet();
        var rare = Gen.OneOf(
            ScreeningAnswers.None,
            ScreeningAnswers.None.WithWords(Medicines.Others, "creatine")
        );
        Gen.Select(Gen.OneOf(AnyAnswers, rare), AnyClient)
            .Sample(
                (answers, client) =>
                {
                    var screened = new ScreenedCase(answers, client, Screened.Today, null);
                    silent.RemoveWhere(rule =>
                        rule.When(screened) && SaysWhy(rule, rule.Then(screened))
                    );
                },
                iter: 2000,
                threads: 1
            );
        Assert.Empty(silent.Select(rule => rule.GetType().Name));
    }

    [Fact]
    public void Every_rule_that_is_written_is_applied_once()
    {
        var written = typeof(ScreeningRule)
            .Assembly.GetTypes()
            .Where(type => type.IsSubclassOf(typeof(ScreeningRule)))
            .Select(type => type.Name)
            .Order(StringComparer.Ordinal);
        Assert.Equal(
            written,
            ScreeningRules.All.Select(rule => rule.GetType().Name).Order(StringComparer.Ordinal)
        );
    }

    private static bool SaysWhy(ScreeningRule rule, Findings said) =>
        said.Holds.Any(hold => hold.Source == rule.Source)
        || said.Cautions.Any(caution => caution.Source == rule.Source);

    private static IEnumerable<(Question, Choice)> Reports() =>
        Questionnaire.All.SelectMany(question =>
            question.Choices.Skip(1).Select(choice => (question, choice))
        );

    private static Gen<ImmutableArray<Choice>> AnyAnswer(Question question)
    {
        var one = Gen.OneOf(question.Choices.ToArray())
            .Select(choice => ImmutableArray.Create(choice));
        return question.Kind == AnswerKind.AnyOf
            ? Gen.Frequency(
                (2, one),
                (
                    1,
                    Gen.OneOf(question.Choices.Skip(1).ToArray())
                        .Array[1, 4]
                        .Select(choices => choices.Distinct().ToImmutableArray())
                )
            )
            : one;
    }
}
