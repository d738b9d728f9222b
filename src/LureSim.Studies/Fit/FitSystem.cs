using LureSim.Model;
using LureSim.Studies.Runs;
using MathNet.Numerics.LinearAlgebra;

namespace LureSim.Studies.Fit;

/// <summary>Tests and unknowns as one system: what all readings would be at a set of numbers, and how they change with each. Work goes to all cores; the
/// same bits for any number of threads.</summary>
internal sealed class FitSystem
{
    // A lure that cannot be computed is this many errors off in every reading: bad, finite, and left behind by the search.
    private const double Lost = 50.0;

    private readonly FitModel _model;
    private readonly int _threads;
    private readonly int[] _firstReading, _firstOwn;
    private readonly CancellationToken _stop;

    /// <summary>Lines tests up.</summary>
    /// <param name="model">Lure.</param>
    /// <param name="tests">Tests.</param>
    /// <param name="threads">Most threads, 0 for all cores.</param>
    /// <param name="stop">Stops it.</param>
    public FitSystem(FitModel model, IReadOnlyList<FitTest> tests, int threads, CancellationToken stop)
    {
        (_model, Tests, _threads, _stop) = (model, tests, threads, stop);
        _firstReading = new int[tests.Count + 1];
        _firstOwn = new int[tests.Count + 1];
        _firstOwn[0] = model.Unknowns.Count;
        for (int i = 0; i < tests.Count; i++)
        {
            _firstReading[i + 1] = _firstReading[i] + tests[i].Readings.Count;
            _firstOwn[i + 1] = _firstOwn[i] + tests[i].Own.Count;
        }

        Readings = [.. tests.SelectMany(t => t.Readings)];
        Unknowns = [.. model.Unknowns, .. tests.SelectMany(t => t.Own)];
    }

    /// <summary>Tests.</summary>
    public IReadOnlyList<FitTest> Tests { get; }

    /// <summary>Readings of all of them.</summary>
    public IReadOnlyList<FitReading> Readings { get; }

    /// <summary>Numbers: of the lure (and of the hand, where there are walks), then of each test alone.</summary>
    public IReadOnlyList<FitUnknown> Unknowns { get; }

    /// <summary>How many of them are of the lure and the hand.</summary>
    public int OfLure => _model.Unknowns.Count;

    /// <summary>Where a search begins: guesses of the lure in the middle, runs as they look.</summary>
    public double[] Start => [.. new double[OfLure], .. Tests.SelectMany(t => t.OwnStart)];

    /// <summary>Readings at several sets of numbers.</summary>
    /// <param name="sets">Sets of z.</param>
    public double[][] Compute(IReadOnlyList<double[]> sets) => Run([.. sets.Select(z => (z, Enumerable.Range(0, Tests.Count)))]);

    /// <summary>Misses in standard deviations.</summary>
    /// <param name="computed">Readings as computed.</param>
    /// <param name="scale">Factor on all errors.</param>
    public Vector<double> Misses(double[] computed, double scale) =>
        Vector<double>.Build.Dense(Readings.Count, i => (double.IsNaN(computed[i]) ? -Lost : Readings[i].Miss(computed[i])) / scale);

