using LureSim.Model.Lures;
using LureSim.Scenarios.Keys;
using LureSim.Studies.Runs;
using LureSim.Studies.Sampling;
using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.Optimization;

namespace LureSim.Studies.Design;

/// <summary>
/// Seeks a lure with a wanted walk over mass and place of its weight, height of its line tie and size of its hooks. First lures spread over the bounds (Latin
/// hypercube, the lure as it is among them), then simplices downhill (Nelder and Mead 1965, Comput. J. 7, 308) from the best of them, each with the hooks of its start.
/// Same seed, same lures, for any number of threads.
/// </summary>
/// <param name="lure">Lure as it is.</param>
/// <param name="sizes">Its hooks by size.</param>
/// <param name="bounds">Bounds.</param>
/// <param name="plan">Plan.</param>
/// <param name="look">Tries one lure: a pure function, called from several threads.</param>
public sealed class WalkSearch(LureSpec lure, HookSizes sizes, WalkBounds bounds, WalkPlan plan, Func<WalkMove, CancellationToken, WalkCandidate> look)
{
    // A third of all lures are spread; the rest go downhill.
    private const double SpreadShare = 1.0 / 3.0;
    private const int LargestHookStep = 2;

    // First edges of a simplex, in free numbers: a sixth of the half range.
    private const double Edge = 0.26, Tolerance = 1e-3;

    /// <summary>Searches; a wish to stop ends it with what there is.</summary>
    /// <param name="progress">Gets the share done; may be null.</param>
    /// <param name="stop">Stops it.</param>
    /// <returns>Every lure tried, the one as it is first.</returns>
    public (IReadOnlyList<WalkCandidate> Tried, bool IsStopped) Run(Action<double>? progress, CancellationToken stop)
    {
        int spread = Math.Max(4, (int)(SpreadShare * plan.Evaluations)), each = Math.Max(4, (plan.Evaluations - spread) / Math.Max(1, plan.Descents));
        var gate = new Lock();
        int done = 0;
        WalkMove[] first = First(spread);
        var tried = new WalkCandidate?[spread];
        var later = new List<WalkCandidate>[plan.Descents];
        Array.Fill(later, []);
        try
        {
            ParallelRuns.Execute([.. Enumerable.Range(0, spread)], i => tried[i] = Look(first[i], stop), plan.Threads, null, stop);
            WalkCandidate[] best = [.. tried.OfType<WalkCandidate>().OrderBy(c => c.Miss).Take(plan.Descents)];
            for (int i = 0; i < best.Length; i++)
            {
                later[i] = [];
            }

            ParallelRuns.Execute([.. Enumerable.Range(0, best.Length)], i => Descend(best[i], later[i], each, stop), plan.Threads, null, stop);
        }
        catch (OperationCanceledException) when (stop.IsCancellationRequested)
        {
            return ([.. tried.OfType<WalkCandidate>(), .. later.SelectMany(l => l)], true);
        }

        return ([.. tried.OfType<WalkCandidate>(), .. later.SelectMany(l => l)], false);

        WalkCandidate Look(WalkMove move, CancellationToken token)
        {
            WalkCandidate found = look(move, token);
            lock (gate)
            {
                progress?.Invoke(Math.Min(1.0, ++done / (double)plan.Evaluations));
            }

            return found;
        }

        bool Descend(WalkCandidate from, List<WalkCandidate> kept, int most, CancellationToken token)
        {
            double Miss(Vector<double> free)
            {
                // The simplex has no limit on evaluations of its own; what it asks for beyond is never better.
                if (kept.Count >= most)
                {
                    return double.MaxValue;
                }

                WalkCandidate found = Look(Move(free, from.Move.HookSteps), token);
                kept.Add(found);
                return found.Miss;
            }

            double[] start = [bounds.Free(0, from.Move.BallastKg), bounds.Free(1, from.Move.BallastXM), bounds.Free(2, from.Move.TieZM)];
            try
            {
                NelderMeadSimplex.Minimum(
                    ObjectiveFunction.Value(Miss), Vector<double>.Build.Dense(start), Vector<double>.Build.Dense(WalkBounds.Count, Edge), Tolerance, most);
            }
            catch (MaximumIterationsException)
            {
                return false;
            }

            return true;
        }
    }

    private WalkMove Move(Vector<double> free, int hooks) => new(bounds.At(0, free[0]), bounds.At(1, free[1]), bounds.At(2, free[2]), hooks);

    // The lure as it is, then the spread ones.
    private WalkMove[] First(int count)
    {
        var slot = BallastSlot.Of(lure);
        var design = new LatinHypercube(count, plan.Seed);
        int largest = sizes.Hooks.Count == 0 ? 0 : LargestHookStep;
        double Between(int k, int i) => bounds.Low[i] + ((bounds.High[i] - bounds.Low[i]) * design.Share(k, i));
        WalkMove At(int k) => new(
            Between(k, 0), Between(k, 1), Between(k, 2), Math.Clamp((int)Math.Floor(((2 * largest) + 1) * design.Share(k, WalkBounds.Count)) - largest, -largest, largest));
        return [new(slot.Weight.MassKg, slot.Weight.XM, lure.TieZM, 0), .. Enumerable.Range(1, count - 1).Select(At)];
    }
}
