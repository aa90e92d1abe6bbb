using Practice.Domain.Rehearsals;

namespace Practice.Domain.Tests.Rehearsals;

/// <summary>The sample plan is 10 g/kg for 70 kg over 36 h.</summary>
public class UsualRehearsalTests
{
    [Fact]
    public void A_full_one_takes_the_last_two_days_whole_with_the_race_breakfast()
    {
        var details = Of(RehearsalKind.Full);
        Assert.Equal((2, 1), (details.Part.FirstDay, details.Part.LastDay));
        Assert.Equal(1, details.Dose);
        // 1 g/kg for each of 3 h
        Assert.Equal(
            (3, 210),
            (details.Breakfast!.HoursBeforeRun, details.Breakfast.CarbohydrateG)
        );
    }

    // a first step is one day at 7 to 8 g/kg (common practice)
    [Fact]
    public void A_partial_one_takes_the_eve_at_seven_and_a_half_grams()
    {
        var details = Of(RehearsalKind.Partial);
        Assert.Equal(1, details.Part.FirstDay);
        Assert.Equal(0.75m, details.Dose);
    }

    [Fact]
    public void Both_can_be_booked_as_they_are()
    {
        foreach (var kind in Enum.GetValues<RehearsalKind>())
        {
            var booked = Rehearsal.Book(
                Guid.NewGuid(),
                Guid.NewGuid(),
                Guid.NewGuid(),
                Of(kind),
                Sample.Plan()
            );
            Assert.NotEmpty(booked.Sittings());
            Assert.All(booked.Sittings(), s => Assert.True(s.Date < Sample.RunOn));
        }
    }

    private static RehearsalDetails Of(RehearsalKind kind) =>
        UsualRehearsal.Of(RehearsalPlace.On(kind, Sample.RunOn), Guid.NewGuid(), Sample.Plan());
}
