using LureSim.Model;
using LureSim.Scenarios;
using LureSim.Scenarios.Keys;
using LureSim.Scenarios.Measured;
using LureSim.Scenarios.Quantities;
using MathNet.Numerics.LinearAlgebra;

namespace LureSim.Studies.Fit;

/// <summary>From measurements of a lure to what they tell of it.</summary>
public static class FitStudy
{
    /// <summary>Fewest readings beyond what they tell of their own runs: with less there is nothing left to tell a lure from an error by.</summary>
    public const int FewestReadings = 6;

    // Bands: told where less than half is left of the doubt before, nothing where more than this is.
    private const double HalfLeft = 0.5, Untold = 0.8, Hanging = 0.7, Alike = 0.95, Width = 0.1, Chance = 2.0;

    // Where the search begins: tows have a kink, below which a lure comes straight and no slope says how far below. So chi is scanned first.
    private static readonly double[] Scan = [-2.0, -1.3, -0.7, 0.0, 0.7, 1.4, 2.1];
    private const int Starts = 3, Escapes = 4;

    /// <summary>What a file would need to be fitted at all; null where it has it.</summary>
    /// <param name="file">Measurements.</param>
    /// <param name="scenario">Its lure.</param>
    public static string? Refusal(FitFile file, ScenarioResult scenario)
    {
        ArgumentNullException.ThrowIfNull(file);
        ArgumentNullException.ThrowIfNull(scenario);
        IReadOnlyList<FitTest> tests = FitTests.Of(file, scenario.Pool!);
        int counted = Counted(tests), all = tests.Sum(t => t.Readings.Count);
        return counted >= FewestReadings ? null
            : $"{all} readings, of which {counted} say something of the lure (a run first tells how fast it was let go and where the ruler began); at least {FewestReadings} are due, or any number "
                + "would be made up: three tows at four speeds, or a film of a push";
    }

    /// <summary>Overrides that a scenario is read with: those asked for, and the mass that was weighed.</summary>
    /// <param name="file">Measurements.</param>
    /// <param name="overrides">Overrides that stand besides.</param>
    public static IReadOnlyList<string> Overrides(FitFile file, IReadOnlyList<string> overrides)
    {
        ArgumentNullException.ThrowIfNull(file);
        ArgumentNullException.ThrowIfNull(overrides);
        return file.MassKg is double kg ? [.. overrides, $"{LureKeys.MassWithHooks.Path}={Quantity.Format(kg, QuantityKind.Mass)}"] : overrides;
    }

