using CsCheck;
using NodaTime;
using Practice.Domain.Clients;
using Practice.Domain.Physiology;

namespace Practice.Domain.Tests.Physiology;

public class PhysiologyLawsTests
{
    private static readonly Gen<double> Dose = Gen.Double[3, 14];
    private static readonly Gen<double> Start = Gen.Double[45, 175];
    private static readonly Gen<double> Hours = Gen.Double[0, 96];
    private static readonly Gen<double> Mass = Gen.Double[25, 200];
    private static readonly Gen<Sex> Sexes = Gen.Bool.Select(female =>
        female ? Sex.Female : Sex.Male
    );

    [Fact]
    public void Glycogen_never_falls_while_loading_and_stays_below_its_plateau() =>
        Gen.Select(Start, Dose, Hours, Hours)
            .Sample(
                (start, dose, one, other) =>
                {
                    var loading = GlycogenLoading.Expected;
                    var early = loading.At(start, dose, Math.Min(one, other));
                    var late = loading.At(start, dose, Math.Max(one, other));
                    return start <= early
                        && early <= late
                        && late <= Math.Max(start, loading.PlateauAt(dose));
                }
            );

    [Fact]
    public void A_higher_dose_never_means_less_glycogen() =>
        Gen.Select(Start, Dose, Dose, Hours)
            .Sample(
                (start, one, other, hours) =>
                    GlycogenLoading.Expected.At(start, Math.Min(one, other), hours)
                    <= GlycogenLoading.Expected.At(start, Math.Max(one, other), hours)
            );

    [Fact]
    public void No_more_glycogen_is_stored_than_three_quarters_of_what_was_eaten() =>
        Gen.Select(Start, Dose, Hours, Mass, Sexes)
            .Sample(
                (start, dose, hours, mass, sex) =>
                {
                    var end = StorageLimit.Hold(
                        GlycogenLoading.Expected,
                        start,
                        mass,
                        sex,
                        dose,
                        hours
                    );
                    var stored = GlycogenStores.MuscleG(mass, sex, end - start);
                    return stored <= StorageLimit.MostStoredG(mass, dose, hours) + 1e-6;
                }
            );

    [Fact]
    public void In_the_first_hours_food_and_not_muscle_limits_the_rise()
    {
        var held = StorageLimit.Hold(GlycogenLoading.Expected, 95, 70, Sex.Male, 10, hours: 3);
        Assert.InRange(held, 95, GlycogenLoading.Expected.At(95, 10, 3) - 1);
    }

    // Observed: Bussau 2002, Fairchild 2002 (standard error 13.1), Shiose 2016. The model claims about 20 mmol/kg.
    [Theory]
    [InlineData(95, 10, 24, 180)]
    [InlineData(95, 10, 72, 180)]
    [InlineData(109.1, 10.3, 24, 198.2)]
    [InlineData(72.7, 12, 72, 169.4)]
    public void The_loading_model_comes_within_21_of_what_was_observed(
        double start,
        double dose,
        double hours,
        double observed
    ) =>
        Assert.InRange(
            GlycogenLoading.Expected.At(start, dose, hours),
            observed - 21,
            observed + 21
        );

    [Fact]
    public void Carbohydrate_brings_a_growing_share_of_energy_as_intensity_rises() =>
        Gen.Select(Gen.Double[0, 1.5], Gen.Double[0, 1.5])
            .Sample(
                (one, other) =>
                    CarbohydrateShare.At(Math.Min(one, other))
                    <= CarbohydrateShare.At(Math.Max(one, other))
            );

    [Fact]
    public void The_time_found_for_a_VDOT_has_that_VDOT() =>
        Gen.Select(Gen.Double[1500, 42195], Gen.Double[25, 80])
            .Sample(
                (metres, vdot) =>
                    Math.Abs(
                        DanielsGilbert.Vdot(metres, DanielsGilbert.TimeAt(vdot, metres)) - vdot
                    ) < 1e-3
            );

    [Fact]
    public void Riegel_returns_the_time_itself_over_the_same_distance() =>
        Gen.Select(Gen.Double[1, 100], Gen.Int[180, 50_000])
            .Sample(
                (km, seconds) =>
                    Riegel.Time(Duration.FromSeconds(seconds), km, km)
                    == Duration.FromSeconds(seconds)
            );
}
