using LureSim.Model.Lures;
using LureSim.Model.Lures.Free;
using LureSim.Model.Media;
using LureSim.Numerics;

namespace LureSim.Model.Pool;

/// <summary>A lure floating at rest.</summary>
/// <param name="TrimRad">Trim, nose up positive, rad.</param>
/// <param name="HeelRad">Heel, rad.</param>
/// <param name="NoseHeightM">Foremost point of the axis over the water, m.</param>
/// <param name="TailHeightM">Hindmost point of the axis over the water, m.</param>
/// <param name="MiddleDraftM">Immersed depth of the section in the middle of the length, m.</param>
/// <param name="NoseAheadM">Foremost point of the axis ahead of the centre of gravity, seen from above, m.</param>
/// <param name="TailAheadM">Hindmost point ahead of it, m, negative.</param>
public sealed record RestResult(
    double TrimRad, double HeelRad, double NoseHeightM, double TailHeightM, double MiddleDraftM, double NoseAheadM, double TailAheadM);

/// <summary>How a lure is let go to swim by itself.</summary>
/// <param name="SpeedMS">Speed of its centre, along +x, m/s, 0 to 3.</param>
/// <param name="DriftRad">Axis off that way, nose to the left positive, rad.</param>
/// <param name="YawRateRadS">Turning rate, to the left positive, rad/s.</param>
/// <param name="SeenS">How long it is watched, s, 0 to 120.</param>
public sealed record SwimStart(
    [property: Parameter("u0", "m/s", 0.0, 3.0)] double SpeedMS,
    [property: Parameter("drift", "rad", -Math.PI, Math.PI)] double DriftRad,
    [property: Parameter("r0", "rad/s", -30.0, 30.0)] double YawRateRadS,
    [property: Parameter("seen", "s", 0.0, 120.0)] double SeenS) : ISpec;

/// <summary>Where a lure that was let go came, ten milliseconds apart.</summary>
/// <param name="TimeS">Times, s.</param>
/// <param name="XM">Centre of gravity along its first way, m.</param>
/// <param name="YM">Beside it, left positive, m.</param>
/// <param name="WayM">Way of the centre up to then, m.</param>
/// <param name="HeadingRad">Heading from its first way, left positive, not wrapped, rad.</param>
public sealed record SwimResult(ValueList<double> TimeS, ValueList<double> XM, ValueList<double> YM, ValueList<double> WayM, ValueList<double> HeadingRad);

/// <summary>One lure in a pool, floated once; each measurement by itself, as a fit asks for them.</summary>
public sealed class PoolTrial
{
    private const double OutputS = 0.01;
    private readonly FreeHull _hull;

    private PoolTrial(FreeHull hull) => _hull = hull;

    /// <summary>Puts a lure on the water.</summary>
    /// <param name="lure">Lure.</param>
    /// <param name="water">Water.</param>
    /// <exception cref="ArgumentException">A value is out of range, or the lure is heavier than its water (it sinks).</exception>
    /// <exception cref="ModelException">No stable attitude was found.</exception>
    public static PoolTrial Of(LureSpec lure, WaterState water)
    {
        ArgumentNullException.ThrowIfNull(lure);
        ArgumentNullException.ThrowIfNull(water);
        return new(new FreeHull(FloatingLure.Float(lure, water)));
    }

    /// <summary>How it floats.</summary>
    public RestResult Rest()
    {
        FloatingLure f = _hull.Float;
        Attitude a = f.State.Attitude;
        double half = 0.5 * f.Hull.LengthM;
        return new(a.TrimRad, a.HeelRad, a.HeightOf(new Vec3(half, 0.0, 0.0)), a.HeightOf(new Vec3(-half, 0.0, 0.0)), f.DraftM(0.0), f.AheadM(half, 0.0), f.AheadM(-half, 0.0));
    }

    /// <summary>Tows it; ends before the whole way where the angle has come to rest, since the rest of the way would be the same.</summary>
    /// <param name="task">Line, way, step.</param>
    /// <param name="speedMS">Speed of the hand, m/s.</param>
    /// <param name="stop">Stops it.</param>
    /// <exception cref="ModelException">The motion is no longer finite.</exception>
    /// <exception cref="OperationCanceledException">Stopped.</exception>
    public TowRow Tow(PoolTask task, double speedMS, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(task);
        task.Check();
        return TowTest.Run(_hull, task, Require.InRange(speedMS, PoolTask.SlowestTowMS, PoolTask.FastestTowMS, nameof(speedMS)), stop, endsAtRest: true);
    }

