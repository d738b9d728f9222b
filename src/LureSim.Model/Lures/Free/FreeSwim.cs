using LureSim.Model.Lines.Chain;
using LureSim.Numerics;
using LureSim.Numerics.Steps;

namespace LureSim.Model.Lures.Free;

/// <summary>An elastic line without mass: pull max(0, k stretch + c rate).</summary>
/// <param name="LengthM">Unstretched, m.</param>
/// <param name="StiffnessNM">k, N/m.</param>
/// <param name="DampingNsM">c, N s/m.</param>
internal readonly record struct ElasticLine(double LengthM, double StiffnessNM, double DampingNsM);

/// <summary>The lure alone on the water, pulled at its tie, or on an elastic line without mass, step by step at a fixed step.</summary>
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

    /// <summary>A step with a given force at the tie, world axes, N: that of the end of the step.</summary>
    /// <param name="force">Force.</param>
    /// <exception cref="ModelException">The motion is no longer finite.</exception>
    public void Step(Vec3 force)
    {
        Bdf2 step = Begin(out _);
        Finish(step, force);
    }

    /// <summary>A step on a line; returns its tension, N. The tension is that of the end of the step, so any stiffness is stable.</summary>
    /// <param name="line">Line.</param>
    /// <param name="hand">Its other end at the end of the step, m.</param>
    /// <param name="handVelocity">Velocity of that end, m/s.</param>
    /// <exception cref="ModelException">The motion is no longer finite.</exception>
    public double Step(ElasticLine line, Vec3 hand, Vec3 handVelocity)
    {
        Bdf2 step = Begin(out LineEnd end);
        Vec3 toHand = hand - end.FreePosition;
        Vec3 d = toHand.Unit();
        double stretch = toHand.Length - line.LengthM, rate = Vec3.Dot(d, handVelocity - end.FreeVelocity), yield = Vec3.Dot(d, end.Yield(d));
        double k = line.StiffnessNM, c = line.DampingNsM;
        double tension = Math.Max(0.0, ((k * stretch) + (c * rate)) / (1.0 + (((k * step.Q) + c) * step.Q * yield)));
        Finish(step, tension * d);
        return tension;
    }

    private Bdf2 Begin(out LineEnd end)
    {
        _stop.ThrowIfCancellationRequested();
        Bdf2 step = _steps == 0 ? Bdf2.BackwardEuler(_dt) : Bdf2.Step(_dt, _dt);
        _lure.Guess(step);
        end = _lure.Begin(step, Vec3.Zero, Vec3.Zero);
        return step;
    }

    private void Finish(Bdf2 step, Vec3 force)
    {
        _lure.Finish(step, force);
        if (!_lure.IsFinite)
        {
            throw new ModelException($"the lure, alone on the water, moves out of every bound at {TimeS:F3} s; a smaller step may help", TimeS);
        }

        _lure.Commit();
        _steps++;
        Pose = _lure.Pose;
    }
}
