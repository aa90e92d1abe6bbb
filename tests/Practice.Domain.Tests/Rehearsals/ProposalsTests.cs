using System.Collections.Immutable;
using Practice.Domain.Foods;
using Practice.Domain.Plans;
using Practice.Domain.Rehearsals;
using Practice.Domain.Screening;
using Practice.Domain.Targets;
using Practice.Domain.Tests.Plans;

namespace Practice.Domain.Tests.Rehearsals;

/// <summary>Escalation and stop rules: common practice; how far a step goes: own rule.</summary>
public class ProposalsTests
{
    private static readonly ProposalCase Clean = new()
    {
        Latest = Rehearsed(TrialVerdict.Pass),
        Plan = Sample.Plan(),
        Suspects = SuspectFoods.Of([]),
        Today = Sample.RunOn.PlusDays(1),
    };

    [Fact]
    public void A_full_rehearsal_that_sat_well_is_kept() => Assert.Empty(Proposals.For(Clean));

    [Fact]
    public void After_a_clean_partial_comes_the_full_one_a_week_later_at_the_earliest()
    {
        var proposal = Assert.Single(
            Proposals.For(
                Clean with
                {
                    Latest = Rehearsed(TrialVerdict.Pass, RehearsalKind.Partial),
                }
            )
        );

        Assert.Null(proposal.Change);
        Assert.Equal(
            new NextRehearsal(RehearsalKind.Full, Sample.RunOn.PlusDays(7)),
            proposal.Next
        );
    }

    [Fact]
    public void What_is_read_late_is_repeated_once_its_loading_days_can_come_and_never_in_the_last_ten_days()
    {
        NextRehearsal? Read(int daysAfter) =>
            Proposals
                .For(
                    Clean with
                    {
                        Latest = Rehearsed(TrialVerdict.Fail),
                        Today = Sample.RunOn.PlusDays(daysAfter),
                    }
                )[0]
                .Next;

        Assert.Equal(Sample.RunOn.PlusDays(7), Read(4)!.NotBefore);
        Assert.Equal(Sample.RunOn.PlusDays(11), Read(8)!.NotBefore);
        Assert.Null(Read(9));
    }

    [Fact]
    public void A_full_rehearsal_that_no_time_is_left_for_is_not_proposed() =>
        Assert.Empty(
            Proposals.For(
                Clean with
                {
                    Latest = Rehearsed(TrialVerdict.Pass, RehearsalKind.Partial),
                    Today = Sample.RunOn.PlusDays(9),
                }
            )
        );

    [Fact]
    public void What_sat_well_and_was_not_eaten_is_made_easier_to_eat()
    {
        var half = Clean with
        {
            Latest = Rehearsed(TrialVerdict.Pass) with { Compliance = Compliance.NotLoaded },
        };

        Assert.Equal(["shift-to-drinks", "more-sittings"], Keys(half));
        Assert.Equal(
            ["more-sittings"],
            Keys(half with { Adjustments = new Adjustments { ThirstOnly = true } })
        );
    }

    [Fact]
    public void A_failed_full_rehearsal_steps_back_a_quarter()
    {
        var first = Proposals.For(Clean with { Latest = Rehearsed(TrialVerdict.Fail) })[0];

        Assert.Equal("step-back", first.Key);
        Assert.Equal(new CarbohydrateStep(7.5m), first.Change);
    }

    [Fact]
    public void A_failed_partial_leaves_the_amount_alone() =>
        Assert.DoesNotContain(
            Proposals.For(
                Clean with
                {
                    Latest = Rehearsed(TrialVerdict.Fail, RehearsalKind.Partial),
                }
            ),
            p => p.Change is CarbohydrateStep
        );

    [Fact]
    public void Two_fails_at_one_amount_go_to_the_last_clean_amount_even_below_ten()
    {
        var clean = Rehearsed(TrialVerdict.Pass, RehearsalKind.Partial) with
        {
            PlannedGPerKg = 7.5m,
            EatenGPerKg = 7.27m,
        };
        var twice = Clean with
        {
            Latest = Rehearsed(TrialVerdict.Fail),
            Earlier = [clean, Rehearsed(TrialVerdict.Fail)],
        };

        var first = Proposals.For(twice)[0];
        Assert.Equal("last-clean-amount", first.Key);
        Assert.Equal(new CarbohydrateStep(7.2m), first.Change);
        Assert.Equal("step-back", Proposals.For(twice with { Earlier = [clean] })[0].Key);
    }