    /// <summary>Fits. It fails where no lure within reason can be computed.</summary>
    /// <param name="file">Measurements.</param>
    /// <param name="source">Scenario that holds the lure.</param>
    /// <param name="overrides">Overrides that stand besides.</param>
    /// <param name="threads">Most threads, 0 for all cores; the result does not depend on it.</param>
    /// <param name="progress">Gets the share done.</param>
    /// <param name="stop">Stops the fit.</param>
    /// <exception cref="ArgumentException">The scenario has errors, or the file too few readings.</exception>
    /// <exception cref="OperationCanceledException">Stopped.</exception>
    public static Outcome<FitReport> Run(
        FitFile file, ScenarioSource source, IReadOnlyList<string> overrides, int threads, Action<double> progress, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(file);
        ArgumentNullException.ThrowIfNull(source);
        ArgumentNullException.ThrowIfNull(overrides);
        ArgumentNullException.ThrowIfNull(progress);
        IReadOnlyList<string> all = Overrides(file, overrides);
        var free = new FitModel(source, all);
        IReadOnlyList<FitTest> tests = FitTests.Of(file, free.Task);
        if (Refusal(file, free.Scenario) is string refusal)
        {
            throw new ArgumentException(refusal, nameof(file));
        }

        var steps = new Progress(progress);
        var first = new FitSystem(free, tests, threads, stop);
        double[] guessed = first.Compute([first.Start])[0];
        if (Array.TrueForAll(guessed, double.IsNaN))
        {
            return new(null, new("no lure near the guesses of the scenario can be computed in a pool", 0.0));
        }

        FitUnknown[] held = [.. NotApart(first, guessed)];
        steps.Done();
        var model = new FitModel(source, all, held);
        var system = new FitSystem(model, tests, threads, stop);
        FitPoint best = Search(system, new FitSolver(system, 1.0), steps);
        var solver = new FitSolver(system, 1.0);
        Matrix<double> slopes = solver.Slopes(best);
        steps.Done();
        (double square, double freedom, double scale) = Scatter(system, best, slopes);
        if (scale > 1.0)
        {
            solver = new FitSolver(system, scale);
            best = solver.Solve(best.Z, steps.Done);
            slopes = solver.Slopes(best);
        }

        Matrix<double> covariance = FitSolver.Normal(slopes).Inverse();
        FitEstimate[] values = [.. Values(system, solver, best, slopes, covariance)];
        steps.Done();
        Matrix<double> ofLure = covariance.SubMatrix(0, system.OfLure, 0, system.OfLure);
        int[] open = [.. Enumerable.Range(0, values.Length).Where(i => !values[i].IsTold)];
        IReadOnlyList<FitNext> next = NextTest.Of(model, system, best.Z[..system.OfLure], ofLure, open, threads, stop);
        progress(1.0);
        return new(new(
            file, model.Scenario, values, held, [.. Rows(system, best, guessed, slopes, covariance)], Counted(tests), square, freedom, scale,
            [.. Pairs(values, ofLure)], next));
    }

    // The drift of a push is a measurement of its own; how a filmed run was let go is told by the film alone.
    private static int Counted(IReadOnlyList<FitTest> tests) =>
        tests.Sum(t => t.Readings.Count - t.Laid - (t.Kind is FitKind.Coast or FitKind.Track ? t.Own.Count : 0));

    // Guesses whose change looks like that of the axial factor in everything that was read.
    private static IEnumerable<FitUnknown> NotApart(FitSystem system, double[] at)
    {
        int Of(KeySpec key) => system.Unknowns.Take(system.OfLure).ToList().FindIndex(u => u.Key?.Key == key);
        int axial = Of(LureKeys.AxialDragFactor);
        int[] others = [.. ((KeySpec[])[LureKeys.FormDrag, LureKeys.FrictionSpeed]).Select(Of).Where(i => i >= 0)];
        if (axial < 0 || others.Length == 0)
        {
            return [];
        }

        Matrix<double> slopes = system.Slopes(system.Start, at, Width, false, 1.0, [axial, .. others]);
        double Norm(int i) => slopes.Column(i).L2Norm();
        return others.Where(i => Norm(i) < Width || Math.Abs(slopes.Column(axial).DotProduct(slopes.Column(i))) > Alike * Norm(axial) * Norm(i)).Select(i => system.Unknowns[i]);
    }

    private static FitPoint Search(FitSystem system, FitSolver solver, Progress steps)
    {
        double[] start = system.Start;
        int chi = Chi(system);
        double[][] starts = chi < 0 ? [start] : [.. Scan.Select(z => With(start, chi, Math.Clamp(z, system.Unknowns[chi].LeastZ, system.Unknowns[chi].MostZ)))];
        double[] cost = [.. starts.Zip(system.Compute(starts), solver.Cost)];
        steps.Done();

        // From the lowest place; where what it leads to does not fit, from others too, those of another hollow first.
        bool IsHollow(int i) => (i == 0 || cost[i] <= cost[i - 1]) && (i == cost.Length - 1 || cost[i] <= cost[i + 1]);
        FitPoint? best = null;
        foreach (int i in Enumerable.Range(0, starts.Length).OrderBy(i => IsHollow(i) ? 0 : 1).ThenBy(i => cost[i]).Take(Starts))
        {
            FitPoint found = solver.Solve(starts[i], steps.Done);
            best = best is null || found.Cost < best.Cost ? found : best;
            if (Fits(system, best))
            {
                break;
            }
        }

        return Escaped(system, solver, best!, steps);
    }

