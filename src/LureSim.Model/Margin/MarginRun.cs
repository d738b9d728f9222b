using LureSim.Model.Lures;
using LureSim.Model.Lures.Free;
using LureSim.Model.Media;

namespace LureSim.Model.Margin;

/// <summary>The walk margin of a lure: how fast a straight tow is left or kept, how much side force at the stern would keep it, how it turns at one pull.</summary>
public static class MarginRun
{
    /// <summary>Largest share of the stern's cross-flow that is tried.</summary>
    public const double MostShedding = 3.0;

    private const int ScanSteps = 24, Halvings = 30;

    /// <summary>Measures it.</summary>
    /// <param name="lure">Lure.</param>
    /// <param name="water">Water.</param>
    /// <param name="task">Tow and pull.</param>
    /// <param name="stop">Stops it, looked at in every step.</param>
    /// <exception cref="ArgumentException">A value is out of range, or the lure is heavier than its water (it sinks).</exception>
    /// <exception cref="OperationCanceledException">Stopped.</exception>
    public static Outcome<MarginResult> Run(LureSpec lure, WaterState water, MarginTask task, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(lure);
        ArgumentNullException.ThrowIfNull(water);
        ArgumentNullException.ThrowIfNull(task);
        task.Check();
        return Outcome.Of(() =>
        {
            FloatingLure f = FloatingLure.Float(lure, water);
            var hull = new FreeHull(f);
            var tow = new StraightTow(hull, task);
            return new MarginResult(lure, task, f.State.Attitude.TrimRad, Told(tow), Critical(hull, tow, task, Halvings, stop), PullTest.Run(hull, task, stop));
        });
    }

    /// <summary>The straight tow alone: for maps, many times faster than <see cref="Run"/>.</summary>
    /// <param name="lure">Lure.</param>
    /// <param name="water">Water.</param>
    /// <param name="task">Tow; its pull does not enter.</param>
    /// <param name="criticalHalvings">Null: no critical side force; else it too, to 0.125 over two to so many, 0 to 30.</param>
    /// <exception cref="ArgumentException">A value is out of range, or the lure is heavier than its water (it sinks).</exception>
    /// <exception cref="ModelException">No stable attitude was found.</exception>
    public static RestAndTow Towed(LureSpec lure, WaterState water, MarginTask task, int? criticalHalvings = null)
    {
        ArgumentNullException.ThrowIfNull(lure);
        ArgumentNullException.ThrowIfNull(water);
        ArgumentNullException.ThrowIfNull(task);
        task.Check();
        FloatingLure f = FloatingLure.Float(lure, water);
        var hull = new FreeHull(f);
        var tow = new StraightTow(hull, task);
        double? critical = criticalHalvings is int halvings ? Critical(hull, tow, task, Math.Clamp(halvings, 0, Halvings), default) : null;
        return new RestAndTow(FloatSolver.Report(f), Told(tow), critical);
    }

    private static TowBalance? Told(StraightTow tow) => tow.IsFound ? new TowBalance(tow.TrimRad, tow.NoseHeightM, tow.PullN, tow.Modes()) : null;

    /// <summary>Least chi above which the straight tow is kept: scanned, since a fishtail may begin where a one-sided sheer ends, then halved. Each tow begins from the balance of the one before.</summary>
    private static double? Critical(FreeHull hull, StraightTow near, MarginTask task, int halvings, CancellationToken stop)
    {
        bool Kept(double chi)
        {
            stop.ThrowIfCancellationRequested();
            near = new StraightTow(hull.WithShedding(chi), task, near);
            return near.IsFound && !near.Modes()[0].Leaves;
        }

        if (Kept(0.0))
        {
            return 0.0;
        }

        double low = 0.0, high = 0.0;
        for (int i = 1; i <= ScanSteps && high == 0.0; i++)
        {
            double chi = MostShedding * i / ScanSteps;
            (low, high) = Kept(chi) ? (low, chi) : (chi, 0.0);
        }

        for (int i = 0; i < halvings && high > 0.0; i++)
        {
            double middle = 0.5 * (low + high);
            (low, high) = Kept(middle) ? (low, middle) : (middle, high);
        }

        return high > 0.0 ? high : null;
    }
}

/// <summary>A lure at rest and towed straight.</summary>
/// <param name="Rest">How it floats.</param>
/// <param name="Tow">Straight tow; null where there is none.</param>
/// <param name="CriticalShedding">Least chi from which the straight tow is kept; null where it is left whatever chi, or was not asked for.</param>
public sealed record RestAndTow(FloatReport Rest, TowBalance? Tow, double? CriticalShedding = null);
