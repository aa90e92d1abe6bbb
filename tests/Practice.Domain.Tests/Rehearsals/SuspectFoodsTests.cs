using System.Collections.Immutable;
using CsCheck;
using Practice.Domain.Foods;
using Practice.Domain.Rehearsals;
using Practice.Domain.Tests.Plans;

namespace Practice.Domain.Tests.Rehearsals;

public class SuspectFoodsTests
{
    private const double Tolerance = 1e-9;

    private static readonly double[] SomeDoses = [0, 0, 0.25, 0.5, 1, 1];

    private static readonly Gen<FoodTrial[]> SomeTrials = TrialsOf("ABCDEF", 1, 5);

    [Fact]
    public void Chances_lie_between_0_and_1() =>
        SomeTrials.Sample(trials =>
        {
            var suspects = SuspectFoods.Of(trials);
            Assert.All(
                suspects.Groups,
                group =>
                {
                    Assert.InRange(group.AnyChance, 0, 1);
                    Assert.All(group.Foods, food => Assert.InRange(food.Chance, 0, 1));
                    Assert.True(group.AnyChance >= group.Foods[0].Chance - Tolerance);
                }
            );
        });

    [Fact]
    public void The_order_of_trials_does_not_matter() =>
        Gen.Select(SomeTrials, Gen.Int)
            .Sample(
                (trials, seed) =>
                {
                    var shuffled = (FoodTrial[])[.. trials];
                    new Random(seed).Shuffle(shuffled);
                    AssertSame(SuspectFoods.Of(trials), SuspectFoods.Of(shuffled), food => food);
                }
            );

    [Fact]
    public void The_order_of_foods_does_not_matter() =>
        SomeTrials.Sample(trials =>
        {
            static string Renamed(string food) => ((char)('Z' - (food[0] - 'A'))).ToString();
            var renamed = trials.Select(t =>
                t with
                {
                    Doses = t.Doses.ToImmutableDictionary(d => Renamed(d.Key), d => d.Value),
                }
            );
            AssertSame(SuspectFoods.Of(trials), SuspectFoods.Of(renamed), Renamed);
        });

    /// <summary>Foods always eaten together are reckoned by their number; that must be the same as one by one.</summary>
    [Fact]
    public void Grouping_changes_no_chance() =>
        Gen.Select(SomeTrials, Gen.Double[0.02, 0.5].Array[6])
            .Sample(
                (trials, priors) =>
                {
                    var assumptions = new SuspectAssumptions
                    {
                        Priors = priors
                            .Select((prior, i) => (Food: "ABCDEF"[i].ToString(), prior))
                            .ToImmutableDictionary(p => p.Food, p => p.prior),
                    };
                    var suspects = SuspectFoods.Of(trials, assumptions);
                    foreach (var (food, chance) in OneByOne.Chances(trials, assumptions))
                        Assert.Equal(chance, suspects.ChanceOf(food)!.Value, Tolerance);
                }
            );

    [Fact]
    public void Clean_trials_alone_never_raise_a_chance() =>
        SomeTrials.Sample(trials =>
        {
            var clean = trials.Select(t => t with { HadSymptoms = false }).ToList();
            var before = SuspectFoods.Of(clean.Skip(1));
            var after = SuspectFoods.Of(clean);
            foreach (var food in clean[0].Doses.Keys)
                Assert.True(
                    after.ChanceOf(food) <= (before.ChanceOf(food) ?? FoodPrior.Usual) + Tolerance
                );
        });

    [Fact]
    public void A_clean_trial_of_one_food_never_raises_its_chance() =>
        SomeTrials.Sample(trials =>
        {
            var before = SuspectFoods.Of(trials).ChanceOf("A") ?? FoodPrior.Usual;
            var after = SuspectFoods.Of([.. trials, Trials.Of("A", bad: false)]).ChanceOf("A");
            Assert.True(after <= before + Tolerance);
        });

