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
    private const int MostSlopes = 10;
    private const double Width = 0.1, Tolerance = 0.02, MostDamping = 1e5, KeptDamping = 1.0, GoodShare = 0.02;

    /// <summary>The sum at readings as computed.</summary>
    public double Cost(double[] z, double[] computed)
    {
        Vector<double> misses = system.Misses(computed, scale);
        return misses.DotProduct(misses) + z.Sum(v => v * v);
    }

    /// <summary>Searches from a start. It ends where the whole step of Gauss and Newton, by slopes taken there, would lower the sum by less than
    /// <see cref="Tolerance"/>, or where no step however short lowers it.</summary>
    /// <param name="start">Numbers in z.</param>
    /// <param name="done">Called after each step.</param>
    public FitPoint Solve(double[] start, Action done)
    {
        double[] z = [.. start], at = system.Compute([z])[0];
        double cost = Cost(z, at), damping = 1e-3;
        Matrix<double>? kept = null;
        for (int taken = 0; taken < MostSlopes;)
        {
            bool isFresh = kept is null;
            taken += isFresh ? 1 : 0;
            Matrix<double> slopes = kept ?? system.Slopes(z, at, Width, false, scale);
            kept = null;
            (Matrix<double> normal, Vector<double> pull) = Held(z, slopes, system.Misses(at, scale));
            done();
            if (pull.DotProduct(normal.Cholesky().Solve(pull)) <= Tolerance)
            {
                if (isFresh)
                {
                    break;
                }

                continue;
            }

            (double[] Z, double[] Computed, double Cost)? next = null;
            for (; next is null && damping <= (isFresh ? MostDamping : KeptDamping); damping *= 1e4)
            {
                next = Step(z, normal, pull, cost, ref damping);
            }

            if (next is not { } better)
            {
                if (isFresh)
                {
                    break;
                }

                damping = 1e-3;
                continue;
            }

            kept = isFresh || cost - better.Cost > GoodShare * cost ? Mended(slopes, z, at, better.Z, better.Computed) : null;
            (z, at, cost) = better;
        }

        return new(z, at, cost);
    }

    // Several dampings at once: as many runs as cores have time for anyway. Null where none lowers the sum; after a step the next begins with less damping.
    private (double[] Z, double[] Computed, double Cost)? Step(double[] z, Matrix<double> normal, Vector<double> pull, double cost, ref double damping)
    {
        double first = damping;
        double[] dampings = [first, 10.0 * first, 1e3 * first];
        double[][] trials = [.. dampings.Select(d => Within(z, (normal + Matrix<double>.Build.DiagonalOfDiagonalVector(d * normal.Diagonal())).Cholesky().Solve(pull)))];
        double[][] values = system.Compute(trials);
        double[] costs = [.. trials.Zip(values, Cost)];
        int best = Array.IndexOf(costs, costs.Min());
        if (!(costs[best] < cost))
        {
            return null;
        }

        // The loop multiplies it once more.
        damping = Math.Max(1e-6, 0.1 * dampings[best]) / 1e4;
        return (trials[best], values[best], costs[best]);
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
