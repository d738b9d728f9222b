using LureSim.Model;
using LureSim.Model.Lures;
using LureSim.Model.Retrieve;
using LureSim.Numerics;
using LureSim.Scenarios;

namespace LureSim.Validation.Invariants;

/// <summary>Mirror, compass bearing and repetition: the same retrieve must come out.</summary>
public sealed class SymmetryTests
{
    // Five twitches at two a second. Rounding, 1e-15 at the start, is magnified by each snap (up to a decade a twitch).
    private const double FiveTwitches = 2.5, Close = 1e-9;

    private static readonly Scenario Plain = Shipped.Read(Shipped.Default, "retrieve.duration=2.5 s", "air.wind=4 m/s", "air.wind_from=from left");

    /// <summary>Everything mirrored: start, rod and wind.</summary>
    [Theory]
    [InlineData(0.15, 0.0)]
    [InlineData(-0.8, 0.3)]
    public void A_mirrored_set_up_walks_a_mirrored_path(double heading, double sideways)
    {
        Scenario left = Plain with { Retrieve = Plain.Retrieve! with { StartHeadingRad = heading, StartSidewaysM = sideways } };
        Scenario right = left with
        {
            Setup = left.Setup with
            {
                Angler = left.Setup.Angler with { RodBearingRad = -left.Setup.Angler.RodBearingRad },
                Air = left.Setup.Air with { WindFromRad = -left.Setup.Air.WindFromRad },
            },
            Retrieve = left.Retrieve! with { StartHeadingRad = -heading, StartSidewaysM = -sideways },
        };
        Mirrored(left.Run(), right.Run());
    }

    /// <summary>A rod that points along the line has no side of its own: only the start heading is mirrored.</summary>
    [Fact]
    public void Start_headings_left_and_right_walk_mirrored_paths()
    {
        Scenario left = Shipped.Read(Shipped.Default, "retrieve.duration=2.5 s", "angler.rod_bearing=0 deg");
        Mirrored(
            (left with { Retrieve = left.Retrieve! with { StartHeadingRad = 0.4 } }).Run(),
            (left with { Retrieve = left.Retrieve! with { StartHeadingRad = -0.4 } }).Run());
    }

    [Fact]
    public void A_mirror_test_can_fail()
    {
        RetrieveResult walk = Plain.Run();
        Assert.ThrowsAny<Xunit.Sdk.XunitException>(() => Mirrored(walk, walk));
    }

    /// <summary>The whole set-up turned to another compass bearing, wind and all.</summary>
    [Theory]
    [InlineData(0.5)]
    [InlineData(2.0)]
    [InlineData(-3.0)]
    public void A_retrieve_toward_another_bearing_is_the_same_retrieve(double bearing)
    {
        WalkBench north = new(Plain), turned = new(Plain, bearing);
        var path = new List<(HullState Hull, Vec3 Middle, double Tension)>();
        int middle = north.Mesh.Segments / 2;
        north.Run(FiveTwitches, _ => path.Add((((PlanarLure)north.Step.Lure).Now, Node(north, middle), north.Step.TieForce.Length)));
        int n = 0;
        turned.Run(FiveTwitches, _ =>
        {
            (HullState hull, Vec3 node, double tension) = path[n++];
            HullState h = ((PlanarLure)turned.Step.Lure).Now;
            Vec3 place = turned.Back(new Vec3(h.X, h.Y, 0.0));
            Assert.Equal(hull.X, place.X, Close);
            Assert.Equal(hull.Y, place.Y, Close);
            Assert.Equal(hull.Psi, h.Psi - bearing, 1e-8);
            Assert.Equal(0.0, (node - turned.Back(Node(turned, middle))).Length, Close);
            Assert.Equal(tension, turned.Step.TieForce.Length, 1e-6);
        });
        Assert.Equal(path.Count, n);
    }

    // The bench must be the product's retrieve, or the test above says nothing about it.
    [Fact]
    public void The_bench_steps_as_the_product_does()
    {
        Scenario spec = Plain with { Retrieve = Plain.Retrieve! with { HoldDistance = true, Hull = HullFreedom.Planar } };
        var product = new List<(double Time, double X, double Y, double Heading, double Pull, double Middle)>();
        RetrieveRun.Run(
            spec.Setup, spec.Retrieve!, observer: v => product.Add((v.TimeS, v.LureXM, v.LureYM, v.HeadingRad, v.NosePullN, v.LineZM[v.LineZM.Length / 2]))).Demand();
        var bench = new WalkBench(spec);
        int n = 0;
        Assert.True(bench.Run(FiveTwitches, _ =>
        {
            (double time, double x, double y, double heading, double pull, double middle) = product[n++];
            HullState h = ((PlanarLure)bench.Step.Lure).Now;
            Assert.Equal(time, bench.Time, Close);
            Assert.Equal(x, h.X, Close);
            Assert.Equal(y, h.Y, Close);
            Assert.Equal(heading, h.Psi, 1e-8);
            Assert.Equal(pull, bench.Step.TieForce.Length, 1e-6);
            Assert.Equal(middle, bench.Step.Now.Z[(bench.Mesh.Segments + 1) / 2], Close);
        }));
        Assert.Equal(product.Count, n);
    }

    [Fact]
    public void Two_runs_give_the_same_bits()
    {
        RetrieveResult first = Plain.Run(), second = (Plain with { }).Run();
        foreach ((Channel a, Channel b) in first.Series.Channels.Zip(second.Series.Channels))
        {
            Assert.Equal(a.Values.Select(BitConverter.DoubleToInt64Bits), b.Values.Select(BitConverter.DoubleToInt64Bits));
        }

        Assert.Equal(first.Summary, second.Summary);
    }

    // Runs share nothing: side by side on several threads they give the bits of a run alone.
    [Fact]
    public void Runs_side_by_side_give_the_same_bits()
    {
        double alone = Plain.Run().Series["heading_deg"][^1];
        var ends = new double[8];
        Parallel.For(0, ends.Length, i => ends[i] = Plain.Run().Series["heading_deg"][^1]);
        Assert.All(ends, e => Assert.Equal(BitConverter.DoubleToInt64Bits(alone), BitConverter.DoubleToInt64Bits(e)));
    }

    private static void Mirrored(RetrieveResult left, RetrieveResult right)
    {
        foreach ((string channel, double sign, double tolerance) in new[]
        {
            ("lure_x_m", 1.0, Close), ("lure_y_m", -1.0, Close), ("heading_deg", -1.0, 1e-6), ("surge_m_s", 1.0, 1e-8), ("sway_m_s", -1.0, 1e-8),
            ("yaw_rate_rad_s", -1.0, 1e-6), ("nose_tension_N", 1.0, 1e-6), ("slack_m", 1.0, Close), ("rod_bend_m", 1.0, 1e-8),
        })
        {
            ValueList<double> a = left.Series[channel], b = right.Series[channel];
            Assert.Equal(a.Count, b.Count);
            for (int i = 0; i < a.Count; i++)
            {
                Assert.Equal(a[i], sign * b[i], tolerance);
            }
        }
    }

    private static Vec3 Node(WalkBench bench, int i) => new(bench.Step.Now.X[i], bench.Step.Now.Y[i], bench.Step.Now.Z[i]);
}
