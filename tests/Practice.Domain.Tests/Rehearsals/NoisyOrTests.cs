using System.Collections.Immutable;
using Practice.Domain.Rehearsals;

namespace Practice.Domain.Tests.Rehearsals;

/// <summary>
/// N01 to N10: the noisy-OR by exact enumeration, priors 0.1, q 0.7, leak 0.1 unless said; the arithmetic is verified,
/// the numbers put in are own rules. Tolerance 1e-5.
/// </summary>
public class NoisyOrTests
{
    private const double Tolerance = 1e-5;

    private static readonly FoodTrial AbBad = Trials.Of("AB", bad: true);
    private static readonly FoodTrial AcClean = Trials.Of("AC", bad: false);
    private static readonly FoodTrial BcBad = Trials.Of("BC", bad: true);

    [Fact]
    public void N01_probability_of_one_bad_trial_with_two_foods() =>
        Assert.Equal(0.22159, Math.Exp(SuspectFoods.Of([AbBad]).LogEvidence), Tolerance);

    [Fact]
    public void N02_either_food_of_one_bad_trial()
    {
        Assert.Equal(0.337967, Chance("A", AbBad), Tolerance);
        Assert.Equal(0.337967, Chance("B", AbBad), Tolerance);
    }

    [Theory]
    [InlineData("B", 0.404671)] // N03
    [InlineData("A", 0.132810)] // N04
    [InlineData("C", 0.032258)] // N05
    public void N03_to_N05_a_clean_trial_shifts_suspicion(string food, double chance) =>
        Assert.Equal(chance, Chance(food, AbBad, AcClean), Tolerance);

    [Theory]
    [InlineData("B", 0.806144)] // N06
    [InlineData("A", 0.070406)] // N07
    [InlineData("C", 0.070406)]
    public void N06_N07_the_common_food_of_two_bad_trials(string food, double chance) =>
        Assert.Equal(chance, Chance(food, AbBad, AcClean, BcBad), Tolerance);

    [Theory]
    [InlineData("A", 0.029708)]
    [InlineData("B", 0.878153)] // N08
    [InlineData("C", 0.059213)]
    public void N08_unequal_priors(string food, double chance)
    {
        var priors = new SuspectAssumptions
        {
            Priors = ImmutableDictionary.CreateRange(
                new Dictionary<string, double>
                {
                    ["A"] = 0.05,
                    ["B"] = 0.15,
                    ["C"] = 0.10,
                }
            ),
        };
        var suspects = SuspectFoods.Of([AbBad, AcClean, BcBad], priors);

        Assert.Equal(chance, suspects.ChanceOf(food)!.Value, Tolerance);
    }

    [Theory]
    [InlineData(0.5, 0.360364)] // N09
    [InlineData(1, 0.447853)]
    public void N09_half_a_dose_says_less(double dose, double chance) =>
        Assert.Equal(chance, Chance("A", Trials.Of("A", bad: true, dose)), Tolerance);

    [Theory]
    [InlineData(0.1, 0.009901)] // N10
    [InlineData(0.5, 0.082569)]
    public void N10_two_clean_full_doses(double prior, double chance)
    {
        var clean = Trials.Of("A", bad: false);
        var suspects = SuspectFoods.Of(
            [clean, clean],
            new SuspectAssumptions
            {
                Priors = ImmutableDictionary<string, double>.Empty.Add("A", prior),
            }
        );

        Assert.Equal(chance, suspects.ChanceOf("A")!.Value, Tolerance);
    }

    private static double Chance(string food, params FoodTrial[] trials) =>
        SuspectFoods.Of(trials).ChanceOf(food)!.Value;
}
