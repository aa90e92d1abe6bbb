namespace Practice.Domain.Rehearsals;

/// <summary>
/// Bayesian logistic regression at its most probable point, by Newton's method with halved steps; the log posterior is
/// strictly concave, so there is one. Standard errors are roots of the diagonal of the inverse Hessian. Normal priors
/// keep it finite where the data separate (idea: Gelman 2008). Checks N11 to N13 to 1e-3.
/// </summary>
internal sealed record LogisticMap(double[] Coefficients, double[] StandardErrors)
{
    private const int MostSteps = 100;
    private const double Converged = 1e-10;

    /// <summary>Fits the intercept, first, and a slope for each column.</summary>
    /// <param name="rows">Values of each trial, the same number in each.</param>
    /// <param name="outcomes">Whether the trial had the outcome.</param>
    /// <param name="interceptMean">Prior mean of the intercept, logit.</param>
    /// <param name="deviation">Prior standard deviation of intercept and slopes, logit, above 0.</param>
    public static LogisticMap Fit(
        double[][] rows,
        bool[] outcomes,
        double interceptMean,
        double deviation
    )
    {
        var design = rows.Select(row => (double[])[1, .. row]).ToArray();
        var size = design.Length == 0 ? 1 : design[0].Length;
        var prior = new double[size];
        prior[0] = interceptMean;
        var precision = 1 / (deviation * deviation);
        var at = (double[])[.. prior];
        for (var step = 0; step < MostSteps; step++)
        {
            var move = Solve(
                Curvature(design, at, precision),
                Slope(design, outcomes, at, prior, precision)
            );
            var next = Uphill(at, move, b => LogPosterior(design, outcomes, b, prior, precision));
            var moved = at.Zip(next, (a, b) => Math.Abs(a - b)).Max();
            at = next;
            if (moved < Converged)
                break;
        }
        var curvature = Curvature(design, at, precision);
        var errors = Enumerable
            .Range(0, size)
            .Select(i => Math.Sqrt(Solve(curvature, Unit(size, i))[i]));
        return new(at, [.. errors]);
    }

    /// <summary>Chance from a logit.</summary>
    public static double Chance(double logit) => 1 / (1 + Math.Exp(-logit));

    private static double[] Uphill(double[] at, double[] move, Func<double[], double> height)
    {
        var start = height(at);
        for (var part = 1d; part > 1e-6; part /= 2)
        {
            var next = at.Zip(move, (a, m) => a + part * m).ToArray();
            if (height(next) >= start)
                return next;
        }
        return at;
    }

    private static double LogPosterior(
        double[][] design,
        bool[] outcomes,
        double[] at,
        double[] prior,
        double precision
    )
    {
        var fit = design.Zip(outcomes, (row, outcome) => LogChance(Dot(row, at), outcome)).Sum();
        return fit - precision / 2 * at.Zip(prior, (a, p) => (a - p) * (a - p)).Sum();
    }

    private static double LogChance(double logit, bool outcome)
    {
        var against = outcome ? -logit : logit;
        return -(Math.Max(0, against) + Math.Log(1 + Math.Exp(-Math.Abs(against))));
    }

    private static double[] Slope(
        double[][] design,
        bool[] outcomes,
        double[] at,
        double[] prior,
        double precision
    )
    {
        var slope = at.Zip(prior, (a, p) => -precision * (a - p)).ToArray();
        foreach (var (row, outcome) in design.Zip(outcomes))
        {
            var miss = (outcome ? 1 : 0) - Chance(Dot(row, at));
            for (var i = 0; i < slope.Length; i++)
                slope[i] += miss * row[i];
        }
        return slope;
    }

    // minus the Hessian: positive definite, since the prior adds to its diagonal
    private static double[][] Curvature(double[][] design, double[] at, double precision)
    {
        var curvature = at.Select((_, i) => Unit(at.Length, i, precision)).ToArray();
        foreach (var row in design)
        {
            var chance = Chance(Dot(row, at));
            for (var i = 0; i < at.Length; i++)
            for (var j = 0; j < at.Length; j++)
                curvature[i][j] += chance * (1 - chance) * row[i] * row[j];
        }
        return curvature;
    }

    // Cholesky: matrix = L L', then forward and back
    private static double[] Solve(double[][] matrix, double[] right)
    {
        var n = right.Length;
        var lower = new double[n, n];
        for (var i = 0; i < n; i++)
        for (var j = 0; j <= i; j++)
        {
            var rest = matrix[i][j];
            for (var k = 0; k < j; k++)
                rest -= lower[i, k] * lower[j, k];
            lower[i, j] = i == j ? Math.Sqrt(rest) : rest / lower[j, j];
        }
        var x = (double[])[.. right];
        for (var i = 0; i < n; i++)
        {
            for (var k = 0; k < i; k++)
                x[i] -= lower[i, k] * x[k];
            x[i] /= lower[i, i];
        }
        for (var i = n - 1; i >= 0; i--)
        {
            for (var k = i + 1; k < n; k++)
                x[i] -= lower[k, i] * x[k];
            x[i] /= lower[i, i];
        }
        return x;
    }

    private static double Dot(double[] left, double[] right) =>
        left.Zip(right, (l, r) => l * r).Sum();

    private static double[] Unit(int size, int at, double value = 1)
    {
        var unit = new double[size];
        unit[at] = value;
        return unit;
    }
}
