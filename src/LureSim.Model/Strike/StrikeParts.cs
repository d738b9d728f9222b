using LureSim.Model.Assembly;
using LureSim.Model.Fish;
using LureSim.Model.Lines;
using LureSim.Model.Lines.Chain;
using LureSim.Model.Lures;
using LureSim.Model.Media;
using LureSim.Model.Reels;
using LureSim.Model.Rods;
using LureSim.Numerics;

namespace LureSim.Model.Strike;

/// <summary>The parts of one strike, checked and at rest: hand over the origin, the fish in direction x on the water.</summary>
internal sealed class StrikeParts
{
    // Shortest segment that is worth its step, m (docs/line-solver.md).
    private const double ShortestSegmentM = 0.25;

    /// <summary>Builds the parts.</summary>
    /// <exception cref="ArgumentException">A number is out of range, or parts make no sense together.</exception>
    public StrikeParts(Setup setup, StrikeTask task)
    {
        ArgumentNullException.ThrowIfNull(setup);
        ArgumentNullException.ThrowIfNull(task);
        setup.Check();
        task.Check();
        (Setup, Task) = (setup, task);
        WaterState water = WaterModel.Evaluate(setup.Water);
        var medium = new LineMedium(water, AirModel.Evaluate(setup.Air), Cylinder, LayerM: 2.0 * setup.Water.ContactHeightM);
        ChainRodEnd rod = StrokeRod.Of(setup, task.Stroke);
        Vec3 tip = rod.TipNow, hook = HookPlace(tip, task.DistanceM);
        double length = task.DistanceM + task.SlackM;
        if (setup.Leader is LeaderSpec leader && leader.LengthM >= length)
        {
            throw new ArgumentException("The leader must be shorter than the line out.");
        }

        int segments = Math.Max(setup.Leader is null ? 2 : 4, Math.Min(task.Solver.Nodes, (int)(length / ShortestSegmentM)));
        var mesh = new LineMesh(setup.Line, setup.Leader, length, segments);
        var fish = new FishEnd(setup.Fish, setup.Cover, FlyingLure.MassKg(setup.Lure), water.DensityKgM3, hook);
        Step = new StrikeStep(mesh, medium, rod, new DragClutch(setup.Reel, setup.Line), fish, setup.Cover);
        Vec3[] nodes = new LineAtRest(tip, hook).Nodes(length, Shares(mesh));
        Step.Start(i => nodes[i]);
    }

    /// <summary>Set-up.</summary>
    public Setup Setup { get; }

    /// <summary>Task.</summary>
    public StrikeTask Task { get; }

    /// <summary>The coupled step.</summary>
    public StrikeStep Step { get; }

    private static DragCurve Cylinder { get; } = DragCurve.FromLaw(CylinderDrag.Cd);

    // On the water, straight ahead of the hand, at the distance from the tip.
    private static Vec3 HookPlace(Vec3 tip, double distance)
    {
        double square = (distance * distance) - (tip.Z * tip.Z) - (tip.Y * tip.Y);
        return square > 0.0
            ? new(tip.X + Math.Sqrt(square), 0.0, 0.0)
            : throw new ArgumentException("The rod tip is farther from the water than the strike's distance: strike farther out or hold the rod lower.");
    }

    private static double[] Shares(LineMesh mesh)
    {
        double[] share = new double[mesh.Segments + 1];
        double run = 0.0;
        for (int i = 0; i < mesh.Segments; i++)
        {
            run += mesh.Rest[i];
            share[i + 1] = Math.Min(1.0, run / mesh.LengthM);
        }

        share[mesh.Segments] = 1.0;
        return share;
    }
}
