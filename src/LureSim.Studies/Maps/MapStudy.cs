using LureSim.Model.Assembly;
using LureSim.Model.Retrieve;
using LureSim.Studies.Cadence;
using LureSim.Studies.Runs;

namespace LureSim.Studies.Maps;

/// <summary>How a map is drawn.</summary>
/// <param name="CellsX">Coarse cells along x.</param>
/// <param name="CellsY">Coarse cells along y.</param>
/// <param name="Depth">How often a cell at the edge of walking is cut into four.</param>
/// <param name="OtherDepth">The same between patterns that do not walk.</param>
/// <param name="Starts">Starts per point.</param>
/// <param name="LockShare">A point walks when at least this share of its starts alternates.</param>
/// <param name="Run">Length and mesh of each run.</param>
/// <param name="Threads">Most threads; 0 = all cores. No result depends on it.</param>
public sealed record MapPlan(
    int CellsX = 12, int CellsY = 8, int Depth = 3, int OtherDepth = 1, int Starts = 3, double LockShare = 0.8, StationaryPlan? Run = null, int Threads = 0)
{
    /// <summary>Lattice points along x.</summary>
    public int Width => (CellsX << Depth) + 1;

    /// <summary>Lattice points along y.</summary>
    public int Height => (CellsY << Depth) + 1;
}

/// <summary>One sampled point of a map.</summary>
/// <param name="I">Lattice index along x.</param>
/// <param name="J">Lattice index along y.</param>
/// <param name="Point">All starts there; null where the set-up makes no sense.</param>
public sealed record MapSample(int I, int J, RhythmPoint? Point);

/// <summary>Patterns over two quantities.</summary>
/// <param name="Samples">What was sampled, by column and row.</param>
/// <param name="Patterns">Pattern at every lattice point; null where the set-up makes no sense or every run failed.</param>
/// <param name="GlideM">Glide at every lattice point, m; NaN where it does not walk.</param>
public sealed record MapGrid(IReadOnlyList<MapSample> Samples, WalkPattern?[,] Patterns, double[,] GlideM)
{
    /// <summary>False for a map that was stopped: it has samples, but neither patterns nor glide between them.</summary>
    public bool IsWhole => Patterns.Length > 0;

    /// <summary>What a stopped study left.</summary>
    /// <param name="samples">Finished points, in any order.</param>
    public static MapGrid Part(IEnumerable<MapSample> samples) =>
        new([.. samples.OrderBy(s => s.I).ThenBy(s => s.J)], new WalkPattern?[0, 0], new double[0, 0]);
}

/// <summary>Maps the pattern over two quantities, boundaries refined.</summary>
public static class MapStudy
{
    // All points over coarse ones, about; only progress depends on it.
    private const double RefinementFactor = 6.0;

    private static readonly int NoPattern = Enum.GetValues<WalkPattern>().Length;

    /// <summary>Runs the study.</summary>
    /// <param name="plan">Plan.</param>
    /// <param name="make">The set-up at shares 0 to 1 of both ranges, or null where it makes no sense.</param>
    /// <param name="run">Runs one retrieve; null = the retrieve.</param>
    /// <param name="progress">Called with the share done, from several threads; may be null.</param>
    /// <param name="finished">Gets each point as soon as all its starts are done, one call at a time, in the order of finishing; may be null.</param>
    /// <param name="stop">Stops between runs.</param>
    /// <exception cref="OperationCanceledException">Stopped; what was finished was handed on.</exception>
    public static MapGrid Run(
        MapPlan plan,
        Func<double, double, (Setup Setup, RetrieveTask Task)?> make,
        Func<Setup, RetrieveTask, StationaryOutcome>? run = null,
        Action<double>? progress = null,
        Action<MapSample>? finished = null,
        CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(make);
        run ??= (setup, task) => StationaryOutcome.Of(setup, task, stop);
        var lattice = new AdaptiveLattice(plan.CellsX, plan.CellsY, plan.Depth, Code(WalkPattern.Alternating), plan.OtherDepth);
        WalkStart[] starts = WalkStart.Spread(plan.Starts);
        var samples = new List<MapSample>();
        finished += samples.Add;
        double expected = RefinementFactor * (plan.CellsX + 1) * (plan.CellsY + 1) * starts.Length;
        int done = 0;
        for (IReadOnlyList<(int I, int J)> wanted = lattice.Wanted(); wanted.Count > 0; wanted = lattice.Wanted())
        {
            int first = samples.Count;
            var wave = new MapWave([.. wanted.Select(p => (p.I, p.J, make(p.I / (lattice.Width - 1.0), p.J / (lattice.Height - 1.0))))], starts, plan, finished);
            wave.Run(run, Done, stop);
            foreach (MapSample sample in samples[first..])
            {
                lattice.Set(sample.I, sample.J, Code(sample.Point?.Pattern), sample.Point?.Median(o => o.GlideWidthM) ?? double.NaN);
            }
        }

        return Grid(lattice, samples);

        void Done()
        {
            done++;
            progress?.Invoke(Math.Min(0.99, done / Math.Max(expected, done)));
        }
    }

    private static int Code(WalkPattern? pattern) => pattern is WalkPattern p ? (int)p : NoPattern;

    private static MapGrid Grid(AdaptiveLattice lattice, List<MapSample> samples)
    {
        (int[,] codes, double[,] glide) = lattice.Fill();
        var patterns = new WalkPattern?[lattice.Width, lattice.Height];
        for (int i = 0; i < lattice.Width; i++)
        {
            for (int j = 0; j < lattice.Height; j++)
            {
                patterns[i, j] = codes[i, j] == NoPattern ? null : (WalkPattern)codes[i, j];
                glide[i, j] = patterns[i, j] == WalkPattern.Alternating ? glide[i, j] : double.NaN;
            }
        }

        return new([.. samples.OrderBy(s => s.I).ThenBy(s => s.J)], patterns, glide);
    }
}
