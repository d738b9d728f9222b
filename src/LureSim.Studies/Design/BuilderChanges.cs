using LureSim.Model.Margin;
using LureSim.Model.Media;
using LureSim.Scenarios.Keys;
using LureSim.Studies.Runs;

namespace LureSim.Studies.Design;

/// <summary>Changes that a builder can make, one at a time, the one that moves the walk margin most first. A fixed list; its steps are choices.</summary>
public static class BuilderChanges
{
    private const double AlongM = 0.005, UpM = 0.002, MassKg = 0.5e-3, Share = 0.05;

    /// <summary>The list.</summary>
    public static IReadOnlyList<DesignChange> All { get; } =
    [
        .. Both(ChangeKind.BallastAlong, AlongM), .. Both(ChangeKind.BallastUp, UpM), .. Both(ChangeKind.BallastMass, MassKg),
        .. Both(ChangeKind.TieUp, UpM), .. Both(ChangeKind.TieAlong, AlongM), .. Both(ChangeKind.HookSize, 1.0),
        new(ChangeKind.NoFrontHook, 0.0), new(ChangeKind.NoRearHook, 0.0), .. Both(ChangeKind.Length, Share), .. Both(ChangeKind.Section, Share),
    ];

    /// <summary>Tries all.</summary>
    /// <param name="own">The lure as it is, with its margin.</param>
    /// <param name="sizes">Its hooks by size.</param>
    /// <param name="water">Water.</param>
    /// <param name="task">Tow and pull.</param>
    /// <param name="threads">Most threads; 0 = all cores. The result does not depend on it.</param>
    /// <param name="stop">Stops it.</param>
    /// <exception cref="OperationCanceledException">Stopped.</exception>
    public static IReadOnlyList<RankedChange> Run(DesignPoint own, HookSizes sizes, WaterState water, MarginTask task, int threads, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(own);
        (DesignChange Change, Model.Lures.LureSpec Lure)[] tries =
            [.. All.Select(c => (Change: c, Lure: c.Of(own.Lure, sizes))).Where(t => t.Lure is not null).Select(t => (t.Change, t.Lure!))];
        DesignPoint[] after = ParallelRuns.Execute(tries, t => DesignPoint.Whole(t.Lure, water, task, stop), threads, null, stop);
        return
        [
            .. tries.Zip(after, (t, p) => new RankedChange(t.Change, p, p.SheddingMargin - own.SheddingMargin))
                .OrderByDescending(r => r.After.Trim is null).ThenByDescending(r => Math.Abs(r.MarginMove ?? 0.0)),
        ];
    }

    private static DesignChange[] Both(ChangeKind kind, double amount) => [new(kind, -amount), new(kind, amount)];
}
