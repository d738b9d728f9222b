using MathNet.Numerics.LinearAlgebra;

namespace LureSim.Model.Bend;

/// <summary>Where least squares end: the numbers, and how readings and doubt hang on them.</summary>
/// <param name="Z">Numbers in units of the doubt before.</param>
/// <param name="Slopes">Change of each reading per number, in standard deviations of the reading.</param>
/// <param name="Covariance">Covariance of the numbers.</param>
internal sealed record Solution(double[] Z, Matrix<double> Slopes, Matrix<double> Covariance);

/// <summary>
/// Readings and guesses together by the method of Gauss and Newton, damped after Levenberg and Marquardt: the sum of squares of
/// (reading - model)/error plus that of (number - guess)/doubt falls to its least.
/// </summary>
/// <remarks>
/// Own loop on MathNet's matrices. MathNet's minimiser scales its covariance by the residuals of all rows, guesses among them, which would make
/// a test of one reading look perfect, and it cannot be told that a trial rod has no shape at all.
/// </remarks>
internal sealed class LeastSquares(BendModel model, CancellationToken stop)
{
    private const int MostSteps = 200;
    private const double Small = 1e-4, Tolerance = 1e-4, MostDamping = 1e10;
    private Neighbour[] _neighbours = [];
    private double[]? _about;

    /// <summary>Finds the least sum.</summary>
    /// <param name="scale">Factor on the errors of what is read on the bent rod.</param>
    /// <param name="start">Where to begin.</param>
    /// <exception cref="ModelException">No rod fits.</exception>
    /// <remarks>It ends where the whole step of Gauss and Newton would lower the sum by less than <see cref="Tolerance"/>: a hundredth of a standard
    /// deviation from the least, or where no step however short lowers it. How small a damped step was says nothing of either.</remarks>
    public Solution Solve(double scale, double[] start)
    {
        double[] z = [.. start];
        double cost = Cost(z, scale), damping = 1e-3;
        for (int step = 0; step < MostSteps; step++)
        {
            Matrix<double> slopes = Slopes(z, scale);
            (Matrix<double> normal, Vector<double> pull) = Held(z, slopes, Misses(z, scale));
            double left = pull.DotProduct(normal.Cholesky().Solve(pull));
            if (left <= Tolerance || (damping > MostDamping && double.IsFinite(cost)))
            {
                return new(z, slopes, Normal(slopes).Inverse());
            }

            double next = double.PositiveInfinity;
            for (; next > cost && damping <= MostDamping; damping = Math.Max(damping, 1e-6) * 10.0)
            {
                Matrix<double> damped = normal + Matrix<double>.Build.DiagonalOfDiagonalVector(damping * normal.Diagonal());
                double[] trial = Within(z, damped.Cholesky().Solve(pull));
                next = Cost(trial, scale);
                if (next <= cost)
                {
                    (z, cost) = (trial, next);
                    damping /= 100.0;
                    break;
                }
            }
        }

        throw new ModelException("No rod was found that bends like this: look for a reading that is typed wrong.", 0.0);
    }

    /// <summary>Misses of all readings, in standard deviations.</summary>
    public Vector<double> Misses(double[] z, double scale)
    {
        BendState rod = model.At(z);
        return Vector<double>.Build.Dense(model.Readings.Count, i =>
            (model.Readings[i].Value - rod.Predict(model.Readings[i].Kind, model.Readings[i].LoadN)) / Sigma(model.Readings[i], scale));
    }

    /// <summary>Error of a reading; what is read on the bent rod may turn out less sure than said.</summary>
    public static double Sigma(Reading reading, double scale) =>
        reading.Sigma * (IsOfBend(reading.Kind) ? scale : 1.0);

    /// <summary>Whether a reading is one of the bent rod.</summary>
    public static bool IsOfBend(ReadingKind kind) => kind is ReadingKind.Drop or ReadingKind.MiddleDrop or ReadingKind.Angle;

