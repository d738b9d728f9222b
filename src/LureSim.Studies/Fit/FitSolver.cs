using MathNet.Numerics.LinearAlgebra;

namespace LureSim.Studies.Fit;

/// <summary>Where least squares end.</summary>
/// <param name="Z">Numbers in z.</param>
/// <param name="Computed">Readings there.</param>
/// <param name="Cost">Sum of squares of readings and guesses.</param>
internal sealed record FitPoint(double[] Z, double[] Computed, double Cost);

/// <summary>
/// Readings and guesses together by the method of Gauss and Newton, damped after Levenberg and Marquardt: the sum of squares of
/// (reading - model)/error plus that of z, which is (number - guess)/doubt, falls to its least.
/// </summary>
/// <remarks>
/// Own loop on MathNet's matrices, as for a rod: MathNet's minimiser scales its covariance by the residuals of all rows, guesses among them, and it
/// asks for one row of slopes at a time, while here all of them are run at once on all cores.
/// </remarks>
internal sealed class FitSolver(FitSystem system, double scale)
{
    private const int MostSteps = 30;
    private const double Width = 0.1, Tolerance = 0.02, MostDamping = 1e5, KeptDamping = 1.0, GoodShare = 0.02;

    /// <summary>The sum at readings as computed.</summary>
    public double Cost(double[] z, double[] computed)
    {
        Vector<double> misses = system.Misses(computed, scale);
        return misses.DotProduct(misses) + z.Sum(v => v * v);
    }

    /// <summary>Searches from a start.</summary>
    /// <param name="start">Numbers in z.</param>
    /// <param name="done">Called after each step.</param>
    public FitPoint Solve(double[] start, Action done)
    {
        double[] z = [.. start], at = system.Compute([z])[0];
        double cost = Cost(z, at), damping = 1e-3;
        Matrix<double>? kept = null;
        for (int step = 0; step < MostSteps; step++)
        {
            bool isFresh = kept is null;
            Matrix<double> slopes = kept ?? system.Slopes(z, at, Width, false, scale);
            kept = null;
            (Matrix<double> normal, Vector<double> pull) = Held(z, slopes, system.Misses(at, scale));
            done();
            if (pull.DotProduct(normal.Cholesky().Solve(pull)) <= Tolerance)
            {
                break;
            }

            bool better = false;
            while (!better && damping <= (isFresh ? MostDamping : KeptDamping))
            {
                // Several dampings at once: as many runs as cores have time for anyway.
                double[] dampings = [damping, 10.0 * damping, 1e3 * damping];
                double[][] trials = [.. dampings.Select(d => Within(z, (normal + Matrix<double>.Build.DiagonalOfDiagonalVector(d * normal.Diagonal())).Cholesky().Solve(pull)))];
                double[][] values = system.Compute(trials);
                double[] costs = [.. trials.Zip(values, Cost)];
                int best = Array.IndexOf(costs, costs.Min());
                if (costs[best] < cost)
                {
                    better = true;
                    kept = isFresh || cost - costs[best] > GoodShare * cost ? Mended(slopes, z, at, trials[best], values[best]) : null;
                    (z, at) = (trials[best], values[best]);
                    bool small = cost - costs[best] < Tolerance;
                    (cost, damping) = (costs[best], Math.Max(1e-6, 0.1 * dampings[best]));
                    if (small)
                    {
                        return new(z, at, cost);
                    }
                }
                else
                {
                    damping *= 1e4;
                }
            }

            if (!better && isFresh)
            {
                break;
            }

            damping = better ? damping : 1e-3;
        }

        return new(z, at, cost);
    }

    /// <summary>Slopes for bands.</summary>
    public Matrix<double> Slopes(FitPoint at) => system.Slopes(at.Z, at.Computed, Width, true, scale);

    /// <summary>The matrix whose inverse is the covariance of the numbers.</summary>
    public static Matrix<double> Normal(Matrix<double> slopes) =>
        slopes.TransposeThisAndMultiply(slopes) + Matrix<double>.Build.DenseIdentity(slopes.ColumnCount);

    // Slopes are dear. After a step they are mended by what it showed (the rank-one rule of Broyden 1965, from memory) and serve for another, as long as
    // steps bring much.
    private Matrix<double> Mended(Matrix<double> slopes, double[] z, double[] at, double[] next, double[] then)
    {
        Vector<double> move = Vector<double>.Build.Dense(next) - Vector<double>.Build.Dense(z);
        Vector<double> seen = system.Misses(at, scale) - system.Misses(then, scale);
        return slopes + ((seen - (slopes * move)).OuterProduct(move) / move.DotProduct(move));
    }

    // A number that is pushed against its end rests there.
    private (Matrix<double> Normal, Vector<double> Pull) Held(double[] z, Matrix<double> slopes, Vector<double> misses)
    {
        Matrix<double> normal = Normal(slopes);
        Vector<double> pull = slopes.TransposeThisAndMultiply(misses) - Vector<double>.Build.Dense(z);
        for (int i = 0; i < z.Length; i++)
        {
            if ((z[i] <= system.Unknowns[i].LeastZ && pull[i] < 0.0) || (z[i] >= system.Unknowns[i].MostZ && pull[i] > 0.0))
            {
                normal.ClearRow(i);
                normal.ClearColumn(i);
                (normal[i, i], pull[i]) = (1.0, 0.0);
            }
        }

        return (normal, pull);
    }

    private double[] Within(double[] z, Vector<double> move) =>
        [.. z.Select((v, i) => Math.Clamp(v + move[i], system.Unknowns[i].LeastZ, system.Unknowns[i].MostZ))];
}
