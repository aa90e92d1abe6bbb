using NodaTime;
using Practice.Domain.Foods;
using Practice.Domain.Screening;
using Practice.Domain.Screening.Questions;

namespace Practice.Domain.Tests.Screening.Rules;

public class PregnancyAndAgeTests
{
    // EFSA 2015;13(5):4102: <= 200 mg/d of caffeine (check C04); the rest is common practice
    [Fact]
    public void Pregnancy_needs_the_obstetrician_and_lifts_the_low_residue_days()
    {
        var outcome = Screened.By(Pregnancy.Status, Pregnancy.Pregnant);

        Assert.Equal(["pregnancy"], outcome.HoldKeys());
        Screened.Same(
            new()
            {
                CaffeineMaxMgPerDay = 200,
                NoRaceCaffeine = true,
                NoLowResidue = true,
                NoWeighing = true,
                ExcludedTraits = FoodTraits.RawAnimal,
            },
            outcome.Adjustments
        );
    }

    // EFSA 2015 for caffeine; EFSA 2012;10(2):2557 for +19 then +13 g of protein
    [Fact]
    public void Breastfeeding_limits_caffeine_and_tells_the_practitioner_of_protein()
    {
        var outcome = Screened.By(Pregnancy.Status, Pregnancy.Breastfeeding);

        Assert.Empty(outcome.Holds);
        Screened.Same(new() { CaffeineMaxMgPerDay = 200 }, outcome.Adjustments);
        var protein = outcome.Caution("breastfeeding-protein");
        Assert.False(protein.ForClient);
        Assert.Contains("19 g", protein.Text, StringComparison.Ordinal);
        Assert.Equal("efsa-2012-protein", protein.Source.Key);
    }

    // Desbrow 2014: ordinary foods first; 6-8 g/kg, no caffeine, number-free: common practice
    [Fact]
    public void Under_18_needs_guardian_and_dietitian_and_eats_ordinary_food()
    {
        var outcome = Screened.Outcome(client: Screened.Adult(born: new LocalDate(2010, 1, 1)));

        var hold = Assert.Single(outcome.Holds);
        Assert.Equal("under-18", hold.Key);
        Assert.Contains("guardian", hold.Reason, StringComparison.Ordinal);
        Screened.Same(
            new()
            {
                CarbohydrateRateLow = 6,
                CarbohydrateRateHigh = 8,
                CaffeineMaxMgPerDay = 0,
                CaffeineMaxMgPerIntake = 0,
                NoRaceCaffeine = true,
                NumberFree = true,
                NoWeighing = true,
                ExcludedTraits = FoodTraits.SportsProduct,
            },
            outcome.Adjustments
        );
    }

    [Fact]
    public void The_hold_ends_on_the_eighteenth_birthday()
    {
        var birthday = Screened.Today.PlusYears(-18);

        Assert.Empty(Screened.Outcome(client: Screened.Adult(born: birthday)).Holds);
        Assert.Single(Screened.Outcome(client: Screened.Adult(born: birthday.PlusDays(1))).Holds);
    }
}
