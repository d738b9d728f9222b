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

    /// <summary>Fewest figures of walks where a file holds nothing else: one more than stroke and slack.</summary>
    public const int FewestWalkFigures = 3;

    private const double Alike = 0.95, Width = 0.1;

    /// <summary>What a file would need to be fitted at all; null where it has it.</summary>
    /// <param name="file">Measurements.</param>
    /// <param name="scenario">Its lure.</param>
    public static string? Refusal(FitFile file, ScenarioResult scenario)
    {
        ArgumentNullException.ThrowIfNull(file);
        ArgumentNullException.ThrowIfNull(scenario);
        if (WalkReader.Refusal(file, scenario) is string walk)
        {
            return walk;
        }

        IReadOnlyList<FitTest> tests = FitTests.Of(file, scenario);
        int counted = Counted(tests), all = tests.Sum(t => t.Readings.Count);
        return counted >= FewestReadings || tests.Where(t => t.Kind == FitKind.Walk).Sum(t => t.Readings.Count) >= FewestWalkFigures ? null
            : $"{all} readings, of which {counted} say something of the lure (a run first tells how fast it was let go and where the ruler began); at least {FewestReadings} are due, or any number "
                + "would be made up: three tows at four speeds, or a film of a push; of a walk alone three figures do";
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

    /// <summary>What the scenario of a file is read for: a pool, and a retrieve where the lure walks.</summary>
    /// <param name="file">Measurements.</param>
    public static Activities Asked(FitFile file)
    {
        ArgumentNullException.ThrowIfNull(file);
        return HasWalks(file) ? Activities.Pool | Activities.Retrieve : Activities.Pool;
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
        if (Refusal(file, source.Resolve(all)) is string refusal)
        {
            throw new ArgumentException(refusal, nameof(file));
        }

        bool walks = HasWalks(file);
        var free = new FitModel(source, all, null, walks);
        IReadOnlyList<FitTest> tests = FitTests.Of(file, free.Scenario);
        var steps = new FitProgress(progress);
        var first = new FitSystem(free, tests, threads, stop);
        double[] guessed = first.Compute([first.Start])[0];
        if (Array.TrueForAll(guessed, double.IsNaN))
        {
            return new(null, new("no lure near the guesses of the scenario can be computed in a pool", 0.0));
        }

        FitUnknown[] held = [.. NotApart(first, guessed)];
        steps.Done();
        var model = new FitModel(source, all, held, walks);
        var system = new FitSystem(model, tests, threads, stop);
        FitPoint best = walks ? WalkSearch.Run(model, system, threads, steps, stop) : FitSearch.Run(system, new FitSolver(system, 1.0), steps);
        var solver = new FitSolver(system, 1.0);
        Matrix<double> slopes = solver.Slopes(best);
        steps.Done();
        (double square, double freedom, double scale) = FitBands.Scatter(system, best, slopes);
        if (scale > 1.0)
        {
            solver = new FitSolver(system, scale);
            best = solver.Solve(best.Z, steps.Done);
            slopes = solver.Slopes(best);
        }

        Matrix<double> covariance = FitSolver.Normal(slopes).Inverse();
        FitEstimate[] values = [.. FitBands.Values(system, solver, best, slopes, covariance)];
        steps.Done();
        Matrix<double> ofLure = covariance.SubMatrix(0, system.OfLure, 0, system.OfLure);
        int[] open = [.. Enumerable.Range(0, values.Length).Where(i => !values[i].IsTold)];
        IReadOnlyList<FitNext> next = NextTest.Of(model, system, best.Z[..system.OfLure], ofLure, open, threads, stop);
        progress(1.0);
        return new(new(
            file, model.Scenario, values, held, [.. FitBands.Rows(system, best, guessed, slopes, covariance)], Counted(tests), square, freedom, scale,
            [.. FitBands.Pairs(values, ofLure)], next)
        {
            Walks = walks ? FitWalks.Of(file, model.Scenario, values) : null,
        });
    }

    private static bool HasWalks(FitFile file) => file.Blocks.Any(b => b.Kind == FitKind.Walk);

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
}