    [Fact]
    public void A_clean_trial_of_inseparable_foods_never_raises_the_chance_of_any_of_them() =>
        TrialsOf("ABCD", 1, 5)
            .Sample(trials =>
            {
                // a follows A everywhere
                var together = trials
                    .Select(t =>
                        t.DoseOf("A") is > 0 and var dose
                            ? t with
                            {
                                Doses = t.Doses.SetItem("a", dose),
                            }
                            : t
                    )
                    .ToList();
                var before =
                    SuspectFoods.Of(together).GroupOf("A")?.AnyChance
                    ?? 1 - Math.Pow(1 - FoodPrior.Usual, 2);
                var after = SuspectFoods.Of([.. together, Trials.Of("Aa", bad: false)]);
                Assert.True(after.GroupOf("A")!.AnyChance <= before + Tolerance);
            });

    /// <summary>
    /// A clean trial can raise a food's chance: it clears the other suspects of an earlier bad trial more. Numbers by
    /// hand: weights 0.081, 0.0657 x 0.3^0.1, 0.0657 x 0.3, 0.00919 x 0.3^1.1.
    /// </summary>
    [Fact]
    public void A_clean_trial_with_little_of_a_food_and_much_of_its_rival_shifts_suspicion_to_it()
    {
        var bad = Trials.Of("AB", bad: true);
        var clean = bad with
        {
            HadSymptoms = false,
            Doses = ImmutableDictionary<string, double>.Empty.Add("A", 0.1).Add("B", 1),
        };

        Assert.Equal(0.337967, SuspectFoods.Of([bad]).ChanceOf("A")!.Value, 1e-5);
        Assert.Equal(0.376029, SuspectFoods.Of([bad, clean]).ChanceOf("A")!.Value, 1e-5);
    }

    [Fact]
    public void Foods_never_separated_stand_as_one_with_the_chance_of_any()
    {
        var group = Assert.Single(SuspectFoods.Of([Trials.Of("AB", bad: true)]).Groups);

        Assert.True(group.IsInseparable);
        Assert.Equal((0.0657 * 2 + 0.00919) / 0.22159, group.AnyChance, 1e-5);
    }

    [Fact]
    public void More_sets_than_can_be_weighed_leave_those_of_at_most_three_triggers()
    {
        // twenty foods that trials tell apart: each has its own dose
        var trial = Trials.Of("ABCDEFGHIJKLMNOPQRST", bad: true);
        var many = trial with
        {
            Doses = trial.Doses.ToImmutableDictionary(d => d.Key, d => 1 - 0.01 * (d.Key[0] - 'A')),
        };
        var suspects = SuspectFoods.Of([many, Trials.Of("A", bad: true)]);

        Assert.False(suspects.IsExact);
        Assert.Equal(20, suspects.Groups.Length);
        Assert.Equal("A", suspects.Groups[0].Foods[0].FoodId);
        Assert.All(suspects.Groups, g => Assert.InRange(g.AnyChance, 0, 1));
        Assert.True(SuspectFoods.Of([Trials.Of("ABCDEFGHIJKLMNO", bad: true)]).IsExact);
    }

    [Fact]
    public void Strain_takes_suspicion_off_food()
    {
        var bad = Trials.Of("A", bad: true);
        var strained = bad with
        {
            Strains = new TrialStrains { Hot = true, IllOrPeriod = true },
        };

        Assert.True(
            SuspectFoods.Of([strained]).ChanceOf("A") < SuspectFoods.Of([bad]).ChanceOf("A")
        );
    }

    [Fact]
    public void No_trials_teach_nothing()
    {
        var suspects = SuspectFoods.Of([]);

        Assert.Empty(suspects.Groups);
        Assert.Null(suspects.ChanceOf("A"));
        Assert.Null(NextTrial.Of(suspects));
    }

    // Own rule: 0.80 likely, 0.50 suspect, 0.20 possible, at most 0.05 after two clean full doses cleared.
    [Theory]
    [InlineData(0.80, 0, SuspectLabel.Likely)]
    [InlineData(0.79, 0, SuspectLabel.Suspect)]
    [InlineData(0.50, 0, SuspectLabel.Suspect)]
    [InlineData(0.49, 0, SuspectLabel.Possible)]
    [InlineData(0.20, 0, SuspectLabel.Possible)]
    [InlineData(0.19, 9, SuspectLabel.Unknown)]
    [InlineData(0.05, 2, SuspectLabel.Cleared)]
    [InlineData(0.05, 1, SuspectLabel.Unknown)]
    public void A_chance_has_a_name(double chance, int clean, SuspectLabel label) =>
        Assert.Equal(label, SuspectGroup.LabelOf(chance, clean));

