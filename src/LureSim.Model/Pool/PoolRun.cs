using LureSim.Model.Lures;
using LureSim.Model.Lures.Free;
using LureSim.Model.Media;
using LureSim.Numerics;

namespace LureSim.Model.Pool;

/// <summary>Takes a lure to a pool: tow, push, coast-down, roll, heave and pitch, each by itself, in six degrees of freedom without rod and main line.</summary>
public static class PoolRun
{
    private const double Degree = Math.PI / 180.0, SteepDeg = 60.0, LeastPressM = 5e-4;

    /// <summary>Runs all of them.</summary>
    /// <param name="lure">Lure.</param>
    /// <param name="water">Water.</param>
    /// <param name="task">What to do.</param>
    /// <param name="stop">Stops it, looked at in every step.</param>
    /// <exception cref="ArgumentException">A value is out of range, or the lure is heavier than its water (it sinks).</exception>
    /// <exception cref="OperationCanceledException">Stopped.</exception>
    public static Outcome<PoolResult> Run(LureSpec lure, WaterState water, PoolTask task, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(lure);
        ArgumentNullException.ThrowIfNull(water);
        ArgumentNullException.ThrowIfNull(task);
        task.Check();
        return Outcome.Of(() => Measure(new FreeHull(FloatingLure.Float(lure, water)), task, stop));
    }

    /// <summary>What a lure shows that stands too steep to roll.</summary>
    internal static SwingResult NoRoll { get; } = new(0.0, null, null, [], []);

    /// <summary>Whether a lure stands too steep to roll.</summary>
    /// <param name="hull">Constants.</param>
    internal static bool IsSteep(FreeHull hull) => Math.Abs(hull.Float.State.Attitude.TrimRad) > SteepDeg * Degree;

    /// <summary>How far it is pressed down: at most half of its highest point.</summary>
    /// <param name="f">Lure at rest.</param>
    /// <param name="wantedM">Wanted, m.</param>
    internal static double PressFor(FloatingLure f, double wantedM) => Math.Min(wantedM, Math.Max(LeastPressM, 0.5 * HighestM(f)));

    private static PoolResult Measure(FreeHull hull, PoolTask task, CancellationToken stop)
    {
        FloatingLure f = hull.Float;
        Attitude rest = f.State.Attitude;
        double press = PressFor(f, task.PressM);
        return new PoolResult(
            f.Spec, task, rest.TrimRad / Degree, rest.HeelRad / Degree,
            [.. task.SpeedsMS.Select(speed => TowTest.Run(hull, task, speed, stop))],
            PushTest.Push(hull, task, stop),
            PushTest.Coast(hull, task, stop),
            IsSteep(hull) ? NoRoll : SwingTest.Roll(hull, task, HeelFor(f, task.HeelRad), stop),
            SwingTest.Heave(hull, task, press, stop),
            SwingTest.Pitch(hull, task, press / (0.5 * f.Hull.LengthM), stop));
    }

    // At most half of the heel from which it comes back; a lure that lies over is moved from where it lies.
    private static double HeelFor(FloatingLure f, double wanted)
    {
        if (f.State.Attitude.HeelRad != 0.0)
        {
            return wanted;
        }

        RightingCurve curve = FloatSolver.Righting(f.Spec, f.Water);
        int last = curve.LastRighting;
        return last == 0 ? wanted : Math.Min(wanted, 0.5 * curve.HeelRad[last]);
    }

    private static double HighestM(FloatingLure f)
    {
        WaterLine water = f.WaterLine;
        double half = 0.5 * f.Hull.LengthM, highest = 0.0;
        foreach (double x in (ReadOnlySpan<double>)[-half, 0.0, half])
        {
            HullSection s = f.Hull.SectionAt(x);
            highest = Math.Max(highest, f.State.Attitude.HeightOf(new Vec3(x, 0.0, s.CentreZM)) + (water.Cos * s.HalfExtentM(water.Ny, water.Nz)));
        }

        return highest;
    }
}
