using LureSim.Model;
using LureSim.Model.Lures;
using LureSim.Model.Media;
using LureSim.Model.Retrieve;
using LureSim.Numerics;
using LureSim.Reports.Kit.Charts;
using LureSim.Reports.Tests.Support;
using OxyPlot;

namespace LureSim.Reports.Tests.Charts;

/// <summary>The outside of a lure in pictures, against closed forms and against the float solver.</summary>
public sealed class LureBodyTests
{
    private const double Degree = Math.PI / 180.0;

    // Twice as broad as high, tie under the axis, weight low and far back.
    private static LureSpec Lure(LureShape shape) => new(
        shape, 0.10, 0.024, 0.012, 0.011, 0.049, -0.003, [new BallastSpec(0.004, -0.02, -0.004)], []);

    // Half-extent of an ellipse of half-axes p, q along a direction turned by an angle from the first axis.
    private static double Extent(double p, double q, double angle) => Math.Sqrt(Math.Pow(p * Math.Cos(angle), 2) + Math.Pow(q * Math.Sin(angle), 2));

    [Theory]
    [InlineData(0, 0)]
    [InlineData(25, 0)]
    [InlineData(-40, 30)]
    [InlineData(80, -60)]
    public void Silhouette_of_an_ellipsoid_from_the_side_is_the_ellipse_of_the_closed_form(double pitch, double roll)
    {
        List<DataPoint> seen = LureBody.Of(Lure(LureShape.Spheroid)).FromSide(new Attitude(0.0, pitch * Degree, roll * Degree));
        double across = Extent(0.006, 0.012, roll * Degree);

        // The polygon lies inside the curve: 61 stations miss its ends by less than a thousandth.
        Assert.InRange(Span(seen.Select(p => p.Y)) / (2.0 * Extent(across, 0.05, pitch * Degree)), 0.999, 1.0 + 1e-12);
        Assert.InRange(Span(seen.Select(p => p.X)) / (2.0 * Extent(0.05, across, pitch * Degree)), 0.999, 1.0 + 1e-12);
    }

    [Fact]
    public void From_above_the_hull_is_shorter_by_cos_pitch_and_as_broad_as_its_roll_makes_it()
    {
        List<DataPoint> seen = LureBody.Of(Lure(LureShape.Spheroid)).FromAbove(new Attitude(0.0, 50.0 * Degree, 30.0 * Degree));
        Assert.Equal(0.10 * Math.Cos(50.0 * Degree), Span(seen.Select(p => p.X)), 12);
        Assert.Equal(2.0 * Extent(0.012, 0.006, 30.0 * Degree), Span(seen.Select(p => p.Y)), 12);
    }

    [Fact]
    public void A_section_rolled_left_side_up_has_its_left_edge_up_and_its_back_to_the_right()
    {
        var body = LureBody.Of(Lure(LureShape.Spheroid));
        Assert.Equal(0.0, body.LargestXM, 12);
        List<DataPoint> back = body.HalfSection(90.0 * Degree, back: true), belly = body.HalfSection(90.0 * Degree, back: false);
        At(0.0, 0.012, back[0]);
        At(0.0, -0.012, back[^1]);
        At(-0.006, 0.0, back[back.Count / 2]);
        At(0.006, 0.0, belly[belly.Count / 2]);

        // At 30 degrees the left edge has gone up by sin 30 of the half-breadth; the tie under the axis has swung to the left.
        At(0.012 * Math.Cos(30.0 * Degree), 0.006, body.HalfSection(30.0 * Degree, back: true)[0]);
        At(0.0015, -0.003 * Math.Cos(30.0 * Degree), body.TieFromAhead(30.0 * Degree));
    }

    [Fact]
    public void Water_cuts_the_largest_section_where_it_lies()
    {
        var body = LureBody.Of(Lure(LureShape.Spheroid));
        double centre = LureMass.Of(Lure(LureShape.Spheroid), HullShape.Create(Lure(LureShape.Spheroid))).Centre.Z;
        Assert.Equal(0.002 + centre, body.WaterOverAxisM(new Attitude(-0.002, 0.0)), 12);

        // The section leans with the pitch, so the way to the water along it is longer by 1 / cos.
        var pose = new Attitude(-0.004, 35.0 * Degree, 20.0 * Degree);
        double up = pose.HeightM + Vec3.Dot(pose.Up, -1.0 * LureMass.Of(Lure(LureShape.Spheroid), HullShape.Create(Lure(LureShape.Spheroid))).Centre);
        Assert.Equal(-up / Math.Cos(35.0 * Degree), body.WaterOverAxisM(pose), 12);
        Assert.True(double.IsFinite(body.WaterOverAxisM(new Attitude(0.0, 90.0 * Degree))));
    }

    [Theory]
    [InlineData(LureShape.Cigar)]
    [InlineData(LureShape.Hollow)]
    public void Nose_and_tie_lie_where_the_float_solver_has_them(LureShape shape)
    {
        WalkHull hull = WalkHullBuilder.Build(Lure(shape), new WaterState(1000.0, 1.0e-6, 0.072));
        var body = LureBody.Of(Lure(shape));
        var pose = new Attitude(hull.CentreHeightM, hull.TrimRad, hull.HeelRad);
        Assert.True(hull.TrimRad > 3.0 * Degree);
        Vec3 nose = body.Nose(pose), tie = body.Tie(pose);
        Assert.Equal(hull.NoseHeightM, pose.HeightM + nose.Z, 12);
        Assert.Equal(hull.NoseM, nose.X, 12);
        Assert.Equal(hull.TieHeightM, pose.HeightM + tie.Z, 12);
        Assert.Equal(hull.TieArmM, tie.X, 12);
    }

    // The angles of the channels mean what the pictures take them for: nose and tie of a run lie where pitch, roll and heading put them.
    [Fact]
    public void Nose_and_tie_of_a_run_lie_where_its_angles_put_them()
    {
        RetrieveResult made = MadeUpRetrieve.Result();
        RetrieveResult run = RetrieveRun.Run(made.Setup, made.Task with { DurationS = 2.0, WarmUpS = 0.5, Hull = HullFreedom.Six }).Demand();
        var body = LureBody.Of(run.Setup.Lure);
        Series s = run.Series;
        double widestRoll = 0.0;
        for (int i = 0; i < s.Count; i++)
        {
            var pose = new Attitude(s["lure_z_m"][i], s["pitch_deg"][i] * Degree, s["roll_deg"][i] * Degree);
            Vec3 nose = body.Nose(pose);
            DataPoint place = LureBody.Place(s["lure_x_m"][i], s["lure_y_m"][i], Math.PI + (s["heading_deg"][i] * Degree), nose.X, nose.Y);
            Assert.Equal(s["nose_x_m"][i], place.X, 9);
            Assert.Equal(s["nose_y_m"][i], place.Y, 9);
            Assert.Equal(s["nose_z_m"][i], pose.HeightM + nose.Z, 9);
            Assert.Equal(s["nose_height_m"][i], pose.HeightM + body.Tie(pose).Z, 9);
            widestRoll = Math.Max(widestRoll, Math.Abs(pose.HeelRad));
        }

        Assert.True(widestRoll > 5.0 * Degree, $"rolls by {widestRoll / Degree} deg only");
    }

    private static double Span(IEnumerable<double> values) => values.Max() - values.Min();

    private static void At(double left, double up, DataPoint point)
    {
        Assert.Equal(left, point.X, 12);
        Assert.Equal(up, point.Y, 12);
    }
}
