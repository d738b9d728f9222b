using LureSim.Scenarios.Measured;
using MathNet.Numerics.LinearAlgebra;

namespace LureSim.Studies.Fit;

/// <summary>From the least sum of squares and its slopes to bands, verdicts and surprises.</summary>
internal static class FitBands
{
    // Told where less than half is left of the doubt before, nothing where more than this is.
    private const double HalfLeft = 0.5, Untold = 0.8, Hanging = 0.7, Chance = 2.0;

    /// <summary>Sum of squares, what it should be, and the factor on all errors: readings that scatter more than said, beyond chance, are taken as that much less sure; never as
    /// surer. Ends that are kept say nothing of scatter.</summary>
    /// <param name="system">Readings.</param>
    /// <param name="best">Least sum.</param>
    /// <param name="slopes">Slopes there.</param>
    public static (double Square, double Free, double Scale) Scatter(FitSystem system, FitPoint best, Matrix<double> slopes)
    {
        Vector<double> misses = system.Misses(best.Computed, 1.0);
        Vector<double> leverage = (slopes * FitSolver.Normal(slopes).Inverse() * slopes.Transpose()).Diagonal();
        double free = -system.Tests.Sum(t => t.Laid), square = 0.0;
        for (int i = 0; i < misses.Count; i++)
        {
            if (!system.Readings[i].IsAtMost || misses[i] < -1.0)
            {
                (free, square) = (free + 1.0 - leverage[i], square + (misses[i] * misses[i]));
            }
        }

        free = Math.Max(free, 0.5);
        double mean = square / free;
        return (square, free, mean > 1.0 + (Chance * Math.Sqrt(2.0 / free)) ? Math.Sqrt(mean) : 1.0);
    }

    /// <summary>What was told of each number.</summary>
    /// <param name="system">Readings.</param>
    /// <param name="solver">Sum.</param>
    /// <param name="best">Least sum.</param>
    /// <param name="slopes">Slopes there.</param>
    /// <param name="covariance">Covariance there.</param>
    public static IEnumerable<FitEstimate> Values(FitSystem system, FitSolver solver, FitPoint best, Matrix<double> slopes, Matrix<double> covariance)
    {
        int chi = FitSearch.Chi(system);
        for (int j = 0; j < system.OfLure; j++)
        {
            double z = best.Z[j], sigma = Math.Sqrt(covariance[j, j]), alone = Math.Sqrt(WithoutOne(system, slopes, covariance, j));
            double low = z - (FitUnknown.Band * sigma), high = z + (FitUnknown.Band * sigma);
            if (j == chi && sigma > HalfLeft && system.Tests.Any(t => t.Kind != FitKind.Walk))
            {
                // Straight tows have no slope, though they say that chi is not low: where slopes say little, the band comes from the sum itself, along the line on
                // which the others follow.
                (low, z, high) = KinkedBand.Of(system, solver, best, covariance, j);
                sigma = (high - low) / (2.0 * FitUnknown.Band);
                alone = system.Readings.Count(r => r.IsAtMost) >= 3 ? Math.Min(alone, sigma) : alone;
            }

            FitVerdict verdict = sigma > Untold ? FitVerdict.Not : alone > Untold ? FitVerdict.OneReading : sigma < HalfLeft ? FitVerdict.Told : FitVerdict.Hardly;
            yield return new(system.Unknowns[j], z, low, high, sigma, verdict);
        }
    }

    // Variance of a number without the one reading that tells most of it; a figure of a whole film is no single reading.
    private static double WithoutOne(FitSystem system, Matrix<double> slopes, Matrix<double> covariance, int number)
    {
        Matrix<double> shared = covariance * slopes.Transpose();
        double most = covariance[number, number];
        for (int i = 0; i < slopes.RowCount; i++)
        {
            if (system.Readings[i].IsOfMany)
            {
                continue;
            }

            double left = 1.0 - slopes.Row(i).DotProduct(shared.Column(i));
            most = Math.Max(most, left <= 1e-9 ? 1.0 : covariance[number, number] + (shared[number, i] * shared[number, i] / left));
        }

        return most;
    }

    /// <summary>Readings against the fit.</summary>
    /// <param name="system">Readings.</param>
    /// <param name="best">Least sum.</param>
    /// <param name="guessed">Computed with the guesses as they were.</param>
    /// <param name="slopes">Slopes at the least sum.</param>
    /// <param name="covariance">Covariance there.</param>
    public static IEnumerable<FitRowResult> Rows(FitSystem system, FitPoint best, double[] guessed, Matrix<double> slopes, Matrix<double> covariance)
    {
        Vector<double> leverage = (slopes * covariance * slopes.Transpose()).Diagonal();
        int i = 0;
        for (int t = 0; t < system.Tests.Count; t++)
        {
            foreach (FitReading reading in system.Tests[t].Readings)
            {
                double left = Math.Sqrt(Math.Max(1.0 - leverage[i], 0.0));
                yield return new(reading, guessed[i], best.Computed[i], left > 1e-3 ? Math.Abs(reading.Miss(best.Computed[i])) / left : 0.0, t);
                i++;
            }
        }
    }

    /// <summary>Numbers that hang together.</summary>
    /// <param name="values">Numbers.</param>
    /// <param name="covariance">Their covariance.</param>
    public static IEnumerable<FitPair> Pairs(FitEstimate[] values, Matrix<double> covariance)
    {
        for (int i = 0; i < values.Length; i++)
        {
            for (int j = i + 1; j < values.Length; j++)
            {
                double rho = covariance[i, j] / Math.Sqrt(covariance[i, i] * covariance[j, j]);
                if (Math.Abs(rho) > Hanging)
                {
                    yield return new(values[i].Unknown, values[j].Unknown, rho);
                }
            }
        }
    }
}
