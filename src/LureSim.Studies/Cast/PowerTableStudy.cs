using LureSim.Model;
using LureSim.Model.Assembly;
using LureSim.Model.Cast;
using LureSim.Model.Lures;
using LureSim.Studies.Runs;

namespace LureSim.Studies.Cast;

/// <summary>Which power of rod casts a lure farthest: the scenario's lure made lighter and heavier, on rods of all classes, all else the same.</summary>
public static class PowerTableStudy
{
    /// <summary>Masses with hooks, kg.</summary>
    public static IReadOnlyList<double> MassesKg { get; } = [0.007, 0.010, 0.014, 0.020, 0.028, 0.040];

    /// <summary>Runs all casts.</summary>
    /// <param name="setup">Set-up.</param>
    /// <param name="task">Cast.</param>
    /// <param name="threads">Most threads; 0 = all cores. The result does not depend on it.</param>
    /// <param name="progress">Gets the share done, from several threads; may be null.</param>
    /// <param name="stop">Stops the runs.</param>
    /// <param name="run">Runs one cast; null = the cast.</param>
    /// <exception cref="OperationCanceledException">Stopped.</exception>
    public static PowerTable Run(
        Setup setup, CastTask task, int threads, Action<double>? progress, CancellationToken stop, Func<Setup, CastTask, Outcome<CastResult>>? run = null)
    {
        ArgumentNullException.ThrowIfNull(setup);
        run ??= (s, t) => CastRunner.Run(s, t, new(null, stop));
        (double Kg, RodClass Rod)[] all = [.. MassesKg.SelectMany(kg => RodClass.All.Select(rod => (kg, rod)))];
        int done = 0;
        PowerCell[] cells = ParallelRuns.Execute(
            all, c => Cell(With(setup, c.Kg, c.Rod.LoadN), task, run), threads, () => progress?.Invoke((double)++done / all.Length), stop);
        int classes = RodClass.All.Count;
        return new(setup.Title, MassesKg, [.. MassesKg.Select((_, i) => (IReadOnlyList<PowerCell>)cells[(i * classes)..((i + 1) * classes)])]);
    }

    /// <summary>The set-up with a lure of the same shape and make, of another mass, on a rod of another power: sizes of the lure go with the cube root of its
    /// mass, areas with its two thirds; mass of the rod ~ load^0.35, its thickness ~ load^0.2.</summary>
    /// <param name="setup">Set-up.</param>
    /// <param name="lureKg">Mass with hooks, kg.</param>
    /// <param name="loadN">Tip load that drops the tip by a third, N.</param>
    public static Setup With(Setup setup, double lureKg, double loadN)
    {
        ArgumentNullException.ThrowIfNull(setup);
        LureSpec lure = setup.Lure;
        double mass = lureKg / FlyingLure.MassKg(lure), size = Math.Cbrt(mass), area = size * size;
        return setup with
        {
            Rod = RodClass.WithLoad(setup.Rod, loadN),
            Lure = lure with
            {
                LengthM = size * lure.LengthM,
                DiameterM = size * lure.DiameterM,
                HeightM = size * lure.HeightM,
                MassKg = mass * lure.MassKg,
                TieXM = size * lure.TieXM,
                TieZM = size * lure.TieZM,
                Ballast = [.. lure.Ballast.Select(b => b with { MassKg = mass * b.MassKg, XM = size * b.XM, ZM = size * b.ZM })],
                Hooks =
                [
                    .. lure.Hooks.Select(h => h with
                    {
                        MassKg = mass * h.MassKg,
                        XM = size * h.XM,
                        ZM = size * h.ZM,
                        DragAreaM2 = area * h.DragAreaM2,
                        SteelVolumeM3 = mass * h.SteelVolumeM3,
                        DragAreaAlongM2 = area * h.DragAreaAlongM2,
                    }),
                ],
                Stations = lure.Stations is null
                    ? null
                    : [.. lure.Stations.Select(s => s with { XM = size * s.XM, HalfBreadthM = size * s.HalfBreadthM, HalfHeightM = size * s.HalfHeightM, CentreZM = size * s.CentreZM })],
                Flight = lure.Flight with { KnownCdAM2 = area * lure.Flight.KnownCdAM2 },
            },
        };
    }

    private static PowerCell Cell(Setup setup, CastTask task, Func<Setup, CastTask, Outcome<CastResult>> run)
    {
        (CastResult? cast, string? failure) = CastAcrossStudy.Try(setup, task, run);
        return cast is null ? PowerCell.Failed(failure ?? "") : PowerCell.Of(cast);
    }
}