    /// <summary>Pushes it with drift.</summary>
    /// <param name="task">Speed, drift, step.</param>
    /// <param name="endsTurned">True: it ends as soon as it has turned by 45 deg.</param>
    /// <param name="stop">Stops it.</param>
    /// <exception cref="ModelException">The motion is no longer finite.</exception>
    /// <exception cref="OperationCanceledException">Stopped.</exception>
    public PushResult Push(PoolTask task, bool endsTurned, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(task);
        task.Check();
        return PushTest.Push(_hull, task, stop, endsTurned);
    }

    /// <summary>Lets it go and watches it.</summary>
    /// <param name="start">How.</param>
    /// <param name="stepS">Time step, s, 0.1 to 4 ms.</param>
    /// <param name="stop">Stops it.</param>
    /// <exception cref="ModelException">The motion is no longer finite.</exception>
    /// <exception cref="OperationCanceledException">Stopped.</exception>
    public SwimResult Swim(SwimStart start, double stepS, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(start);
        Parameter.Demand(start);
        Require.InRange(stepS, 1e-4, 4e-3, nameof(stepS));
        FreeMotionState rest = _hull.AtRest(0.0, 0.0, start.DriftRad);
        FreeMotionState moving = rest with
        {
            Velocity = rest.Frame.ToBody(new Vec3(start.SpeedMS, 0.0, 0.0)) - Vec3.Cross(rest.Frame.ToBody(new Vec3(0.0, 0.0, start.YawRateRadS)), _hull.Centre),
            Rate = rest.Frame.ToBody(new Vec3(0.0, 0.0, start.YawRateRadS)),
        };
        var swim = new FreeSwim(_hull, moving, start.DriftRad, stepS, stop);
        Vec3 from = swim.Pose.Centre, last = from;
        int every = Math.Max(1, (int)Math.Round(OutputS / stepS)), steps = (int)Math.Ceiling(start.SeenS / stepS / every) * every, rows = (steps / every) + 1;
        double[] t = new double[rows], x = new double[rows], y = new double[rows], s = new double[rows], heading = new double[rows];
        heading[0] = start.DriftRad;
        double way = 0.0;
        for (int i = 1; i <= steps; i++)
        {
            swim.Step(Vec3.Zero);
            Vec3 moved = swim.Pose.Centre - last;
            way += Math.Sqrt((moved.X * moved.X) + (moved.Y * moved.Y));
            last = swim.Pose.Centre;
            if (i % every == 0)
            {
                int row = i / every;
                (t[row], x[row], y[row], s[row], heading[row]) = (swim.TimeS, last.X - from.X, last.Y - from.Y, way, swim.Pose.HeadingRad);
            }
        }

        return new(ValueList.Own(t), ValueList.Own(x), ValueList.Own(y), ValueList.Own(s), ValueList.Own(heading));
    }

    /// <summary>Lets it go heeled by as much as is said; one that stands too steep for a roll does not swing.</summary>
    /// <param name="task">Heel, step.</param>
    /// <param name="stop">Stops it.</param>
    /// <exception cref="ModelException">The motion is no longer finite.</exception>
    /// <exception cref="OperationCanceledException">Stopped.</exception>
    public SwingResult Roll(PoolTask task, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(task);
        task.Check();
        return PoolRun.IsSteep(_hull) ? PoolRun.NoRoll : SwingTest.Roll(_hull, task, task.HeelRad, stop);
    }

    /// <summary>Lets it go pressed down.</summary>
    /// <param name="task">Depth, step.</param>
    /// <param name="stop">Stops it.</param>
    /// <exception cref="ModelException">The motion is no longer finite.</exception>
    /// <exception cref="OperationCanceledException">Stopped.</exception>
    public SwingResult Bob(PoolTask task, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(task);
        task.Check();
        return SwingTest.Heave(_hull, task, PoolRun.PressFor(_hull.Float, task.PressM), stop);
    }

    /// <summary>Lets it go with the nose pressed down.</summary>
    /// <param name="task">Depth, step.</param>
    /// <param name="stop">Stops it.</param>
    /// <exception cref="ModelException">The motion is no longer finite.</exception>
    /// <exception cref="OperationCanceledException">Stopped.</exception>
    public SwingResult Nod(PoolTask task, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(task);
        task.Check();
        return SwingTest.Pitch(_hull, task, PoolRun.PressFor(_hull.Float, task.PressM) / (0.5 * _hull.Float.Hull.LengthM), stop);
    }
}
