using LureSim.Model.Lines;
using LureSim.Model.Lines.Chain;
using LureSim.Model.Media;
using LureSim.Numerics;

namespace LureSim.Model.Tests.Lines.Chain;

/// <summary>A main line of two segments of 1 m and a leader of two of 0.2 m: its nodes and its bending by hand.</summary>
public sealed class LeaderChainTests
{
    private const double Ei = 3e-5, L = 0.2;
    private static readonly LineSpec Main = new(LineMaterial.Braid, 0.3e-3, 7e-5, 970.0, 3000.0, 0.002, 0.0, SurfaceFilm.Dry, 200.0, 1.1, 0.01);
    private static readonly LineSpec Strand = new(LineMaterial.Nylon, 0.4e-3, 1.4e-4, 1140.0, 400.0, 0.010, Ei, SurfaceFilm.Wetted, 100.0, 1.0, 0.02);

    // A node carries half of each neighbour. The reel's line runs past the tip at its full speed, past the middle of the main line at half of it, and
    // not along the leader.
    [Fact]
    public void Nodes_carry_half_of_each_neighbour_and_the_leader_is_not_reeled()
    {
        LineMesh mesh = Mesh();
        Assert.Equal([1.0, 1.0, L, L], mesh.Rest.Take(4));
        Assert.Equal([1.0, 0.5, 0.0, 0.0, 0.0], mesh.FeedShare.Take(5));
        Assert.Equal(2, mesh.FirstLeaderSegment);
        Assert.Equal(0.5, mesh.ShareOfFeed);
        Near([3.5e-5, 7e-5, 3.5e-5 + 1.4e-5, 2.8e-5, 1.4e-5], mesh.Mass);
        Near([1.65e-4, 3.3e-4, 1.65e-4 + 4e-5, 8e-5, 4e-5], mesh.DragArea);
        Near([0.5, 1.0, 0.5, 0.0, 0.0], mesh.FilmLength);
        Near([1.5e-6 * Math.PI, 3e-6 * Math.PI, (1.5e-6 + 8e-7) * Math.PI, 1.6e-6 * Math.PI, 8e-7 * Math.PI], mesh.TangentialArea);
        Near([3000.0, 3000.0, 2000.0, 2000.0], mesh.Stiffness);
        Near([6.0, 6.0, 20.0, 20.0], mesh.Damping);
        Near([0.3e-3, 0.3e-3, 0.35e-3, 0.4e-3, 0.4e-3], mesh.Diameter);

        // Half a metre comes in: the leader stays as it is.
        mesh.SetLength(1.9);
        Assert.Equal([0.75, 0.75, L, L], mesh.Rest.Take(4));
        Near([2.625e-5, 5.25e-5, 2.625e-5 + 1.4e-5, 2.8e-5, 1.4e-5], mesh.Mass);
    }

    // Energy EI |e2 - e1|^2/(2 l) at the node between the two leader segments, e1 = (1, 0, 0), e2 = (0, 1, 0): by its slope the nodes at both outer ends
    // are pushed by -EI/l^2 (e2 - e1), and the one between takes both back.
    [Fact]
    public void A_right_angle_in_the_leader_is_pushed_open()
    {
        LinePass pass = Bent(false, 0.0, out double moment);
        const double f = Ei / (L * L);
        foreach ((int node, double share) in new[] { (1, 0.0), (2, 1.0), (3, -2.0), (4, 1.0) })
        {
            Assert.Equal(share * f, pass.ForceX[node], 1e-15);
            Assert.Equal(-share * f, pass.ForceY[node], 1e-15);
        }

        Assert.Equal(0.0, moment);
    }

    // A tight knot holds the last segment, which runs to the left (+y), along the hull's axis. The hull points at the rod turned by 0.3 rad to its left,
    // so the line should come in along (cos 0.3, sin 0.3): 2 EI/l turns the hull on by the sine of the angle between, pi/2 - 0.3. Forces and moment balance.
    [Fact]
    public void A_tight_knot_turns_the_hull_into_the_leader()
    {
        LinePass pass = Bent(true, 0.3, out double moment);
        Assert.Equal(2.0 * Ei / L * Math.Cos(0.3), moment, 1e-15);
        double torque = moment;
        Vec3 sum = Vec3.Zero;
        for (int i = 2; i <= 4; i++)
        {
            var force = new Vec3(pass.ForceX[i], pass.ForceY[i], pass.ForceZ[i]);
            sum += force;
            torque += Vec3.Cross(new Vec3(Shape().X[i], Shape().Y[i], 0.0), force).Z;
        }

        Assert.Equal(0.0, sum.Length, 1e-15);
        Assert.Equal(0.0, torque, 1e-15);
    }

    private static LineMesh Mesh() => new(Main, new LeaderSpec(Strand, 2.0 * L), 2.0 + (2.0 * L), 4);

    private static LineState Shape()
    {
        var shape = new LineState(4);
        (shape.X[1], shape.X[2], shape.X[3], shape.X[4]) = (1.0, 2.0, 2.0 + L, 2.0 + L);
        shape.Y[4] = L;
        return shape;
    }

    private static LinePass Bent(bool knot, double turned, out double moment)
    {
        LineMesh mesh = Mesh();
        var pass = new LinePass(mesh, new LineMedium(new WaterState(1000.0, 1e-3, 0.072), new AirState(1.2, 1.8e-5), DragCurve.Constant(1.0)));
        moment = new ChainBending(mesh, knot).Apply(pass, Shape(), new Vec3(Math.Cos(Math.PI + turned), Math.Sin(Math.PI + turned), 0.0)).Z;
        return pass;
    }

    private static void Near(double[] expected, double[] actual)
    {
        for (int i = 0; i < expected.Length; i++)
        {
            Assert.Equal(expected[i], actual[i], 1e-12 * Math.Abs(expected[i]));
        }
    }
}
