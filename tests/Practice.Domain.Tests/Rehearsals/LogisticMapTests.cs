using Practice.Domain.Rehearsals;

namespace Practice.Domain.Tests.Rehearsals;

/// <summary>
/// N11 to N13: complete separation, priors N(-1.5, 1.5²) and N(0, 1.5²); Newton's method. To 1e-5, standard errors and
/// the risk without exposure to the digits they are given with.
/// </summary>
public class LogisticMapTests
{
    private const double Tolerance = 1e-5;
    private const double LastDigit = 1e-3;

    private static readonly LogisticMap Fit = LogisticMap.Fit(
        [
            [1],
            [1],
            [0],
            [0],
        ],
        [true, true, false, false],
        DoseResponse.InterceptMean,
        DoseResponse.PriorDeviation
    );

    [Fact]
    public void N11_intercept()
    {
        Assert.Equal(-1.04738, Fit.Coefficients[0], Tolerance);
        Assert.Equal(0.973, Fit.StandardErrors[0], LastDigit);
    }

    [Fact]
    public void N12_slope()
    {
        Assert.Equal(1.621397, Fit.Coefficients[1], Tolerance);
        Assert.Equal(1.162, Fit.StandardErrors[1], LastDigit);
    }

    [Fact]
    public void N13_risk_when_exposed_and_when_not()
    {
        Assert.Equal(0.639689, LogisticMap.Chance(Fit.Coefficients.Sum()), Tolerance);
        Assert.Equal(0.2597, LogisticMap.Chance(Fit.Coefficients[0]), LastDigit);
    }

    [Fact]
    public void Without_trials_it_gives_back_the_prior()
    {
        var prior = LogisticMap.Fit([], [], -1.5, 1.5);

        Assert.Equal([-1.5], prior.Coefficients);
        Assert.Equal(1.5, prior.StandardErrors[0], 1e-9);
    }
}
