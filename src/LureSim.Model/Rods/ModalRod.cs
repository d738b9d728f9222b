using System.Runtime.CompilerServices;
using LureSim.Model.Hands;
using LureSim.Model.Lines.Chain;
using LureSim.Numerics;
using LureSim.Numerics.Steps;

namespace LureSim.Model.Rods;

/// <summary>
/// The bending rod between hand and line: the modes of the link chain in two planes (a round rod bends alike in both),
/// M q'' + C q' + K q = F n - G a, in the frame of the rigidly turned rod. Linear in the deflection; a twitch bends a rod
/// by up to a quarter of its length, where that is 5 to 10 % too soft (docs/rod.md).
/// </summary>
internal sealed class ModalRod
{
    private readonly RodModeSet _modes;
    private readonly int _count;
    private readonly double[] _freeQ;
    private readonly double[] _freeRate;
    private readonly double[] _inverse;
    private StepGains _inverseFor;
    private double _yield;
    private TipFrame _frame;
    private double _driveNow;
    private double _driveBefore;
    private double _torqueRate;

    /// <summary>Prepares the tip at rest.</summary>
    /// <param name="modes">Modes; may be empty for a rigid rod.</param>
    public ModalRod(RodModeSet modes)
    {
        ArgumentNullException.ThrowIfNull(modes);
        _modes = modes;
        _count = modes.MassKg.Length;
        _freeQ = new double[2 * _count];
        _freeRate = new double[2 * _count];
        _inverse = new double[_count];
        (Before, Now, Next) = (new ModalRodState(_count), new ModalRodState(_count), new ModalRodState(_count));
    }

    /// <summary>State at n-1.</summary>
    public ModalRodState Before { get; private set; }

    /// <summary>State at n.</summary>
    public ModalRodState Now { get; private set; }

    /// <summary>State at n+1 after <see cref="Finish"/>.</summary>
    public ModalRodState Next { get; private set; }

    /// <summary>Modes.</summary>
    public RodModeSet Modes => _modes;

    /// <summary>Guess of the tip at the end of a step: the rigid tip with the bend moved on, m.</summary>
    /// <param name="dt">Step, s.</param>
    /// <param name="end">Rigid tip at the end of the step.</param>
    public Vec3 Guess(double dt, in TipFrame end)
    {
        double bend = 0.0, side = 0.0;
        for (int k = 0; k < _count; k++)
        {
            bend += Now.Q[k] + (dt * Now.Rate[k]);
            side += Now.Q[_count + k] + (dt * Now.Rate[_count + k]);
        }

        return end.Position + (bend * end.Stroke) + (side * end.Side);
    }

    /// <summary>Tension-free motion and yield of the tip at the end of the step.</summary>
    /// <param name="step">Step coefficients.</param>
    /// <param name="end">Rigid tip at the end of the step.</param>
    public LineEnd Begin(Bdf2 step, in TipFrame end)
    {
        _frame = end;
        double q = step.Q;

        // The rigid tip's acceleration as the step itself differentiates its velocity: kinks of the stroke lose nothing.
        double drive = (end.DriveMS - step.History(_driveNow, _driveBefore)) / q;
        double bend = 0.0, bendRate = 0.0, side = 0.0, sideRate = 0.0;
        SetInverse(step.Gains);
        for (int k = 0; k < _count; k++)
        {
            Free(step, k, k, -_modes.BaseParticipationKg[k] * drive);
            Free(step, k, _count + k, 0.0);
            bend += _freeQ[k];
            bendRate += _freeRate[k];
            side += _freeQ[_count + k];
            sideRate += _freeRate[_count + k];
        }

        var result = new LineEnd
        {
            FreePosition = end.Position + (bend * end.Stroke) + (side * end.Side),
            FreeVelocity = end.Velocity + (bendRate * end.Stroke) + (bend * end.StrokeRate) + (sideRate * end.Side),
        };
        result.AddYield(_yield, end.Stroke);
        result.AddYield(_yield, end.Side);
        return result;
    }

