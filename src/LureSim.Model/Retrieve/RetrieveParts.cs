using LureSim.Model.Assembly;
using LureSim.Model.Hands;
using LureSim.Model.Lines;
using LureSim.Model.Lines.Chain;
using LureSim.Model.Lures;
using LureSim.Model.Media;
using LureSim.Model.Reels;
using LureSim.Model.Rods;
using LureSim.Numerics;

namespace LureSim.Model.Retrieve;

/// <summary>The parts of one retrieve, built from its specification and set at their start.</summary>
public sealed class RetrieveParts
{
    /// <summary>Shortest segment that is worth its step, m (docs/line-solver.md).</summary>
    private const double ShortestSegmentM = 0.25;

    /// <summary>Builds all parts.</summary>
    /// <param name="spec">Specification.</param>
    /// <exception cref="ArgumentException">A part's numbers make no sense (sinking lure, leader longer than the line).</exception>
    /// <exception cref="ModelException">The lure finds no float.</exception>
    public RetrieveParts(RunSpec spec)
    {
        ArgumentNullException.ThrowIfNull(spec);
        Spec = spec;
        WaterState water = WaterModel.Evaluate(spec.Water);
        (Hull, Attitude) = WalkHullBuilder.BuildWithFloat(spec.Lure, water);
        Medium = new LineMedium(water, AirModel.Evaluate(spec.Air), Cylinder, LayerM: 2.0 * spec.Water.ContactHeightM);
        Twitch = new Twitch(spec.Retrieve.CadencePerS, spec.Angler.PullTimeS, spec.Angler.ReturnTimeS, spec.Angler.ReturnShare);
        Swing = new WristSwing(spec.Angler, spec.Rod.FreeLengthM, spec.Retrieve.StrokeM, Twitch);
        double length = spec.Retrieve.DistanceM + spec.Retrieve.SlackM;
        Mesh = new LineMesh(spec.Line, spec.Leader, length, SegmentCount(spec.Solver.Nodes, length, spec.Leader));
        Rod = new ModalRod(RodModes.Compute(spec.Rod));
        WalkingHull = new WalkingHull(Hull);
        Step = new CoupledStep(Mesh, Medium, Rod, WalkingHull, spec.Leader?.Knot == TieKnot.Fixed);
        Step.Start(StartState(), Swing.At(0.0));
        TakeUp = new HandleTakeUp(spec.Retrieve, Twitch, SlackM);
        Wind = new WindProfile(spec.Air);
    }

    /// <summary>Specification.</summary>
    public RunSpec Spec { get; }

    /// <summary>Hull coefficients.</summary>
    public WalkHull Hull { get; }

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

    /// <summary>The lure's step.</summary>
    public WalkingHull WalkingHull { get; }

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

    private HullState StartState()
    {
        RetrieveSpec r = Spec.Retrieve;
        double drop = Swing.TipHeightM - Hull.TieHeightM;
        double across = r.StartSidewaysM;
        double run = Math.Sqrt(Math.Max(0.0, (r.DistanceM * r.DistanceM) - (drop * drop) - (across * across)));
        double psi = Math.PI + r.StartHeadingRad;
        return new HullState(
            run - (Hull.TieArmM * Math.Cos(psi)), across - (Hull.TieArmM * Math.Sin(psi)), psi, 0.0, 0.0, 0.0, 0.0, 0.0);
    }
}
