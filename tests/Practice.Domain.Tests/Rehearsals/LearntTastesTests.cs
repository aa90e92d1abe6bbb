using Practice.Domain.Clients;
using Practice.Domain.Rehearsals;

namespace Practice.Domain.Tests.Rehearsals;

public class LearntTastesTests
{
    [Fact]
    public void What_sat_well_at_full_dose_is_tolerated_and_nothing_else_is()
    {
        var learnt = Learn(Tastes.Unknown, Trials.Of("ab", bad: false), Trials.Of("c", false, 0.5));
        Assert.Equal(["a", "b"], learnt.Tolerated.Order(StringComparer.Ordinal));
        Assert.Empty(learnt.Suspect);
    }

    [Fact]
    public void A_food_that_brings_trouble_alone_and_again_is_suspect_and_no_more_tolerated()
    {
        var before = new Tastes { Tolerated = ["a"] };
        var learnt = Learn(
            before,
            Trials.Of("a", bad: true),
            Trials.Of("a", bad: true),
            Trials.Of("a", bad: true)
        );
        Assert.Equal(["a"], learnt.Suspect);
        Assert.Empty(learnt.Tolerated);
    }

    [Fact]
    public void What_was_left_out_on_purpose_is_avoided_though_the_trials_leave_it_in_doubt()
    {
        var suspects = SuspectFoods.Of([Trials.Of("abcd", bad: true)]);
        var learnt = LearntTastes.Of(Tastes.Unknown, suspects, ["b"]);
        Assert.Equal(["b"], learnt.Suspect);
    }

    [Fact]
    public void What_was_entered_by_hand_stays_until_the_trials_clear_it()
    {
        var before = new Tastes
        {
            Suspect = ["a", "z"],
            Likes = ["a"],
            Dislikes = ["q"],
        };
        var learnt = Learn(
            before,
            Trials.Of("a", bad: false),
            Trials.Of("a", bad: false),
            Trials.Of("a", bad: false)
        );
        Assert.Equal(["z"], learnt.Suspect);
        Assert.Equal(before.Likes, learnt.Likes);
        Assert.Equal(before.Dislikes, learnt.Dislikes);
    }

    private static Tastes Learn(Tastes before, params FoodTrial[] trials) =>
        LearntTastes.Of(before, SuspectFoods.Of(trials), []);
}
