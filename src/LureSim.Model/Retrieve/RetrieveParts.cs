using LureSim.Model.Assembly;
using LureSim.Model.Hands;
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
        Twitch = new Twitch(task.CadencePerS, setup.Angler.PullTimeS, setup.Angler.ReturnTimeS, setup.Angler.ReturnShare);
        Swing = new WristSwing(setup.Angler, setup.Rod.FreeLengthM, task.StrokeM, Twitch);
        ILineEnd lure = task.Hull == HullFreedom.Planar ? new PlanarLure(new WalkingHull(Hull), PlanarStart()) : FreeStart(floating);
        Line = new TwitchedLine(setup, water, Swing, task.DistanceM + task.TakeUp.SlackM, task.Solver.Nodes, lure);
        TakeUp = task.NewTakeUp(Twitch, SlackM);
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
    public LineMedium Medium => Line.Medium;

    /// <summary>Stroke over time.</summary>
    public Twitch Twitch { get; }

    /// <summary>The turning rod.</summary>
    public WristSwing Swing { get; }

    /// <summary>Rod, line and lure.</summary>
    public TwitchedLine Line { get; }

    /// <summary>The cut line.</summary>
    public LineMesh Mesh => Line.Mesh;

    /// <summary>The bending rod.</summary>
    public ModalRod Rod => Step.Rod;

    /// <summary>Wind.</summary>
    public WindProfile Wind => Line.Wind;

    /// <summary>The coupled step.</summary>
    public CoupledStep Step => Line.Step;

    /// <summary>The reel.</summary>
    public HandleTakeUp TakeUp { get; }

    /// <summary>Unstretched line out minus straight distance from tip to tie, m.</summary>
    public double SlackM => Line.SlackM;

    /// <summary>Straight distance from tip to tie, m.</summary>
    public double StraightM => Line.StraightM;

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
