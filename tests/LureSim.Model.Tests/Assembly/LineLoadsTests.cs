using LureSim.Model.Assembly;
using LureSim.Model.Hands;
using LureSim.Model.Lines;
using LureSim.Model.Lines.Chain;
using LureSim.Model.Lures;
using LureSim.Model.Media;
using LureSim.Model.Rods;
using LureSim.Numerics;
using LureSim.Numerics.Steps;
using LureSim.Numerics.Tension;

namespace LureSim.Model.Tests.Assembly;

/// <summary>A straight level line of four segments of a metre: three nodes carry what a hand adds up.</summary>
public sealed class LineLoadsTests
{
    private const double Water = 1000.0, Air = 1.2, Diameter = 1e-3, Cd = 1.2, Ct = 0.02;

    // 1/2 rho Cd d v^2 over three metres, of which all are in the water.
    [Fact]
    public void Drag_across_adds_up_over_the_nodes()
    {
        LineLoads loads = Loads(-1.0, new Vec3(0.0, 0.5, 0.0));
        Assert.Equal(0.5 * Water * Cd * Diameter * 0.25 * 3.0, loads.DragN, 1e-9);
        Assert.Equal(3.0, loads.WettedM, 1e-12);
        Assert.Equal(0.0, loads.SagM, 1e-12);
    }

    // Reeled at 0.8 m/s past still nodes at 3/4, 1/2 and 1/4 of the line: 1/2 rho Ct pi d V^2 (9 + 4 + 1)/16.
    // The line that lies still is pulled along by V: adding v turns the slip to v - V s.
    [Theory]
    [InlineData(0.0, 0.875)]
    [InlineData(0.8, 0.0625 + 0.25 + 0.5625)]
    [InlineData(-0.8, 3.0625 + 2.25 + 1.5625)]
    public void Skin_friction_counts_the_reeled_line(double v, double squares)
    {
        LineLoads loads = Loads(-1.0, new Vec3(v, 0.0, 0.0), feed: 0.8);
        Assert.Equal(0.5 * Water * Ct * Math.PI * Diameter * 0.64 * squares, loads.DragN, 1e-9);
    }

    [Fact]
    public void In_the_air_the_wind_is_the_drag_and_nothing_is_wet()
    {
        LineLoads loads = Loads(5.0, new Vec3(0.0, 1.0, 0.0), wind: 4.0);
        Assert.Equal(0.5 * Air * Cd * Diameter * 9.0 * 3.0, loads.DragN, 1e-9);
        Assert.Equal(0.0, loads.WettedM);
    }

    // The surface cuts the layer in the middle: half wet.
    [Fact]
    public void A_line_on_the_surface_is_half_wet() => Assert.Equal(1.5, Loads(0.0, Vec3.Zero).WettedM, 1e-9);

    // The lowest node lies 0.2 m under the chord; one over it does not count.
    [Fact]
    public void Sag_is_the_lowest_point_under_the_chord()
    {
        Assert.Equal(0.2, Loads(5.0, Vec3.Zero, change: s => (s.Z[1], s.Z[3]) = (s.Z[1] - 0.2, s.Z[3] + 0.4)).SagM, 1e-9);

        // With the tie a metre lower the chord falls by a quarter of it from node to node.
        Assert.Equal(0.2, Loads(5.0, Vec3.Zero, change: s => (s.Z[1], s.Z[2], s.Z[3], s.Z[4]) = (4.75, 4.3, 4.25, 4.0)).SagM, 1e-9);
    }

    private static LineLoads Loads(double height, Vec3 velocity, double feed = 0.0, double wind = 0.0, Action<LineState>? change = null)
    {
        var line = new LineSpec(LineMaterial.Braid, Diameter, 8e-4, 1200.0, 500.0, 0.0, 0.0, SurfaceFilm.Wetted, 1e9, TangentialDragCoefficient: Ct);
        var mesh = new LineMesh(line, null, 4.0, 4);
        var medium = new LineMedium(new WaterState(Water, 1e-3, 0.072), new AirState(Air, 1.8e-5), DragCurve.Constant(Cd));
        var hull = new WalkingHull(new WalkHull(0.1, 0.02, 0.02, 0.03, 0.0, 2e-5, 0.05, height, [], [], 0.0, [], [], 0.01, 4.0, 0.1, [], []));
        var step = new CoupledStep(mesh, medium, new ModalRod(new RodModeSet(1.8, [], [], [], [], 0.05)), new PlanarLure(hull, new HullState(4.05, 0.0, Math.PI, 0.0, 0.0, 0.0, 0.0, 0.0)), false);
        var tip = new TipFrame(new Vec3(0.0, 0.0, height), Vec3.Zero, new Vec3(0.0, 0.0, 1.0), Vec3.Zero, new Vec3(0.0, 1.0, 0.0), 0.0);

        // The tie lies four metres out: G and the arm beyond it.
        step.Start(tip);
        foreach (int i in new[] { 1, 2, 3 })
        {
            (step.Now.VX[i], step.Now.VY[i], step.Now.VZ[i]) = (velocity.X, velocity.Y, velocity.Z);
            step.Pass.WindY[i] = wind;
        }

        step.Pass.FeedMS = feed;
        step.Try(Bdf2.BackwardEuler(1e-12), tip);
        step.Commit();
        change?.Invoke(step.Now);
        return LineLoads.Of(mesh, medium, step);
    }
}
