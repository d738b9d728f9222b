using MathNet.Numerics.LinearAlgebra;

namespace LureSim.Studies.Fit;

/// <summary>
/// The band of a number whose readings have a kink, where slopes say little of it. The sum of squares is computed at places along it, with the others following as their covariance with it
/// says, half as far, and not at all, and the least of the three is taken: on one side of a kink slopes are those of the other side. Half of it, negative, is the logarithm of a density, whose shares of 10, 50 and 90 % are the band and the best value. Without a kink it is the band of
/// the covariance.
/// </summary>
internal static class KinkedBand
{
    // In standard deviations of before: where slopes say little, the doubt reaches as far as it did then.
    private const double Reach = 3.0, Apart = 0.5;

    private const int Fine = 40;

    private static readonly double[] Shares = [1.0, 0.5, 0.0];

    /// <summary>10, 50 and 90 % in z.</summary>
    /// <param name="system">Readings.</param>
    /// <param name="solver">Sum.</param>
    /// <param name="best">Least sum.</param>
    /// <param name="covariance">Covariance there.</param>
    /// <param name="number">Which number.</param>
    public static (double Low, double Middle, double High) Of(FitSystem system, FitSolver solver, FitPoint best, Matrix<double> covariance, int number)
    {
        double from = best.Z[number];
        Vector<double> follow = covariance.Column(number) / covariance[number, number];
        FitUnknown u = system.Unknowns[number];
        double[] at = [.. Enumerable.Range(0, (int)(2.0 * Reach / Apart) + 1).Select(k => from - Reach + (Apart * k)).Where(z => z >= u.LeastZ && z <= u.MostZ)];
        double[][] Along(double share) =>
            [.. at.Select(z => best.Z.Select((v, j) => j == number ? z : Math.Clamp(v + (share * follow[j] * (z - from)), system.Unknowns[j].LeastZ, system.Unknowns[j].MostZ)).ToArray())];
        double[][] sets = [.. Shares.SelectMany(Along)];
        double[] costs = [.. sets.Zip(system.Compute(sets), solver.Cost)];
        double[] cost = [.. at.Select((_, k) => Enumerable.Range(0, Shares.Length).Min(s => costs[(s * at.Length) + k]))];
        var z = new List<double>();
        var density = new List<double>();
        double least = cost.Min();
        for (int k = 0; k + 1 < at.Length; k++)
        {
            for (int i = 0; i < Fine; i++)
            {
                double share = (i + 0.5) / Fine;
                z.Add(at[k] + (share * (at[k + 1] - at[k])));
                density.Add(Math.Exp(-0.5 * (Between(cost, k, share) - least)));
            }
        }

        return (Quantile(z, density, 0.1), Quantile(z, density, 0.5), Quantile(z, density, 0.9));
    }

    // A parabola through three places where the sum bends alike on both sides, straight next to a kink: the flatter of the two parabolas that share the gap.
    private static double Between(double[] cost, int k, double share)
    {
        double straight = cost[k] + (share * (cost[k + 1] - cost[k])), bend = share * (1.0 - share) / 2.0;
        double left = k > 0 ? cost[k - 1] - (2.0 * cost[k]) + cost[k + 1] : double.PositiveInfinity;
        double right = k + 2 < cost.Length ? cost[k] - (2.0 * cost[k + 1]) + cost[k + 2] : double.PositiveInfinity;
        double curve = Math.Abs(left) < Math.Abs(right) ? left : right;
        return straight - (double.IsFinite(curve) ? bend * curve : 0.0);
    }

    private static double Quantile(List<double> z, List<double> density, double share)
    {
        double all = density.Sum(), sum = 0.0;
        for (int i = 0; i < z.Count; i++)
        {
            sum += density[i];
            if (sum >= share * all)
            {
                return z[i] + ((z[Math.Min(i + 1, z.Count - 1)] - z[i]) * (0.5 - ((sum - (share * all)) / Math.Max(density[i], 1e-300))));
            }
        }

        return z[^1];
    }
}
