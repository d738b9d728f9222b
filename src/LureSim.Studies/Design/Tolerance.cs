using LureSim.Model;
using LureSim.Model.Lures;
using LureSim.Model.Margin;
using LureSim.Model.Media;
using LureSim.Scenarios.Keys;
using LureSim.Studies.Runs;

namespace LureSim.Studies.Design;

/// <summary>What errors of building do, one at a time and all at once. The sizes of the errors are choices, printed with the table.</summary>
public static class Tolerance
{
    private const double BallastKg = 0.2e-3, PlaceM = 0.002, TotalKg = 0.5e-3;

    private static readonly (ChangeKind Kind, double Amount)[] Errors =
    [
        (ChangeKind.BallastMass, BallastKg), (ChangeKind.BallastAlong, PlaceM), (ChangeKind.BallastUp, PlaceM), (ChangeKind.BodyMass, TotalKg),
        (ChangeKind.TieAlong, PlaceM), (ChangeKind.TieUp, PlaceM), (ChangeKind.HookSize, 1.0),
    ];

    // Of these a worst case is told.
    private static readonly Figure<DesignPoint>[] Judged = [DesignFigures.Trim, DesignFigures.Freeboard, DesignFigures.Gm, DesignFigures.Margin];

    /// <summary>Measures.</summary>
    /// <param name="own">The lure as it is, with its margin.</param>
    /// <param name="sizes">Its hooks by size.</param>
    /// <param name="water">Water.</param>
    /// <param name="task">Tow and pull.</param>
    /// <param name="threads">Most threads; 0 = all cores. The result does not depend on it.</param>
    /// <param name="stop">Stops it.</param>
    /// <exception cref="OperationCanceledException">Stopped.</exception>
    public static ToleranceTable Run(DesignPoint own, HookSizes sizes, WaterState water, MarginTask task, int threads, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(own);
        DesignChange[] changes = [.. Errors.SelectMany(e => (DesignChange[])[new(e.Kind, -e.Amount), new(e.Kind, e.Amount)])];
        DesignPoint?[] points = ParallelRuns.Execute(
            changes, c => c.Of(own.Lure, sizes) is LureSpec lure ? DesignPoint.Whole(lure, water, task, stop) : null, threads, null, stop);
        ToleranceRow[] rows = [.. Enumerable.Range(0, Errors.Length).Select(i => new ToleranceRow(changes[2 * i], points[2 * i], changes[(2 * i) + 1], points[(2 * i) + 1]))];
        (Figure<DesignPoint> Figure, int Sign)[] cases = [.. Judged.SelectMany(f => ((Figure<DesignPoint>, int)[])[(f, -1), (f, 1)])];
        DesignPoint[] worst = ParallelRuns.Execute(
            cases, c => DesignPoint.Whole(Together(own, rows, c.Figure, c.Sign, sizes), water, task, stop), threads, null, stop);
        return new(rows, [.. Judged.Select((f, i) => new WorstCase(f.Key, worst[2 * i], worst[(2 * i) + 1]))]);
    }

    // Every error the way that moves the figure by the sign; one that does not move it, or that cannot be made, is left out. Sizes of hooks last: they are told by the scenario's own list.
    private static LureSpec Together(DesignPoint own, IReadOnlyList<ToleranceRow> rows, Figure<DesignPoint> figure, int sign, HookSizes sizes)
    {
        LureSpec lure = own.Lure;
        foreach (ToleranceRow row in rows)
        {
            double less = Move(row.LessPoint), more = Move(row.MorePoint);
            DesignChange? change = Math.Max(less, more) <= 0.0 ? null : less > more ? row.Less : row.More;
            lure = change?.Of(lure, sizes) ?? lure;
        }

        return lure;

        double Move(DesignPoint? point) => point is not null && figure.Value(point) is double after && figure.Value(own) is double before ? sign * (after - before) : 0.0;
    }
}