    [Fact]
    public void The_words_count_exposures_and_promise_no_allergy_test()
    {
        var suspects = SuspectFoods.Of([
            Trials.Of("AB", bad: true),
            Trials.Of("AC", bad: false),
            Trials.Of("BC", bad: true),
        ]);

        Assert.Equal(
            "White bread: eaten in 2 trials, 2 of them with symptoms; 81 % to be a trigger (likely), 10 % before the "
                + "trials. A pattern in few trials, not an allergy test.",
            suspects.GroupOf("B")!.Explain(_ => "White bread")
        );
        Assert.Equal(
            "A, B: eaten in 1 trial, with symptoms; always eaten together, so the trials can not tell them apart: 34 % "
                + "that A is a trigger (possible), 10 % before the trials; 63 % that any of them is, 19 % before. A pattern "
                + "in few trials, not an allergy test.",
            SuspectFoods.Of([Trials.Of("AB", bad: true)]).Groups[0].Explain(food => food)
        );
    }

    [Fact]
    public void The_next_trial_changes_one_thing()
    {
        var clear = SuspectFoods.Of([
            Trials.Of("AB", bad: true),
            Trials.Of("AC", bad: false),
            Trials.Of("BC", bad: true),
        ]);
        Assert.Equal(new NextTrial("B", null, Halve: false), NextTrial.Of(clear));

        var possible = SuspectFoods.Of([Trials.Of("AB", bad: true), Trials.Of("AC", bad: false)]);
        Assert.Equal(new NextTrial("B", null, Halve: true), NextTrial.Of(possible));
    }

    [Fact]
    public void Of_two_equal_suspects_one_goes_and_one_stays()
    {
        var next = NextTrial.Of(SuspectFoods.Of([Trials.Of("AB", bad: true)]));

        Assert.Equal(new NextTrial("A", "B", Halve: false), next);
        Assert.Contains("keep B", next!.InWords(food => food), StringComparison.Ordinal);
    }

    // Own rule: 0.10, 0.20 by traits, 0.30 after past trouble, 0.03 when eaten weekly without.
    [Fact]
    public void Priors_follow_traits_and_history()
    {
        var toast = SampleFood.Toast;
        var rich = toast with { Traits = FoodTraits.HighFodmap };
        double Prior(Food food, GutHistory? history = null) =>
            FoodPrior.Of(food, history ?? GutHistory.Unknown);

        Assert.Equal(0.10, Prior(toast));
        Assert.Equal(0.20, Prior(rich));
        Assert.Equal(0.20, Prior(toast with { Per100G = toast.Per100G with { FatG = 15 } }));
        Assert.Equal(0.20, Prior(toast with { Per100G = toast.Per100G with { LactoseG = 4.7m } }));
        Assert.Equal(
            0.20,
            Prior(toast with { Per100G = toast.Per100G with { FructoseG = 5, GlucoseG = 3 } })
        );
        Assert.Equal(0.03, Prior(rich, new() { EatenWeekly = ["toast"] }));
        Assert.Equal(0.30, Prior(rich, new() { PastTrouble = ["toast"], EatenWeekly = ["toast"] }));
    }

    private static Gen<FoodTrial[]> TrialsOf(string foods, int least, int most) =>
        Gen.Select(
                Gen.Int[0, 5].Select(i => SomeDoses[i]).Array[foods.Length],
                Gen.Bool,
                Gen.Select(Gen.Bool, Gen.Bool)
            )
            .Select(
                (doses, bad, strains) =>
                    Trials.Of("", bad) with
                    {
                        Strains = new() { Hot = strains.Item1, IllOrPeriod = strains.Item2 },
                        Doses = doses
                            .Select((dose, i) => (Food: foods[i].ToString(), dose))
                            .Where(d => d.dose > 0)
                            .ToImmutableDictionary(d => d.Food, d => d.dose),
                    }
            )
            .Array[least, most];

    private static void AssertSame(
        SuspectFoods left,
        SuspectFoods right,
        Func<string, string> renamed
    )
    {
        Assert.Equal(left.LogEvidence, right.LogEvidence, Tolerance);
        foreach (var food in left.Groups.SelectMany(g => g.Foods))
            Assert.Equal(food.Chance, right.ChanceOf(renamed(food.FoodId))!.Value, Tolerance);
    }
}