    /// <summary>Change of a function of the rod with each number, by central differences.</summary>
    public Vector<double> Slope(double[] z, Func<BendState, double> value) => Slopes(z, 1, (s, _) => value(s))[0];

    /// <summary>The same for several functions at once.</summary>
    /// <param name="z">Numbers.</param>
    /// <param name="count">How many functions.</param>
    /// <param name="value">Value of one of them for a rod.</param>
    public Vector<double>[] Slopes(double[] z, int count, Func<BendState, int, double> value)
    {
        Vector<double>[] slopes = [.. Enumerable.Range(0, count).Select(_ => Vector<double>.Build.Dense(BendModel.Count))];
        foreach ((int number, BendState low, BendState high, double width) in Neighbours(z))
        {
            for (int i = 0; i < count; i++)
            {
                slopes[i][number] = (value(high, i) - value(low, i)) / width;
            }
        }

        return slopes;
    }

    private Matrix<double> Slopes(double[] z, double scale) => Matrix<double>.Build.DenseOfRowVectors(Slopes(
        z, model.Readings.Count, (s, i) => s.Predict(model.Readings[i].Kind, model.Readings[i].LoadN) / Sigma(model.Readings[i], scale)));

    // A rod a little to each side in every number; at an end of what is allowed to one side only. Kept, since all bands are asked about one place.
    private Neighbour[] Neighbours(double[] z)
    {
        if (!ReferenceEquals(_about, z))
        {
            _neighbours = [.. Enumerable.Range(0, BendModel.Count).Select(i => Beside(z, i))];
            _about = z;
        }

        return _neighbours;
    }

    private Neighbour Beside(double[] z, int i)
    {
        stop.ThrowIfCancellationRequested();
        double[] low = [.. z], high = [.. z];
        low[i] = Math.Max(z[i] - Small, model[i].LeastZ);
        high[i] = Math.Min(z[i] + Small, model[i].MostZ);
        return new(i, model.At(low), model.At(high), high[i] - low[i]);
    }

    // The normal equations; a number that is pushed against its end rests there.
    private (Matrix<double> Normal, Vector<double> Pull) Held(double[] z, Matrix<double> slopes, Vector<double> misses)
    {
        Matrix<double> normal = Normal(slopes);
        Vector<double> pull = slopes.TransposeThisAndMultiply(misses);
        for (int i = 0; i < BendModel.Count; i++)
        {
            pull[i] -= model[i].IsFree ? 0.0 : z[i];
        }

        for (int i = 0; i < BendModel.Count; i++)
        {
            if ((z[i] <= model[i].LeastZ && pull[i] < 0.0) || (z[i] >= model[i].MostZ && pull[i] > 0.0))
            {
                normal.ClearRow(i);
                normal.ClearColumn(i);
                (normal[i, i], pull[i]) = (1.0, 0.0);
            }
        }

        return (normal, pull);
    }

    private Matrix<double> Normal(Matrix<double> slopes)
    {
        Matrix<double> normal = slopes.TransposeThisAndMultiply(slopes);
        for (int i = 0; i < BendModel.Count; i++)
        {
            normal[i, i] += model[i].IsFree ? 0.0 : 1.0;
        }

        return normal;
    }

    private double[] Within(double[] z, Vector<double> move) =>
        [.. z.Select((v, i) => Math.Clamp(v + move[i], model[i].LeastZ, model[i].MostZ))];

    // A trial rod without a shape is infinitely bad, not a failure.
    private double Cost(double[] z, double scale)
    {
        try
        {
            Vector<double> misses = Misses(z, scale);
            return misses.DotProduct(misses) + z.Where((_, i) => !model[i].IsFree).Sum(v => v * v);
        }
        catch (ModelException)
        {
            return double.PositiveInfinity;
        }
    }

    private sealed record Neighbour(int Number, BendState Low, BendState High, double Width);
}
