using NodaTime;
using Practice.Domain.Course;
using Practice.Domain.Physiology;

namespace Practice.Domain.Tests.Course;

/// <summary>Published and derived values of the course's relations, with their sources.</summary>
public class CourseCheckValueTests
{
    // Minetti 2002, J Appl Physiol 93:1039-46
    [Theory]
    [InlineData("M01", 0, 3.6)]
    [InlineData("M02", 0.05, 4.685196)]
    [InlineData("M03", 0.1, 5.968214)]
    [InlineData("M04", 0.2, 9.006688)]
    [InlineData("M05", -0.05, 2.745924)]
    [InlineData("M06", -0.1, 2.151706)]
    [InlineData("M07", -0.2, 1.800032)]
    [InlineData("M08", 0.45, 19.426015)]
    [InlineData("M09", -0.45, 4.032305)]
    [InlineData("M13", 0.60, 19.426015)]
    public void Running_costs_by_slope_what_was_measured(
        string check,
        double gradient,
        double cost
    ) => Within(check, cost, GradientCost.Running(gradient), 0.0005);

    // Minetti 2002
    [Theory]
    [InlineData("M10", 0, 2.5)]
    [InlineData("M11", 0.10, 4.899135)]
    public void Walking_costs_by_slope_what_was_measured(
        string check,
        double gradient,
        double cost
    ) => Within(check, cost, GradientCost.Walking(gradient), 0.0005);

    // derived from Minetti 2002
    [Fact]
    public void Running_is_cheapest_at_the_slope_the_polynomial_says()
    {
        var cheapest = Enumerable
            .Range(-3000, 3001)
            .Select(i => i / 10_000.0)
            .MinBy(GradientCost.Running);
        Within("M12", -0.1814, cheapest, 0.001);
        Within("M14", 0.860421, GradientCost.Running(0) * 1000 / 4184, 0.0005);
    }

    // derived from Minetti 2002; K04 with the own rule of the downhill floor
    [Theory]
    [InlineData("K01", 0, false, 293.715)]
    [InlineData("K02", 1, false, 382.253)]
    [InlineData("K03", 2, false, 224.033)]
    [InlineData("K04", 2, true, 232.15)]
    public void At_an_even_effort_time_follows_the_cost(
        string check,
        int stretch,
        bool floor,
        double seconds
    )
    {
        double[] gradients = [0, 0.05, -0.05];
        // the floor applies to the third stretch alone: the check keeps the shares of the others as they are
        var ratios = gradients.Select(g => GradientCost.RunningRatio(g, floor)).ToList();
        Within(check, seconds, 900 * ratios[stretch] / ratios.Sum(), 0.05);
    }

    [Fact]
    public void A_slope_up_and_down_is_longer_than_the_level() =>
        Within(
            "K05",
            3064.2,
            new[] { 0, 0.05, -0.05 }.Sum(g =>
                1000 * GradientCost.RunningRatio(g, downhillFloor: false)
            ),
            0.5
        );

    // haversine, R = 6 371 000 m
    [Theory]
    [InlineData("K06", 51, 0, 52, 0, 111194.93)]
    [InlineData("K07", 51.5, -0.1, 51.5, 0, 6922.05)]
    public void Places_are_as_far_apart_as_on_a_sphere(
        string check,
        double lat1,
        double lon1,
        double lat2,
        double lon2,
        double metres
    ) => Within(check, metres, GreatCircle.Metres(lat1, lon1, lat2, lon2), 1);

    // definition
    [Theory]
    [InlineData("K08", 30, 8958.4, 1)]
    [InlineData("K12", 5, 24.884 * 60, 0.6)]
    public void Stations_are_passed_when_an_even_pace_says(
        string check,
        double km,
        double seconds,
        double off
    )
    {
        var pace = Marathon.In(210).Case.Pace;
        Within(check, seconds, pace.At((decimal)km).TotalSeconds, off);
    }

    // own rule
    [Fact]
    public void Feeds_come_every_twenty_minutes()
    {
        var times = FeedTimes.For(Duration.FromMinutes(210));
        Within("K09", 9, times.Length, 0);
        Within("K10", 27.222, 70 * 3.5 / times.Length, 0.05);
        Within("K11", 180, times[^1].TotalMinutes, 0);
    }

    // Jeukendrup 2014; Rowlands 2015; Podlogar 2022
    [Theory]
    [InlineData("T14", 90, 0.5, 60, 30)]
    [InlineData("T15", 108, 0.8, 60, 48)]
    [InlineData("P10", 120, 0.8, 66.667, 53.333)]
    public void A_rate_splits_by_its_ratio(
        string check,
        double total,
        double ratio,
        double glucose,
        double fructose
    )
    {
        var split = SugarSplit.Of(total, ratio);
        Within(check, glucose, split.GlucoseGPerHour, 0.05);
        Within(check, fructose, split.FructoseGPerHour, 0.05);
    }

    // definition; ideal solution
    [Fact]
    public void Drinks_are_as_strong_as_they_are()
    {
        Within("T16", 8, DrinkStrength.Percent(60, 750), 0.01);
        Within("T17", 312.5, DrinkStrength.FluidMl(25, 8), 0.5);
        Within("T18", 333.04, DrinkStrength.Osmolality(60, DrinkStrength.HexoseGPerMol), 0.5);
        Within("T19", 175.28, DrinkStrength.Osmolality(60, DrinkStrength.SucroseGPerMol), 0.5);
    }

    // ACSM 2007, MSSE 39:377-90; aim and cap are own rules
    [Theory]
    [InlineData("F03", 1.2, 3.5, 0.8, 0.84)]
    [InlineData("F04", 0.4, 3.0, 0, 0.28)]
    public void Drinking_stays_in_its_window(
        string check,
        double sweat,
        double hours,
        double floor,
        double aim
    )
    {
        var window = DrinkingWindow.Of(70, sweat, hours);
        Within(check, floor, window.FloorLPerHour, 0.001);
        Within("P09", aim, window.AimLPerHour, 0.001);
        Within(check, Math.Min(sweat, 1), window.CeilingLPerHour, 0.001);
    }

    // Guest 2021; EFSA 2015
    [Theory]
    [InlineData("C01", 60, 3, 180)]
    [InlineData("C02", 80, 3, 200)]
    public void A_dose_of_caffeine_is_capped(string check, int mass, int mgPerKg, int mg) =>
        Within(check, mg, (double)CaffeineDose.OneDose(mass, mgPerKg), 0.5);

    // EFSA 2015
    [Fact]
    public void A_day_of_caffeine_is_capped()
    {
        Within("C03", 400, (double)CaffeineDose.ADayMg, 0);
        Within("C06", 80, (double)CaffeineDose.Allowed(150, 320), 0.5);
    }

    // from memory: gross efficiency 0.20 to 0.25
    [Fact]
    public void Cycling_costs_its_work() => Within("E15", 782.2, CyclingEnergy.Kcal(200, 1), 1);

    // Bushman 2020, ACSM Health Fit J 24(4):5-8
    [Theory]
    [InlineData("E03", 93.8, 0.10, 29.764)]
    [InlineData("E04", 80, 0, 11.5)]
    public void Walking_takes_its_oxygen(
        string check,
        double speed,
        double gradient,
        double uptake
    ) => Within(check, uptake, WalkingEnergy.OxygenUptake(speed, gradient), 0.01);

    private static void Within(string check, double expected, double actual, double tolerance) =>
        Assert.True(
            Math.Abs(expected - actual) <= tolerance + 1e-9,
            $"{check}: {actual} is not {expected} ± {tolerance}"
        );
}
