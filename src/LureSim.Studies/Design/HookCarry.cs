using LureSim.Model.Lures;
using LureSim.Model.Media;
using LureSim.Scenarios.Keys;
using LureSim.Studies.Runs;

namespace LureSim.Studies.Design;

/// <summary>Which hooks a lure still carries: each size of the table at the front, at the rear, and at both, the body as it is.</summary>
public static class HookCarry
{
    /// <summary>Floats the lure with each; nothing where no hook is given by its size.</summary>
    /// <param name="lure">Lure.</param>
    /// <param name="sizes">Its hooks by size.</param>
    /// <param name="water">Water.</param>
    /// <param name="threads">Most threads; 0 = all cores. The result does not depend on it.</param>
    /// <param name="stop">Stops it.</param>
    /// <exception cref="OperationCanceledException">Stopped.</exception>
    public static IReadOnlyList<HookRow> Run(LureSpec lure, HookSizes sizes, WaterState water, int threads, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(lure);
        ArgumentNullException.ThrowIfNull(sizes);
        if (sizes.Hooks.Count == 0)
        {
            return [];
        }

        SizedHook front = sizes.Hooks.MaxBy(h => lure.Hooks[h.Index].XM)!, rear = sizes.Hooks.MinBy(h => lure.Hooks[h.Index].XM)!;
        bool one = front.Index == rear.Index;
        IEnumerable<int> rows = Enumerable.Range(0, HookSizes.Count);
        (int? Front, int? Rear)[] pairs =
        [
            .. rows.Select(r => ((int?)r, one ? null : (int?)r)),
            .. one ? [] : rows.Where(r => r != rear.Row).Select(r => ((int?)r, (int?)null)),
            .. one ? [] : rows.Where(r => r != front.Row && r != rear.Row).Select(r => ((int?)null, (int?)r)),
        ];
        return ParallelRuns.Execute(pairs, Row, threads, null, stop);

        HookRow Row((int? Front, int? Rear) pair)
        {
            LureSpec with = sizes.With(lure, h => (h.Index == front.Index ? pair.Front : h.Index == rear.Index ? pair.Rear : null) ?? h.Row);
            bool own = (pair.Front ?? front.Row) == front.Row && (pair.Rear ?? rear.Row) == rear.Row;
            return new(pair.Front, pair.Rear, with.Hooks.Sum(h => h.MassKg), DesignPoint.Of(with, water), own);
        }
    }
}
