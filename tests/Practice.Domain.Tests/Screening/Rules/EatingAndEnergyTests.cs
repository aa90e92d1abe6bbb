using Practice.Domain.Screening;
using Practice.Domain.Screening.Questions;

namespace Practice.Domain.Tests.Screening.Rules;

public class EatingAndEnergyTests
{
    private static readonly Adjustments NoNumbers = new() { NumberFree = true, NoWeighing = true };

    // common practice
    [Theory]
    [InlineData("present")]
    [InlineData("suspected")]
    public void A_present_or_suspected_eating_disorder_holds_and_shows_no_numbers(string choice)
    {
        var outcome = Screened.By(
            EatingAndEnergy.EatingDisorder,
            EatingAndEnergy.EatingDisorder.Choices.Single(c => c.Key == choice)
        );

        Assert.Equal(["eating-disorder"], outcome.HoldKeys());
        Screened.Same(NoNumbers, outcome.Adjustments);
    }

    // common practice: whatever the client says she can handle
    [Fact]
    public void A_past_eating_disorder_never_shows_numbers_and_needs_no_clearance()
    {
        var outcome = Screened.By(EatingAndEnergy.EatingDisorder, EatingAndEnergy.InThePast);

        Assert.Empty(outcome.Holds);
        Assert.False(outcome.Caution("number-free").ForClient);
        Screened.Same(NoNumbers, outcome.Adjustments);
    }

    // IOC consensus 2023 (Mountjoy) and its clinical tool (Stellingwerff): the clinician's colour, never computed
    [Fact]
    public void A_red_light_holds_and_an_orange_one_stops_weighing()
    {
        var red = Screened.By(EatingAndEnergy.RedsColour, EatingAndEnergy.Red);
        var orange = Screened.By(EatingAndEnergy.RedsColour, EatingAndEnergy.Orange);

        Assert.Equal(["reds-red"], red.HoldKeys());
        Assert.Empty(orange.Holds);
        Screened.Same(new() { NoWeighing = true }, red.Adjustments);
        Screened.Same(new() { NoWeighing = true }, orange.Adjustments);
        Assert.Equal(["energy-check", "reds-orange", "reds-referral"], orange.CautionKeys());
    }

    [Fact]
    public void A_yellow_light_refers_and_a_green_one_says_nothing()
    {
        var yellow = Screened.By(EatingAndEnergy.RedsColour, EatingAndEnergy.Yellow);
        Assert.Equal(["energy-check", "reds-referral"], yellow.CautionKeys());
        Screened.Same(Adjustments.None, yellow.Adjustments);

        Assert.Empty(Screened.By(EatingAndEnergy.RedsColour, EatingAndEnergy.Green).CautionKeys());
    }

    // any primary indicator of the clinical tool: warn and refer
    [Fact]
    public void Each_sign_of_low_energy_refers_without_a_colour_or_a_hold()
    {
        foreach (var sign in EatingAndEnergy.EnergySigns.Choices.Remove(Choice.NoneOfThese))
        {
            var outcome = Screened.By(EatingAndEnergy.EnergySigns, sign);
            Assert.Empty(outcome.Holds);
            Assert.Equal(["energy-check", "reds-referral"], outcome.CautionKeys());
        }
        Assert.Equal(7, EatingAndEnergy.EnergySigns.Choices.Length);
    }
}
