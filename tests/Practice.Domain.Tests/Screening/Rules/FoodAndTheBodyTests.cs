using Practice.Domain.Clients;
using Practice.Domain.Foods;
using Practice.Domain.Screening;
using Practice.Domain.Screening.Questions;

namespace Practice.Domain.Tests.Screening.Rules;

public class FoodAndTheBodyTests
{
    // common practice: no "small amounts"; oats off unless certified ones are tolerated
    [Fact]
    public void Coeliac_disease_excludes_gluten_and_oats()
    {
        var outcome = Screened.Outcome(
            Questionnaire
                .NothingToReport.WithYes(FoodAndTheBody.Coeliac)
                .With(FoodAndTheBody.CertifiedOats, Choice.No)
        );

        Assert.Empty(outcome.Holds);
        Assert.True(outcome.Caution("gluten-free").ForClient);
        Screened.Same(
            new()
            {
                ExcludedAllergens = [Allergen.Wheat, Allergen.Barley, Allergen.Rye, Allergen.Oats],
                ExcludedTraits = FoodTraits.UncertifiedOats,
            },
            outcome.Adjustments
        );
    }

    [Fact]
    public void Certified_oats_may_stay_where_they_are_tolerated_and_others_never()
    {
        var outcome = Screened.Outcome(
            Questionnaire
                .NothingToReport.WithYes(FoodAndTheBody.Coeliac)
                .WithYes(FoodAndTheBody.CertifiedOats)
        );

        Screened.Same(
            new()
            {
                ExcludedAllergens = [Allergen.Wheat, Allergen.Barley, Allergen.Rye],
                ExcludedTraits = FoodTraits.UncertifiedOats,
            },
            outcome.Adjustments
        );
    }

    // wheat allergy is another thing: barley and rye are allowed
    [Fact]
    public void A_wheat_allergy_excludes_wheat_alone()
    {
        var outcome = Screened.Eating(new Diet { Allergies = [Allergen.Wheat] });

        Assert.Empty(outcome.Holds);
        Assert.Equal(["allergens-labels"], outcome.CautionKeys());
        Screened.Same(new() { ExcludedAllergens = [Allergen.Wheat] }, outcome.Adjustments);
    }

    // EFSA 2010;8(9):1777: most bear 12 g at once
    [Fact]
    public void Lactose_intolerance_allows_twelve_grams_at_once_and_twice_that_a_day()
    {
        Screened.Same(
            new() { LactoseMaxPerOccasionG = 12, LactoseMaxPerDayG = 24 },
            Screened.By(FoodAndTheBody.Lactose, FoodAndTheBody.SomeLactose).Adjustments
        );
    }

    // EFSA 2010: some react below 6 g; a milk allergy is a separate matter
    [Fact]
    public void Severe_lactose_intolerance_allows_none_and_is_no_milk_allergy()
    {
        Screened.Same(
            new() { LactoseMaxPerOccasionG = 0, LactoseMaxPerDayG = 0 },
            Screened.By(FoodAndTheBody.Lactose, FoodAndTheBody.NoLactose).Adjustments
        );
    }

    // secondary accounts: low glucose, liver and kidney injury; after clearance glucose and starch, 60 g/h at most
    [Fact]
    public void Hereditary_fructose_intolerance_holds_and_excludes_fructose_sucrose_and_sorbitol()
    {
        var outcome = Screened.By(
            FoodAndTheBody.Fructose,
            FoodAndTheBody.HereditaryFructoseIntolerance
        );

        Assert.Equal(["hereditary-fructose-intolerance"], outcome.HoldKeys());
        Screened.Same(
            new()
            {
                NoFructoseAtAll = true,
                NoSucroseAtAll = true,
                FructoseMaxPerOccasionG = 0,
                RaceFructoseMaxGPerHour = 0,
                RaceCarbohydrateMaxGPerHour = 60,
                ExcludedTraits = FoodTraits.Sweetener,
            },
            outcome.Adjustments
        );
    }

    // common practice: 15-20 g a sitting, rehearse
    [Fact]
    public void Fructose_malabsorption_limits_a_sitting_to_fifteen_grams_without_a_hold()
    {
        var outcome = Screened.By(FoodAndTheBody.Fructose, FoodAndTheBody.FructoseMalabsorption);

        Assert.Empty(outcome.Holds);
        Assert.Equal(["rehearse-fructose"], outcome.CautionKeys());
        Screened.Same(new() { FructoseMaxPerOccasionG = 15 }, outcome.Adjustments);
    }

    // as hereditary intolerance for sucrose, fructose allowed
    [Fact]
    public void Sucrase_deficiency_holds_and_excludes_sucrose_but_not_fructose()
    {
        var outcome = Screened.ByYes(FoodAndTheBody.SucraseDeficiency);

        Assert.Equal(["sucrase-isomaltase-deficiency"], outcome.HoldKeys());
        Screened.Same(new() { NoSucroseAtAll = true }, outcome.Adjustments);
    }

    // common practice: protein from the team only, no aspartame
    [Fact]
    public void Phenylketonuria_holds_takes_the_protein_floor_away_and_excludes_sweeteners()
    {
        var outcome = Screened.ByYes(FoodAndTheBody.Phenylketonuria);

        Assert.Equal(["phenylketonuria"], outcome.HoldKeys());
        Screened.Same(
            new() { NoProteinFloor = true, ExcludedTraits = FoodTraits.Sweetener },
            outcome.Adjustments
        );
    }

    // Regulation (EU) 1169/2011 Annex II knows fourteen groups; others need a person
    [Fact]
    public void An_allergen_outside_the_list_holds_until_the_practitioner_says_how_it_was_handled()
    {
        var outcome = Screened.Eating(new Diet { OtherAllergy = " Alpha-gal " });

        var hold = Assert.Single(outcome.Holds);
        Assert.Equal("unlisted-allergen:alpha-gal", hold.Key);
        Assert.Equal(LiftedBy.Practitioner, hold.LiftedBy);
        Assert.Contains("Alpha-gal", hold.Reason, StringComparison.Ordinal);
    }

    // own rule: an allergy that is told but not listed would not be kept off the plate
    [Fact]
    public void An_allergy_that_is_told_must_be_listed()
    {
        var answers = Questionnaire.NothingToReport.WithYes(FoodAndTheBody.FoodAllergy);

        var hold = Assert.Single(Screened.Outcome(answers).Holds);
        Assert.Equal("allergies-not-listed", hold.Key);
        Assert.Equal(LiftedBy.Answers, hold.LiftedBy);

        var listed = Screened.Adult(diet: new Diet { Allergies = [Allergen.Eggs] });
        Assert.Empty(Screened.Outcome(answers, listed).Holds);
    }

    // common practice
    [Fact]
    public void Anaphylaxis_carries_an_auto_injector_and_with_exercise_needs_the_allergist()
    {
        var ever = Screened.By(FoodAndTheBody.Anaphylaxis, FoodAndTheBody.SevereReaction);
        var exercise = Screened.By(
            FoodAndTheBody.Anaphylaxis,
            FoodAndTheBody.SevereReactionOnExercise
        );

        Assert.Empty(ever.Holds);
        Assert.Equal(["exercise-induced-anaphylaxis"], exercise.HoldKeys());
        foreach (var outcome in new[] { ever, exercise })
            Assert.Contains(
                "auto-injector",
                outcome.Caution("anaphylaxis").Text,
                StringComparison.Ordinal
            );
    }
}
