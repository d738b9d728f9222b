using LureSim.Scenarios.Keys;

namespace LureSim.Studies.Fit;

/// <summary>The search for the least sum of squares, from several starts where one does not fit.</summary>
internal static class FitSearch
{
    // Where the search begins: tows have a kink, below which a lure comes straight and no slope says how far below. So chi is scanned first.
    private static readonly double[] Scan = [-2.0, -1.3, -0.7, 0.0, 0.7, 1.4, 2.1];
    private const int Starts = 3, Escapes = 4;

    /// <summary>Searches.</summary>
    /// <param name="system">Readings.</param>
    /// <param name="solver">Sum.</param>
    /// <param name="steps">Told of each step.</param>
    public static FitPoint Run(FitSystem system, FitSolver solver, FitProgress steps)
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

    // A search that ended where it does not fit lies in a wrong hollow, and not always one of chi: from the lowest place a step to either side in any number it begins again.
    private static FitPoint Escaped(FitSystem system, FitSolver solver, FitPoint best, FitProgress steps)
    {
        for (int round = 0; round < Escapes && !Fits(system, best); round++)
        {
            double[] z = best.Z;
            double[][] beside =
            [
                .. from j in Enumerable.Range(0, system.OfLure)
                   from side in (double[])[-1.0, 1.0]
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

    /// <summary>Whether the misses are those of chance: within one standard deviation of their law. One right search in six begins again in vain, which costs time alone.</summary>
    /// <param name="system">Readings.</param>
    /// <param name="at">Where a search ended.</param>
    public static bool Fits(FitSystem system, FitPoint at)
    {
        double free = Math.Max(1.0, system.Readings.Count - system.Unknowns.Count + system.OfLure);
        return at.Cost < free + Math.Sqrt(2.0 * free);
    }

    /// <summary>Number of the side force shed at the stern; negative where it is none of the unknowns.</summary>
    /// <param name="system">Readings.</param>
    public static int Chi(FitSystem system) => system.Unknowns.Take(system.OfLure).ToList().FindIndex(u => u.Key?.Key == LureKeys.SternShedding);

    /// <summary>Numbers with another value of one.</summary>
    /// <param name="z">Numbers.</param>
    /// <param name="i">Which.</param>
    /// <param name="value">Its value.</param>
    public static double[] With(double[] z, int i, double value)
    {
        double[] other = [.. z];
        other[i] = value;
        return other;
    }
}
