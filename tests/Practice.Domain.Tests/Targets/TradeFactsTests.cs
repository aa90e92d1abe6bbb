using Practice.Domain.Clients;
using Practice.Domain.Physiology;
using Practice.Domain.Targets;

namespace Practice.Domain.Tests.Targets;

/// <summary>Facts of the trade, common practice without a source, that the defaults must agree with.</summary>
public class TradeFactsTests
{
    private static readonly LoadingTargets Seventy = Athlete.MiddlingMan.Targets();

    // X02: 36 to 48 h give leeway; agrees with Thomas 2016.
    [Fact]
    public void The_window_is_36_to_48_h_unless_chosen_otherwise() =>
        Assert.InRange(new LoadingChoices().WindowHours, 36, 48);

    // X01: 24 h can be enough; agrees with Bussau 2002.
    [Fact]
    public void A_day_of_loading_covers_nine_tenths_of_the_way()
    {
        var curve = Seventy.Glycogen;
        Assert.InRange(
            (curve[24].Expected - curve[0].Expected) / (182 - curve[0].Expected),
            0.9m,
            1
        );
    }

    // X07, X08: 2 to 3 % over a set distance. Hawley 1997, from memory.
    [Fact]
    public void Loading_is_worth_two_to_three_percent() =>
        Assert.Equal((2m, 3m), (Seventy.Benefit.Low, Seventy.Benefit.High));

    // About 1 to 1.5 kg more on the scale: glycogen and water of Olsson and Saltin 1970.
    [Fact]
    public void Seventy_kilograms_gain_one_to_one_and_a_half() =>
        Assert.InRange(Seventy.BodyMassGain.Aim!.Value, 1, 1.5m);

    // P07: drinks bring 30 %, 210 g of 700 g.
    [Fact]
    public void Drinks_bring_210_of_700_g() =>
        Assert.Equal(210m, Seventy.DrinksShare.Aim * Seventy.CarbohydratePerDay.Aim / 100);

    // X05: about 2500 kcal stored as carbohydrate, within 500.
    [Fact]
    public void Usual_stores_are_about_2500_kcal()
    {
        var grams =
            GlycogenStores.MuscleG(70, Sex.Male, MuscleGlycogen.Usual) + GlycogenStores.UsualLiverG;
        Assert.InRange((double)FoodEnergy.Carbohydrate * grams, 2000, 3000);
    }
}
