using LureSim.Model.Lines;
using LureSim.Model.Lines.Chain;
using LureSim.Model.Media;
using LureSim.Model.Reels;
using LureSim.Numerics;
using LureSim.Numerics.Steps;

namespace LureSim.Model.Tests.Reels;

/// <summary>A clutch at a rod tip that stands still, one length of weightless line straight away from it, and its far end: a mass or a hand.</summary>
internal sealed class ClutchRig
{
    private const int Passes = 2;

    // No gravity, and with one segment no node that drag could act on.
    private static readonly LineMedium Empty = new(new WaterState(1000.0, 1e-3, 0.072), new AirState(1.2, 1.8e-5), DragCurve.Constant(1.0), GravityMS2: 0.0);

    private readonly LineMesh _mesh;
    private readonly LinePass _pass;
    private readonly double _lengthM, _massKg, _turnRad, _outM;
    private readonly Func<double, (double Place, double Speed)>? _hand;
    private LineState _before = new(1), _now = new(1), _next = new(1);
    private double _dtBefore;

    private ClutchRig(
        ReelSpec reel, LineSpec line, double lengthM, double massKg, double speedMS, double turnRad, double outM, Func<double, (double Place, double Speed)>? hand)
    {
        (_lengthM, _massKg, _turnRad, _outM, _hand) = (lengthM, massKg, turnRad, outM, hand);
        _mesh = new LineMesh(line, null, lengthM, 1);
        _pass = new LinePass(_mesh, Empty);
        Clutch = new DragClutch(reel, line);
        (_before.X[1], _now.X[1], _before.VX[1], _now.VX[1]) = (lengthM, lengthM, speedMS, speedMS);
    }

    public DragClutch Clutch { get; }

    public double TimeS { get; private set; }

    public double TensionN { get; private set; }

    public double PeakN { get; private set; }

    /// <summary>Sum of T du over the line given, J.</summary>
    public double WorkJ { get; private set; }

    /// <summary>The far end is a mass that goes away from the rod.</summary>
    public static ClutchRig Mass(ReelSpec reel, LineSpec line, double lengthM, double massKg, double speedMS, double turnRad = 0.0) =>
        new(reel, line, lengthM, massKg, speedMS, turnRad, 0.0, null);

    /// <summary>The far end is drawn away from the rod.</summary>
    public static ClutchRig Drawn(ReelSpec reel, LineSpec line, double lengthM, Func<double, (double Place, double Speed)> hand, double turnRad = 0.0, double outM = 0.0) =>
        new(reel, line, lengthM, 0.0, 0.0, turnRad, outM, hand);

    /// <summary>Steps on.</summary>
    public ClutchRig Run(double spanS, double dt)
    {
        for (int n = (int)Math.Round(spanS / dt); n > 0; n--)
        {
            Step(dt);
        }

        return this;
    }

    /// <summary>One step.</summary>
    public void Step(double dt)
    {
        double given = Clutch.GivenM;
        Try(dt);
        Clutch.Commit();
        double tension = _pass.Solver.Tension[0];
        WorkJ += 0.5 * (tension + TensionN) * (Clutch.GivenM - given);
        (TensionN, PeakN) = (tension, Math.Max(PeakN, tension));
        _mesh.SetLength(_lengthM + Clutch.GivenM);
        (_next.X[0], _next.VX[0]) = (0.0, 0.0);
        (_before, _now, _next) = (_now, _next, _before);
        (_dtBefore, TimeS) = (dt, TimeS + dt);
    }

    /// <summary>A step that is not taken over.</summary>
    public void Try(double dt)
    {
        Bdf2 step = _dtBefore > 0.0 ? Bdf2.Step(dt, _dtBefore) : Bdf2.BackwardEuler(dt);
        _pass.Begin(step, _before, _now, _next);
        Clutch.Begin(step, _outM + Clutch.GivenM, _turnRad);
        LineEnd tail = Tail(step, TimeS + dt);
        (_next.X[1], _next.X[0]) = (tail.FreePosition.X, 0.0);
        for (int pass = 0; pass < Passes;)
        {
            _pass.SetDirections(_next);
            LineEnd head = Clutch.Give(LineEnd.Prescribed(Vec3.Zero, Vec3.Zero), _pass.Direction(0));
            _pass.Solve(step, _next, head, tail, out _, out _);
            pass += Clutch.Finish(_pass.Solver.Tension[0]) ? 0 : 1;
        }
    }

    private LineEnd Tail(Bdf2 step, double endS)
    {
        if (_hand is not null)
        {
            (double place, double handMS) = _hand(endS);
            return LineEnd.Prescribed(new Vec3(_lengthM + place, 0.0, 0.0), new Vec3(handMS, 0.0, 0.0));
        }

        double speed = step.History(_now.VX[1], _before.VX[1]);
        double free = step.History(_now.X[1], _before.X[1]) + (step.Q * speed);
        LineEnd end = LineEnd.Prescribed(new Vec3(free, 0.0, 0.0), new Vec3(speed, 0.0, 0.0));
        end.AddYield(1.0 / _massKg, new Vec3(1.0, 0.0, 0.0));
        return end;
    }
}
