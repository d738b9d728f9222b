using LureSim.Model.Lines;
using LureSim.Model.Lines.Chain;
using LureSim.Numerics;
using LureSim.Numerics.Steps;

namespace LureSim.Model.Reels;

/// <summary>
/// The clutch of a reel that slips under the line: line given acts on the first segment as if the rod tip moved along it toward the lure. With u the
/// speed of line given, m_s = I/R^2 the turning spool, T the tension at the tip and theta the turn of the line along the rod,
/// m_s u' = T e^(-mu theta) - F(u), F(u) = F_slide (1 + (r - 1) e^(-u/u_s)), F_slide = F_full R_full/R. It holds as long as T stays under
/// r F_slide e^(mu theta), and holds again when u would become negative (docs/reel.md).
/// </summary>
/// <remarks>Inside a step friction is that of the last guess of u: F falls with u faster than a step can see, and this fixed point comes to the root from
/// one side whatever the step. A step may be thrown away: nothing is taken over before <see cref="Commit"/>.</remarks>
internal sealed class DragClutch
{
    private readonly ClutchSpec _spec;
    private readonly WoundLine _wound;
    private readonly double _dragN, _bareKgM2;
    private readonly bool _empties;
    private State _before, _now, _next;
    private double _massKg, _slideN, _holdsN, _rings, _q, _pastGivenM, _pastSpeedMS, _guessMS, _freeMS, _frictionN;
    private bool _mayStart;

    /// <summary>A clutch that holds.</summary>
    /// <param name="reel">Reel.</param>
    /// <param name="line">Line on it.</param>
    public DragClutch(ReelSpec reel, LineSpec line)
    {
        ArgumentNullException.ThrowIfNull(reel);
        ArgumentNullException.ThrowIfNull(line);
        (_spec, _dragN, _bareKgM2, _empties) = (reel.Clutch, reel.DragN, reel.Spool.InertiaKgM2, reel.Kind == ReelKind.Revolving);
        _wound = WoundLine.On(reel, line);
    }

    /// <summary>Tension at the tip up to which it holds however much line is out and however the rod bends, N: r F_full.</summary>
    public double SureN => _spec.StaticRatio * _dragN;

    /// <summary>Line given since the start, m.</summary>
    public double GivenM => _now.GivenM;

    /// <summary>Line given in the step that is tried, m; 0 once it is taken over.</summary>
    public double StepM => _next.GivenM - _now.GivenM;

    /// <summary>u, m/s.</summary>
    public double SpeedMS => _now.SpeedMS;

    /// <summary>True while it slips, by the last step that was taken over.</summary>
    public bool Slips => _now.Slips;

    /// <summary>Pull on the reel at the end of the last step, N: T e^(-mu theta). While the clutch holds, that is the least it can be.</summary>
    public double ReelForceN => _now.TipN - _now.RingN;

    /// <summary>Heat in clutch and rings since the start, J.</summary>
    public double LossJ { get; private set; }

    /// <summary>Energy of motion of the turning spool, J.</summary>
    public double KineticJ => 0.5 * _massKg * _now.SpeedMS * _now.SpeedMS;

    /// <summary>Begins a step from the last one that was taken over.</summary>
    /// <param name="step">Step coefficients.</param>
    /// <param name="lineOutM">Line off the spool at its start, what the clutch has given included, m. With none left the knot on the spool holds.</param>
    /// <param name="turnRad">theta, rad, 0 or more.</param>
    public void Begin(Bdf2 step, double lineOutM, double turnRad)
    {
        double gone = _empties ? Math.Clamp(lineOutM, 0.0, _wound.LengthM) : 0.0, radius = _wound.RadiusM(gone);

        // As it was when the spool began to turn: what leaves it during one slip takes its own motion along.
        _massKg = _now.Slips ? _massKg : (_bareKgM2 + _wound.InertiaKgM2(gone)) / (radius * radius);
        _slideN = _dragN * _wound.OuterRadiusM / radius;
        _holdsN = lineOutM < _wound.LengthM ? _spec.StaticRatio * _slideN : double.PositiveInfinity;
        (_rings, _q) = (Math.Exp(-_spec.RingFriction * turnRad), step.Q);
        _pastGivenM = step.History(_now.GivenM, _before.GivenM);
        _pastSpeedMS = step.History(_now.SpeedMS, _before.SpeedMS);
        _guessMS = Math.Max(0.0, step.Extrapolate(_now.SpeedMS, _before.SpeedMS));
        _mayStart = double.IsFinite(_holdsN);
        _next = _now with { Slips = _now.Slips && _mayStart };
    }

    /// <summary>The rod tip with the line that the clutch gives, for one pass.</summary>
    /// <param name="tip">Rod tip alone.</param>
    /// <param name="direction">Unit direction of the first segment, away from the tip.</param>
    public LineEnd Give(in LineEnd tip, Vec3 direction)
    {
        LineEnd end = tip;
        if (_next.Slips)
        {
            _frictionN = _slideN * (1.0 + ((_spec.StaticRatio - 1.0) * Math.Exp(-_guessMS / _spec.SlowMS)));
            _freeMS = _pastSpeedMS - (_q * _frictionN / _massKg);
            end.FreeVelocity += _freeMS * direction;
            end.FreePosition += (_pastGivenM - _now.GivenM + (_q * _freeMS)) * direction;
            end.AddYield(_rings / _massKg, direction);
        }

        return end;
    }

    /// <summary>Ends a pass. True when the clutch has begun to slip or to hold, so that the pass must be done again; that is at most twice in a step.</summary>
    /// <param name="tensionN">T of the first segment, N.</param>
    public bool Finish(double tensionN)
    {
        double reelN = _rings * tensionN, speed = _freeMS + (_q * reelN / _massKg);
        if (!_next.Slips)
        {
            _next = Held(tensionN, _mayStart && reelN > _holdsN);
            _guessMS = 0.0;
            return _next.Slips;
        }

        // What slips and would run back holds, to the end of the step.
        _mayStart = speed >= 0.0;
        _guessMS = speed;
        _next = _mayStart ? new(_pastGivenM + (_q * speed), speed, tensionN, tensionN - reelN, _frictionN, true) : Held(tensionN, false);
        return !_mayStart;
    }

    /// <summary>Takes the step over.</summary>
    public void Commit()
    {
        State from = _now.Slips ? _now : _next;
        LossJ += 0.5 * (_next.GivenM - _now.GivenM) * (from.FrictionN + from.RingN + _next.FrictionN + _next.RingN);
        LossJ += _next.Slips ? 0.0 : KineticJ;
        (_before, _now) = (_next.Slips ? _now : _next, _next);
    }

    private State Held(double tensionN, bool starts) => new(_now.GivenM, 0.0, tensionN, tensionN * (1.0 - _rings), 0.0, starts);

    // While it holds, friction is whatever the pull is, and does no work.
    private readonly record struct State(double GivenM, double SpeedMS, double TipN, double RingN, double FrictionN, bool Slips);
}
