using LureSim.Model.Lines.Chain;
using LureSim.Model.Lures;
using LureSim.Model.Lures.Free;
using LureSim.Numerics;
using LureSim.Numerics.Steps;

namespace LureSim.Model.Pool;

/// <summary>The lure alone on the water, or on an elastic line without mass, step by step at a fixed step.</summary>
internal sealed class FreeSwim
{
    private readonly FreeLure _lure;
    private readonly double _dt;
    private readonly CancellationToken _stop;
    private int _steps;

    /// <summary>Lets a lure go.</summary>
    /// <param name="hull">Constants.</param>
    /// <param name="start">State.</param>
    /// <param name="headingRad">Its heading, rad.</param>
    /// <param name="dt">Step, s.</param>
    /// <param name="stop">Stops it.</param>
    public FreeSwim(FreeHull hull, FreeMotionState start, double headingRad, double dt, CancellationToken stop)
    {
        (_dt, _stop) = (dt, stop);
        _lure = new FreeLure(hull, start, headingRad);
        Pose = _lure.Pose;
    }

    /// <summary>How it lies and moves now.</summary>
    public HullPose Pose { get; private set; }

    /// <summary>Time since the start, s.</summary>
    public double TimeS => _steps * _dt;

    /// <summary>Horizontal speed of the centre, m/s.</summary>
    public double SpeedMS => Math.Sqrt((Pose.SurgeMS * Pose.SurgeMS) + (Pose.SwayMS * Pose.SwayMS));

    /// <summary>Upward unit vector in body axes.</summary>
    public Vec3 Up => Pose.Frame.Up;

    /// <summary>A step on its own.</summary>
    /// <exception cref="ModelException">The motion is no longer finite.</exception>
    public void Step() => Step(null, default, default);

    /// <summary>A step on a line; returns its tension, N. The tension is that of the end of the step, so any stiffness is stable.</summary>
    /// <param name="line">Line.</param>
    /// <param name="hand">Its other end at the end of the step, m.</param>
    /// <param name="handVelocity">Velocity of that end, m/s.</param>
    /// <exception cref="ModelException">The motion is no longer finite.</exception>
    public double Step(PoolTask? line, Vec3 hand, Vec3 handVelocity)
    {
        _stop.ThrowIfCancellationRequested();
        Bdf2 step = _steps == 0 ? Bdf2.BackwardEuler(_dt) : Bdf2.Step(_dt, _dt);
        _lure.Guess(step);
        LineEnd end = _lure.Begin(step, Vec3.Zero, Vec3.Zero);
        double tension = 0.0;
        Vec3 force = Vec3.Zero;
        if (line is not null)
        {
            Vec3 toHand = hand - end.FreePosition;
            Vec3 d = toHand.Unit();
            double stretch = toHand.Length - line.TowLineM, rate = Vec3.Dot(d, handVelocity - end.FreeVelocity), yield = Vec3.Dot(d, end.Yield(d));
            double k = line.TowStiffnessN / line.TowLineM, c = k * line.TowDampingTimeS;
            tension = Math.Max(0.0, ((k * stretch) + (c * rate)) / (1.0 + (((k * step.Q) + c) * step.Q * yield)));
            force = tension * d;
        }

        _lure.Finish(step, force);
        if (!_lure.IsFinite)
        {
            throw new ModelException($"the lure in the pool moves out of every bound at {TimeS:F3} s; a smaller pool.step may help", TimeS);
        }

        _lure.Commit();
        _steps++;
        Pose = _lure.Pose;
        return tension;
    }
}