    [Fact]
    public void A_likely_food_goes_before_the_amount()
    {
        var bad = Trials.Of("", bad: true) with
        {
            Doses = ImmutableDictionary<string, double>.Empty.Add("toast", 1),
        };
        var suspected = Clean with
        {
            Latest = Rehearsed(TrialVerdict.Fail),
            Suspects = SuspectFoods.Of([bad, bad, bad]),
        };

        var proposals = Proposals.For(suspected);
        Assert.Equal(["leave-out-food", "step-back"], proposals.Take(2).Select(p => p.Key));
        Assert.Equal(new LeaveOutFood("toast"), proposals[0].Change);
        Assert.Contains(SuspectGroup.Disclaimer, proposals[0].Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void Trouble_of_the_lower_gut_alone_is_first_repeated_unchanged()
    {
        var lower = Rehearsed(TrialVerdict.Adapt, symptom: SymptomItem.LowerPain);
        var once = Clean with { Latest = lower };

        Assert.Equal(["repeat-unchanged", "lower-fibre", "more-sittings"], Keys(once));
        Assert.Equal(["lower-fibre", "more-sittings"], Keys(once with { Earlier = [lower] }));
        Assert.DoesNotContain(
            "lower-fibre",
            Keys(once with { Adjustments = new Adjustments { NoLowResidue = true } })
        );
    }

    [Fact]
    public void Trouble_of_the_stomach_asks_for_less_bulk() =>
        Assert.Equal(
            ["shift-to-drinks", "more-sittings", "lower-fibre"],
            Keys(Clean with { Latest = Rehearsed(TrialVerdict.Adapt) })
        );

    [Fact]
    public void After_a_warning_sign_nothing_is_proposed()
    {
        var latest = Rehearsed(TrialVerdict.Fail);
        Assert.Empty(
            Proposals.For(
                Clean with
                {
                    Latest = latest with
                    {
                        Feedback = latest.Feedback with { WarningSigns = [WarningSign.ChestPain] },
                    },
                }
            )
        );
    }

    [Fact]
    public void Changes_of_the_plan_keep_to_what_they_say()
    {
        var plan = Sample.Plan();

        Assert.All(
            new LeaveOutFood("toast").Apply(plan).Days.SelectMany(d => d.Occasions),
            o => Assert.Empty(o.Portions)
        );
        Assert.All(
            new HalveFood("toast").Apply(plan).Days.SelectMany(d => d.Occasions),
            o => Assert.Equal((1, true), (o.Portions[0].Steps, o.Portions[0].IsLocked))
        );
        Assert.Equal(
            plan.Days.Select(d => d.Limits.FibreMaxG * 0.5m),
            new LowerFibre(0.5m).Apply(plan).Days.Select(d => d.Limits.FibreMaxG)
        );
        Assert.Equal(
            plan.Days.Select(d => d.Limits.OccasionWeightMaxG * 0.85m),
            new LighterSittings(0.85m).Apply(plan).Days.Select(d => d.Limits.OccasionWeightMaxG)
        );
        Assert.False(new LowerFibre(0.5m).NeedsTargets(plan));
    }

    [Fact]
    public void Changes_of_choices_drop_the_own_values_that_would_hide_them()
    {
        var own = new TargetOverride(TargetKeys.CarbohydrateRate, 11, 10, "A.", default, "asked");
        var other = own with { Key = TargetKeys.Fat };
        var plan = Sample.Plan() with { Choices = new LoadingChoices { Overrides = [own, other] } };
        var step = new CarbohydrateStep(7.5m);

        Assert.True(step.NeedsTargets(plan));
        Assert.Equal(7.5m, step.Apply(plan.Choices).CarbohydrateGPerKg);
        Assert.Equal([other], step.Apply(plan.Choices).Overrides);
        Assert.Equal(0.4m, new ShiftToDrinks(0.4m).Apply(plan).Choices.DrinksShare);
        Assert.Equal(7, new SittingsPerDay(7).Apply(plan).Choices.OccasionsPerDay);
    }

    private static IEnumerable<string> Keys(ProposalCase rehearsed) =>
        Proposals.For(rehearsed).Select(p => p.Key);

    private static RehearsalReview Rehearsed(
        TrialVerdict verdict,
        RehearsalKind kind = RehearsalKind.Full,
        SymptomItem symptom = SymptomItem.UpperBloating
    )
    {
        var score = verdict switch
        {
            TrialVerdict.Pass => 0,
            TrialVerdict.Adapt => 3,
            _ => 6,
        };
        return Sample.Review(
            EatenOccasion.AsPlanned,
            new Feedback
            {
                ReceivedAt = default,
                Symptoms = [new(symptom, SymptomMoment.End, score)],
            },
            Sample.Full with
            {
                Kind = kind,
            }
        ) with
        {
            Compliance = Compliance.Met,
            EatenGPerKg = 10,
        };
    }
}
