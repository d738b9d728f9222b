using LureSim.Model.Assembly;
using LureSim.Model.Hands;
using LureSim.Model.Lines;
using LureSim.Model.Lines.Chain;
using LureSim.Model.Lures;
using LureSim.Model.Lures.Free;
using LureSim.Model.Media;
using LureSim.Model.Reels;
using LureSim.Model.Rods;
using LureSim.Numerics;

namespace LureSim.Model.Retrieve;

/// <summary>The parts of one retrieve, built from its specification and set at their start.</summary>
internal sealed class RetrieveParts
{
    /// <summary>Shortest segment that is worth its step, m (docs/line-solver.md).</summary>
    private const double ShortestSegmentM = 0.25;

    /// <summary>Builds all parts.</summary>
    /// <param name="setup">Set-up.</param>
    /// <param name="task">Retrieve.</param>
    /// <exception cref="ArgumentException">A number is out of range, or parts make no sense together (sinking lure, leader longer than the line).</exception>
    /// <exception cref="ModelException">The lure finds no float.</exception>
    public RetrieveParts(Setup setup, RetrieveTask task)
    {
        ArgumentNullException.ThrowIfNull(setup);
        ArgumentNullException.ThrowIfNull(task);
        setup.Check();
        task.Check();
        (Setup, Task) = (setup, task);
        WaterState water = WaterModel.Evaluate(setup.Water);
        FloatingLure floating = FloatingLure.Float(setup.Lure, water);
        (Hull, Attitude) = (WalkHullBuilder.Build(floating), FloatSolver.Report(floating));
        CentreOfGravity = floating.Mass.Centre;
        Medium = new LineMedium(water, AirModel.Evaluate(setup.Air), Cylinder, LayerM: 2.0 * setup.Water.ContactHeightM);
        Twitch = new Twitch(task.CadencePerS, setup.Angler.PullTimeS, setup.Angler.ReturnTimeS, setup.Angler.ReturnShare);
        Swing = new WristSwing(setup.Angler, setup.Rod.FreeLengthM, task.StrokeM, Twitch);
        double length = task.DistanceM + task.TakeUp.SlackM;
        Mesh = new LineMesh(setup.Line, setup.Leader, length, SegmentCount(task.Solver.Nodes, length, setup.Leader));
        Rod = new ModalRod(RodModes.Compute(setup.Rod));
        var clutch = new TipClutch(new DragClutch(setup.Reel, setup.Line), Mesh, setup.Rod.FreeLengthM);
        Step = new CoupledStep(Mesh, Medium, Rod, task.Hull == HullFreedom.Planar ? new PlanarLure(new WalkingHull(Hull), PlanarStart()) : FreeStart(floating), setup.Leader?.Knot == TieKnot.Fixed, clutch);
        Step.Start(Swing.At(0.0));
        TakeUp = task.NewTakeUp(Twitch, SlackM);
        Wind = new WindProfile(setup.Air);
    }

    /// <summary>Set-up.</summary>
    public Setup Setup { get; }

    /// <summary>Retrieve.</summary>
    public RetrieveTask Task { get; }

    /// <summary>Hull coefficients.</summary>
    public WalkHull Hull { get; }

    /// <summary>G in body axes, m.</summary>
    public Vec3 CentreOfGravity { get; }

    /// <summary>Float attitude.</summary>
    public FloatReport Attitude { get; }

    /// <summary>Water, air and drag laws.</summary>
    public LineMedium Medium { get; }

    /// <summary>Stroke over time.</summary>
    public Twitch Twitch { get; }

    /// <summary>The turning rod.</summary>
    public WristSwing Swing { get; }

    /// <summary>The cut line.</summary>
    public LineMesh Mesh { get; }

    /// <summary>The bending rod.</summary>
    public ModalRod Rod { get; }

    /// <summary>The coupled step.</summary>
    public CoupledStep Step { get; }

    /// <summary>The reel.</summary>
    public HandleTakeUp TakeUp { get; }

    /// <summary>Wind.</summary>
    public WindProfile Wind { get; }

    /// <summary>Unstretched line out minus straight distance from tip to tie, m.</summary>
    public double SlackM => Mesh.LengthM - StraightM;

    /// <summary>Straight distance from tip to tie, m.</summary>
    public double StraightM
    {
        get
        {
            LineState s = Step.Now;
            int n = Mesh.Segments;
            return (new Vec3(s.X[n], s.Y[n], s.Z[n]) - new Vec3(s.X[0], s.Y[0], s.Z[0])).Length;
        }
    }

    private static DragCurve Cylinder { get; } = DragCurve.FromLaw(CylinderDrag.Cd);

    private static int SegmentCount(int wanted, double lengthM, LeaderSpec? leader) =>
        Math.Max(leader is null ? 2 : 4, Math.Min(wanted, (int)(lengthM / ShortestSegmentM)));

    private FreeLure FreeStart(FloatingLure floating)
    {
        HullState start = PlanarStart();
        var hull = new FreeHull(floating);
        double x = start.X + (Hull.TieArmM * Math.Cos(start.Psi)), y = start.Y + (Hull.TieArmM * Math.Sin(start.Psi));
        return new FreeLure(hull, hull.AtRest(x, y, start.Psi), start.Psi);
    }

    /// <summary>Where the planar hull starts.</summary>
    public HullState PlanarStart()
    {
        RetrieveTask r = Task;
        double drop = Swing.TipHeightM - Hull.TieHeightM;
        double across = r.StartSidewaysM;
        double run = Math.Sqrt(Math.Max(0.0, (r.DistanceM * r.DistanceM) - (drop * drop) - (across * across)));
        double psi = Math.PI + r.StartHeadingRad;
        return new HullState(
            run - (Hull.TieArmM * Math.Cos(psi)), across - (Hull.TieArmM * Math.Sin(psi)), psi, 0.0, 0.0, 0.0, 0.0, 0.0);
    }
}