    // A search that ended where it does not fit lies in a wrong hollow, and not always one of chi: from the lowest place a step to either side in any number, or back to what was known of it, it begins again.
    private static FitPoint Escaped(FitSystem system, FitSolver solver, FitPoint best, Progress steps)
    {
        for (int round = 0; round < Escapes && !Fits(system, best); round++)
        {
            double[] z = best.Z;
            double[][] beside =
            [
                .. from j in Enumerable.Range(0, system.OfLure)
                   from side in (double[])[-1.0, 1.0, -z[j]]
                   select With(z, j, Math.Clamp(z[j] + side, system.Unknowns[j].LeastZ, system.Unknowns[j].MostZ)),
            ];
            double[] cost = [.. beside.Zip(system.Compute(beside), solver.Cost)];
            FitPoint found = solver.Solve(beside[Array.IndexOf(cost, cost.Min())], steps.Done);
            if (!(found.Cost < best.Cost))
            {
                break;
            }

            best = found;
        }

        return best;
    }

    // Whether the misses are those of chance: within one standard deviation of their law. One right search in six begins again in vain, which costs time alone.
    private static bool Fits(FitSystem system, FitPoint at)
    {
        double free = Math.Max(1.0, system.Readings.Count - system.Unknowns.Count + system.OfLure);
        return at.Cost < free + Math.Sqrt(2.0 * free);
    }

    private static int Chi(FitSystem system) => system.Unknowns.Take(system.OfLure).ToList().FindIndex(u => u.Key?.Key == LureKeys.SternShedding);

    private static double[] With(double[] z, int i, double value)
    {
        double[] other = [.. z];
        other[i] = value;
        return other;
    }

    // Readings that scatter more than said, beyond chance, are taken as that much less sure; never as surer. Ends that are kept say nothing of scatter.
    private static (double Square, double Free, double Scale) Scatter(FitSystem system, FitPoint best, Matrix<double> slopes)
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

    private static IEnumerable<FitEstimate> Values(FitSystem system, FitSolver solver, FitPoint best, Matrix<double> slopes, Matrix<double> covariance)
    {
        int chi = Chi(system);
        for (int j = 0; j < system.OfLure; j++)
        {
            double z = best.Z[j], sigma = Math.Sqrt(covariance[j, j]), alone = Math.Sqrt(WithoutOne(slopes, covariance, j));
            double low = z - (FitUnknown.Band * sigma), high = z + (FitUnknown.Band * sigma);
            if (j == chi && sigma > HalfLeft)
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

    // Variance of a number without the one reading that tells most of it.
    private static double WithoutOne(Matrix<double> slopes, Matrix<double> covariance, int number)
    {
        Matrix<double> shared = covariance * slopes.Transpose();
        double most = covariance[number, number];
        for (int i = 0; i < slopes.RowCount; i++)
        {
            double left = 1.0 - slopes.Row(i).DotProduct(shared.Column(i));
            most = Math.Max(most, left <= 1e-9 ? 1.0 : covariance[number, number] + (shared[number, i] * shared[number, i] / left));
        }

        return most;
    }

    private static IEnumerable<FitRowResult> Rows(FitSystem system, FitPoint best, double[] guessed, Matrix<double> slopes, Matrix<double> covariance)
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

    private static IEnumerable<FitPair> Pairs(FitEstimate[] values, Matrix<double> covariance)
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

    // Steps are not known beforehand: each brings a fifteenth of what is left.
    private sealed class Progress(Action<double> report)
    {
        private double _share;

        public void Done()
        {
            _share += (1.0 - _share) / 15.0;
            report(_share);
        }
    }
}