    /// <summary>Adds the force of the line to the modes.</summary>
    /// <param name="step">Step coefficients.</param>
    /// <param name="force">Force of the line on the tip, N.</param>
    public void Finish(Bdf2 step, Vec3 force)
    {
        double inPlane = Vec3.Dot(force, _frame.Stroke), across = Vec3.Dot(force, _frame.Side);
        for (int k = 0; k < _count; k++)
        {
            Put(step.Q, k, step.Q * _inverse[k] * inPlane);
            Put(step.Q, _count + k, step.Q * _inverse[k] * across);
        }
    }

    /// <summary>Torque of the hand on the rod in the stroke plane, N m; <see cref="RodModeSet.HandTorque"/>.</summary>
    /// <param name="angularRate">Rate of the rod's angle now, rad/s.</param>
    /// <param name="span">Time since the last call, s.</param>
    /// <param name="force">Mean force of the line on the tip over that time, N.</param>
    public double HandTorque(double angularRate, double span, Vec3 force)
    {
        double acceleration = (angularRate - _torqueRate) / span;
        _torqueRate = angularRate;
        double along = _frame.Stroke == Vec3.Zero ? 0.0 : Vec3.Dot(force, _frame.Stroke);
        return _modes.HandTorque(acceleration, Now.Q.AsSpan(0, _count), Now.Rate.AsSpan(0, _count), along);
    }

    /// <summary>Takes the finished step over.</summary>
    public void Commit()
    {
        (Before, Now, Next) = (Now, Next, Before);
        (_driveBefore, _driveNow) = (_driveNow, _frame.DriveMS);
    }

    /// <summary>How the modes yield; only a new length of step changes it.</summary>
    private void SetInverse(StepGains gains)
    {
        if (gains == _inverseFor)
        {
            return;
        }

        (_inverseFor, _yield) = (gains, 0.0);
        for (int k = 0; k < _count; k++)
        {
            _inverse[k] = 1.0 / (_modes.MassKg[k] + (gains.Rate * _modes.DampingNsM[k]) + (gains.Place * _modes.StiffnessNM[k]));
            _yield += _inverse[k];
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private void Free(Bdf2 step, int mode, int slot, double force)
    {
        double q = step.History(Now.Q[slot], Before.Q[slot]);
        double rate = step.History(Now.Rate[slot], Before.Rate[slot]);
        double free = _inverse[mode] * ((_modes.MassKg[mode] * rate) + (step.Q * (force - (_modes.StiffnessNM[mode] * q))));
        _freeRate[slot] = free;
        _freeQ[slot] = q + (step.Q * free);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private void Put(double q, int slot, double change)
    {
        Next.Rate[slot] = _freeRate[slot] + change;
        Next.Q[slot] = _freeQ[slot] + (q * change);
    }
}

/// <summary>Modal coordinates of the rod: the stroke plane first, then the plane across it.</summary>
internal sealed class ModalRodState
{
    /// <summary>Straight rod at rest.</summary>
    /// <param name="modes">Modes in one plane.</param>
    public ModalRodState(int modes)
    {
        Q = new double[2 * modes];
        Rate = new double[2 * modes];
    }

    /// <summary>q, m of tip deflection.</summary>
    public double[] Q { get; }

    /// <summary>q', m/s.</summary>
    public double[] Rate { get; }

    /// <summary>Deflection of the tip in the stroke plane, m.</summary>
    public double Bend => Sum(Q, 0);

    /// <summary>Deflection of the tip across the stroke plane, m.</summary>
    public double SideBend => Sum(Q, Q.Length / 2);

    private static double Sum(double[] values, int from)
    {
        double sum = 0.0;
        for (int i = from; i < from + (values.Length / 2); i++)
        {
            sum += values[i];
        }

        return sum;
    }
}
