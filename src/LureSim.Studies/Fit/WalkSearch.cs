using LureSim.Scenarios.Measured;

namespace LureSim.Studies.Fit;

/// <summary>
/// The search where a lure walks too. First all other tests by themselves, since they tell the lure; then a grid of stroke and slack, because a hand far off
/// gives no walk, and what is no walk says little of the way to one; from its best place all numbers together.
/// </summary>
internal static class WalkSearch
{
    // Places of stroke and slack, in standard deviations.
    private static readonly double[] Grid = [-1.2, 0.0, 1.2];

    // From the second best place too where the first leads to what does not fit.
    private const int Starts = 2;

    /// <summary>Searches.</summary>
    /// <param name="model">Lure and hand.</param>
    /// <param name="system">All readings.</param>
    /// <param name="threads">Most threads.</param>
    /// <param name="steps">Told of each step.</param>
    /// <param name="stop">Stops it.</param>
    public static FitPoint Run(FitModel model, FitSystem system, int threads, FitProgress steps, CancellationToken stop)
    {
        FitTest[] others = [.. system.Tests.Where(t => t.Kind != FitKind.Walk)];
        double[] start = system.Start;
        if (others.Length > 0)
        {
            // Numbers of a test alone keep their order, since walks have none.
            var pool = new FitSystem(model, others, threads, stop);
            start = FitSearch.Run(pool, new FitSolver(pool, 1.0), steps).Z;
        }

        FitPoint? best = null;
        var solver = new FitSolver(system, 1.0);
        foreach (double[] from in Places(model, system, start, threads, stop).Take(Starts))
        {
            FitPoint found = solver.Solve(from, steps.Done);
            best = best is null || found.Cost < best.Cost ? found : best;
            if (FitSearch.Fits(system, best))
            {
                break;
            }
        }

        return best!;
    }

    // Places of the grid by the sum of squares of the walks alone, the least first; those that follow are no neighbours of those before.
    private static IEnumerable<double[]> Places(FitModel model, FitSystem system, double[] start, int threads, CancellationToken stop)
    {
        var walks = new FitSystem(model, [.. system.Tests.Where(t => t.Kind == FitKind.Walk)], threads, stop);
        var solver = new FitSolver(walks, 1.0);
        int[] hand = [.. Enumerable.Range(0, system.OfLure).Where(i => system.Unknowns[i].IsOfHand)];
        (int Stroke, int Slack)[] nodes = [.. from i in Enumerable.Range(0, Grid.Length) from j in Enumerable.Range(0, Grid.Length) select (i, j)];
        double[] At((int Stroke, int Slack) node)
        {
            double[] z = [.. start];
            foreach ((int number, double value) in hand.Zip([Grid[node.Stroke], Grid[node.Slack]]))
            {
                z[number] = Math.Clamp(value, system.Unknowns[number].LeastZ, system.Unknowns[number].MostZ);
            }

            return z;
        }

        double[][] sets = [.. nodes.Select(n => At(n)[..system.OfLure])];
        double[] cost = [.. sets.Zip(walks.Compute(sets), solver.Cost)];
        int[] order = [.. Enumerable.Range(0, nodes.Length).OrderBy(i => cost[i])];
        var taken = new List<(int Stroke, int Slack)>();
        foreach ((int Stroke, int Slack) node in order.Select(i => nodes[i]))
        {
            if (taken.TrueForAll(t => Math.Abs(t.Stroke - node.Stroke) + Math.Abs(t.Slack - node.Slack) > 1))
            {
                taken.Add(node);
                yield return At(node);
            }
        }
    }
}
