using LureSim.Model.Assembly;
using LureSim.Model.Retrieve;
using LureSim.Studies.Batches;
using LureSim.Studies.Cadence;
using LureSim.Studies.Runs;

namespace LureSim.Studies.Maps;

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
    /// <summary>The point that glides widest of those that walk, or null.</summary>
    /// <param name="points">Points.</param>
    public static RhythmPoint? WidestOf(IEnumerable<RhythmPoint?> points) => points.Where(p => p is { Walks: true }).MaxBy(p => p!.Median(o => o.GlideWidthM));
}

/// <summary>Maps the pattern over two quantities, boundaries refined.</summary>
public static class MapStudy
{
    // All runs over coarse points, about; only progress depends on it.
    private const double RefinementFactor = 8.0;

    /// <summary>Runs the study.</summary>
    /// <param name="plan">Plan.</param>
    /// <param name="make">The set-up at shares 0 to 1 of both ranges, or null where it makes no sense.</param>
    /// <param name="run">Runs one retrieve; null = the retrieve.</param>
    /// <param name="news">Who is told, and what is known; null = nobody and nothing.</param>
    /// <param name="stop">Stops between runs.</param>
    /// <exception cref="OperationCanceledException">Stopped; what was finished was handed on.</exception>
    public static MapGrid Run(
        MapPlan plan,
        Func<double, double, (Setup Setup, RetrieveTask Task)?> make,
        Func<Setup, RetrieveTask, StationaryOutcome>? run = null,
        MapNews? news = null,
        CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(make);
        run ??= (setup, task) => StationaryOutcome.Of(setup, task, stop);
        news ??= new();
        var search = new MapSearch(plan, make);
        double expected = RefinementFactor * (plan.CellsX + 1) * (plan.CellsY + 1);
        int done = 0;
        for (var wanted = search.Wanted(); wanted.Count > 0; wanted = search.Wanted())
        {
            StationaryOutcome?[] outcomes = [.. wanted.Select(w => news.Known?.Invoke(plan.IndexOf(w.Run)))];
            done += outcomes.Count(o => o is not null);
            int[] due = [.. Enumerable.Range(0, outcomes.Length).Where(n => outcomes[n] is null)];
            Batch.Execute(due, plan.Threads == 0 ? int.MaxValue : plan.Threads, n => run(wanted[n].Setup, wanted[n].Task), Keep, stop);
            search.Add([.. outcomes.Select(o => o!)]);

            void Keep(int n, StationaryOutcome outcome)
            {
                outcomes[n] = outcome;
                news.Kept?.Invoke(plan.IndexOf(wanted[n].Run), outcome);
                done++;
                news.Progress?.Invoke(Math.Min(0.99, done / Math.Max(expected, done)));
            }
        }

        return search.Grid();
    }
}