    /// <summary>Change of each miss with each number, with the sign of the computed value: standard deviations of a reading per one of the number.</summary>
    /// <param name="z">Numbers.</param>
    /// <param name="at">Readings there.</param>
    /// <param name="width">Step in z, for example 0.1; tests that need another have theirs.</param>
    /// <param name="isCentral">True: steps to both sides, for bands; false: to one, for the search.</param>
    /// <param name="scale">Factor on all errors.</param>
    /// <param name="only">The numbers that are asked for, all if null; the columns of the others stay 0.</param>
    public Matrix<double> Slopes(double[] z, double[] at, double width, bool isCentral, double scale, int[]? only = null)
    {
        int[] columns = only ?? [.. Enumerable.Range(0, Unknowns.Count)];
        var sets = new List<(double[] Z, IEnumerable<int> Tests)>();
        var parts = new List<(int Column, int[] Tests, int First)>();
        foreach (int j in columns)
        {
            foreach (IGrouping<double, int> tests in TestsOf(j).GroupBy(t => Tests[t].Step ?? width))
            {
                parts.Add((j, [.. tests], sets.Count));
                foreach (double side in isCentral ? (double[])[-1.0, 1.0] : [z[j] + tests.Key > Unknowns[j].MostZ ? -1.0 : 1.0])
                {
                    double[] beside = [.. z];
                    beside[j] = Math.Clamp(z[j] + (side * tests.Key), Unknowns[j].LeastZ, Unknowns[j].MostZ);
                    sets.Add((beside, tests));
                }
            }
        }

        double[][] values = Run(sets);
        Matrix<double> slopes = Matrix<double>.Build.Dense(Readings.Count, Unknowns.Count);
        foreach ((int j, int[] tests, int low) in parts)
        {
            int high = isCentral ? low + 1 : low;
            double up = sets[high].Z[j] - z[j], down = z[j] - sets[low].Z[j];
            foreach ((int t, int i) in tests.SelectMany(t => Enumerable.Range(_firstReading[t], Tests[t].Readings.Count).Select(i => (t, i))))
            {
                double here = Readings[i].Miss(at[i]), slope = -(Readings[i].Miss(values[high][i]) - here) / (up * scale);
                double other = isCentral ? -(here - Readings[i].Miss(values[low][i])) / (down * scale) : slope;
                slopes[i, j] = Tests[t].IsOfHand && !Unknowns[j].IsOfHand && double.IsFinite(slope + other) ? 0.5 * (slope + other) : Flatter(slope, other);
            }
        }

        return slopes;
    }

    // What a number enters: those of the lure all tests, those of the hand the walks, those of a test that test.
    private IEnumerable<int> TestsOf(int j) =>
        j >= OfLure ? [TestOf(j)] : Enumerable.Range(0, Tests.Count).Where(t => Tests[t].IsOfHand || !Unknowns[j].IsOfHand);

    // Of a walk and the lure the mean: a doubt of the lure that is taken for too small would make stroke and slack look surer than they are. Else of the slopes to either side the flatter, none where they differ in sign: a jump, where one swing more is seen, must not make a number look sure.
    private static double Flatter(double one, double other) =>
        !double.IsFinite(one) || !double.IsFinite(other) ? (double.IsFinite(one) ? one : double.IsFinite(other) ? other : 0.0)
        : one * other <= 0.0 ? 0.0
        : Math.Abs(one) < Math.Abs(other) ? one : other;

    private int TestOf(int unknown)
    {
        int test = 0;
        while (_firstOwn[test + 1] <= unknown)
        {
            test++;
        }

        return test;
    }

    // Each lure is floated once; then every test of every set is a run of its own. Readings that were not asked for stay NaN.
    private double[][] Run(List<(double[] Z, IEnumerable<int> Tests)> sets)
    {
        FitCandidate?[] lures = ParallelRuns.Execute(sets, s => _model.Candidate(s.Z), _threads, null, _stop);
        (int Set, int Test)[] jobs = [.. sets.SelectMany((s, i) => s.Tests.Select(t => (i, t)))];
        double[]?[] answers = ParallelRuns.Execute(jobs, j => One(lures[j.Set], sets[j.Set].Z, j.Test), _threads, null, _stop);
        double[][] all = [.. sets.Select(_ => Enumerable.Repeat(double.NaN, Readings.Count).ToArray())];
        for (int k = 0; k < jobs.Length; k++)
        {
            answers[k]?.CopyTo(all[jobs[k].Set], _firstReading[jobs[k].Test]);
        }

        return all;
    }

    private double[]? One(FitCandidate? candidate, double[] z, int test)
    {
        if (candidate is null)
        {
            return null;
        }

        FitTest t = Tests[test];
        double[] own = [.. t.Own.Select((u, k) => u.At(z[_firstOwn[test] + k]))];
        try
        {
            return t.Compute(candidate, own, _stop);
        }
        catch (ModelException)
        {
            return null;
        }
    }
}
