using LureSim.Model;
using LureSim.Model.Assembly;
using LureSim.Model.Hands;
using LureSim.Model.Lines;
using LureSim.Model.Lines.Chain;
using LureSim.Model.Lures;
using LureSim.Model.Media;
using LureSim.Model.Reels;
using LureSim.Model.Retrieve;
using LureSim.Model.Rods;
using LureSim.Numerics;
using LureSim.Numerics.Steps;
using LureSim.Numerics.Tension;
using LureSim.Scenarios;

namespace LureSim.Validation.Invariants;

/// <summary>
/// A retrieve stepped by a loop of the test's own, so that it can be turned to another compass bearing or cut into other segments, and the film
/// seen as it was in the step; an observer of the product's run sees it after. The angler backs
/// away as with hold_distance; the parts and the coupled step are the product's.
/// </summary>
internal sealed class WalkBench
{
    private readonly RetrieveTask _task;
    private readonly RetrieveParts _parts;
    private readonly HandleTakeUp _takeUp;
    private readonly double _cos, _sin;
    private double _away;

    /// <summary>Lays the retrieve out.</summary>
    /// <param name="scenario">Set-up and retrieve.</param>
    /// <param name="bearing">Compass bearing of the whole set-up, rad.</param>
    /// <param name="segments">Segments of the line, past the product's limit of 0.25 m if need be; null for the product's own mesh.</param>
    public WalkBench(Scenario scenario, double bearing = 0.0, int? segments = null)
    {
        Setup spec = scenario.Setup;
        _task = scenario.Retrieve!;
        _parts = new RetrieveParts(spec, _task);
        Mesh = segments is int n ? new LineMesh(spec.Line, spec.Leader, _parts.Mesh.LengthM, n) : _parts.Mesh;
        _takeUp = _task.NewTakeUp(_parts.Twitch, _parts.SlackM);
        (_cos, _sin) = (Math.Cos(bearing), Math.Sin(bearing));
        Rod = new ModalRod(RodModes.Compute(spec.Rod));
        HullState h = _parts.PlanarStart();
        Vec3 p = Turned(new Vec3(h.X, h.Y, 0.0));
        var lure = new PlanarLure(new WalkingHull(_parts.Hull), h with { X = p.X, Y = p.Y, Psi = h.Psi + bearing });
        Step = new CoupledStep(Mesh, _parts.Medium, Rod, lure, spec.Leader?.Knot == TieKnot.Fixed);
        Step.Start(Frame(0.0));
        Tip = Frame(0.0);
        Account = new EnergyAccount(Step, spec.Leader?.Knot == TieKnot.Fixed, Tip);
    }

    public RetrieveParts Parts => _parts;

    public LineMesh Mesh { get; }

    public CoupledStep Step { get; }

    public ModalRod Rod { get; }

    /// <summary>The product's account of these steps.</summary>
    public EnergyAccount Account { get; }

    /// <summary>The rigid tip at the end of the last step.</summary>
    public TipFrame Tip { get; private set; }

    public double Time { get; private set; }

    /// <summary>Surface film of the nodes as it was in the last step.</summary>
    public double[] Film { get; private set; } = [];

    /// <summary>Steps to the end; <paramref name="record"/> gets the length of each step. False when the step rule cannot be kept.</summary>
    public bool Run(double end, Action<double> record)
    {
        double dt = _task.Solver.StepS, before = 0.0;
        while (Time < end - 1e-9)
        {
            double speed = _takeUp.Speed(Time, dt, Slack());
            SetWind();
            TipFrame tip = Frame(Time + dt, _away + (dt * speed), speed);
            Step.Try(before == 0.0 ? Bdf2.BackwardEuler(dt) : Bdf2.Step(dt, before), tip);
            if (!Step.IsFinite() || Step.StepRatio(dt) > RetrieveRun.StepRatioLimit)
            {
                dt *= 0.5;
                if (dt < _task.Solver.StepS / 2000.0)
                {
                    return false;
                }

                continue;
            }

            Film = [.. Step.Pass.Film];
            Account.Book(dt, tip);
            Step.Commit();
            (Tip, Time, before, _away) = (tip, Time + dt, dt, _away + (dt * speed));
            record(dt);
        }

        return true;
    }

    /// <summary>A place of the turned world as the unturned one has it.</summary>
    public Vec3 Back(Vec3 p) => new((_cos * p.X) + (_sin * p.Y), (_cos * p.Y) - (_sin * p.X), p.Z);

    private Vec3 Turned(Vec3 p) => new((_cos * p.X) - (_sin * p.Y), (_sin * p.X) + (_cos * p.Y), p.Z);

    private TipFrame Frame(double t, double back = 0.0, double speed = 0.0)
    {
        TipFrame f = _parts.Swing.At(t);
        return f with
        {
            Position = Turned(f.Position - new Vec3(back, 0.0, 0.0)),
            Velocity = Turned(f.Velocity - new Vec3(speed, 0.0, 0.0)),
            Stroke = Turned(f.Stroke),
            StrokeRate = Turned(f.StrokeRate),
            Side = Turned(f.Side),
        };
    }

    private double Slack()
    {
        LineState s = Step.Now;
        int n = Mesh.Segments;
        return Mesh.LengthM - (new Vec3(s.X[n], s.Y[n], s.Z[n]) - new Vec3(s.X[0], s.Y[0], s.Z[0])).Length;
    }

    private void SetWind()
    {
        WindProfile wind = _parts.Wind;
        for (int i = 1; i < Mesh.Segments && !wind.IsCalm; i++)
        {
            (double x, double y) = wind.Velocity(Step.Now.Z[i]);
            Vec3 w = Turned(new Vec3(x, y, 0.0));
            (Step.Pass.WindX[i], Step.Pass.WindY[i]) = (w.X, w.Y);
        }
    }
}
