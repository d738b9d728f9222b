using LureSim.Model.Cover;
using LureSim.Model.Landing;
using static LureSim.Model.Tests.Landing.LandingCases;

namespace LureSim.Model.Tests.Landing;

/// <summary>Line over plants and the ways out of them.</summary>
public sealed class PlantPullTests
{
    private static readonly CoverSpec Mat = CoverSpec.Of(CoverKind.Mat);

    [Fact]
    public void Line_over_plants_follows_its_differential_equation()
    {
        // dT/ds = f + mu kappa T by Runge-Kutta: 1000 steps of order 4 are exact to round-off.
        double Slope(double t) => Mat.DragNM + (Mat.LineFriction * Mat.TurnRadM * t);
        double pull = 40.0;
        const double h = 6.0 / 1000;
        for (int i = 0; i < 1000; i++)
        {
            double k1 = Slope(pull), k2 = Slope(pull + (0.5 * h * k1)), k3 = Slope(pull + (0.5 * h * k2)), k4 = Slope(pull + (h * k3));
            pull += h / 6.0 * (k1 + (2.0 * k2) + (2.0 * k3) + k4);
        }

        Assert.Equal(pull, PlantLine.TipN(Mat, 6.0, 40.0), 1e-10);
        Assert.Equal(40.0, PlantLine.FishN(Mat, 6.0, pull), 1e-10);
    }

    [Theory]
    [InlineData(0.0)]
    [InlineData(1e-12)]
    [InlineData(1e-7)]
    public void Without_turns_each_metre_takes_its_hold(double turn)
    {
        CoverSpec straight = Mat with { TurnRadM = turn };
        Assert.Equal(10.0 + (0.5 * 6.0), PlantLine.TipN(straight, 6.0, 10.0), 1e-5);
        Assert.Equal(10.0, PlantLine.FishN(straight, 6.0, PlantLine.TipN(straight, 6.0, 10.0)), 1e-12);
    }

    [Fact]
    public void Plants_may_take_it_all_but_never_more()
    {
        Assert.Equal(0.0, PlantLine.FishN(Mat, 6.0, 2.0));
        Assert.Equal(7.0, PlantLine.FishN(Mat, 0.0, 7.0));
        Assert.Throws<ArgumentOutOfRangeException>(() => PlantLine.TipN(Mat, -1.0, 2.0));
        Assert.Throws<ArgumentOutOfRangeException>(() => PlantLine.FishN(Mat, 1.0, double.NaN));
    }

    [Fact]
    public void Three_ways_out_of_a_mat()
    {
        var task = new LandingTask(DistanceM: 8.0, PlantSpeedMS: 0.0);
        PlantPull p = Run(Usual with { Cover = Mat }, task).Plants;
        double weight = (1.5 + Mat.WeedKg) * Gravity, theta = task.LineElevationRad(Usual);
        Assert.Equal(weight, p.Out.FishN, 1e-12);
        Assert.Equal(weight, p.Out.TipN, 1e-12);
        Assert.Equal(Mat.GripN, p.Through.FishN, 1e-12);
        Assert.Equal(PlantLine.TipN(Mat, 6.0, Mat.GripN), p.Through.TipN, 1e-12);

        // On the plants: pull along the line less friction leaves nothing, friction mu times what the line does not carry.
        Assert.Equal(0.4 * (weight - (p.Over.FishN * Math.Sin(theta))), p.Over.FishN * Math.Cos(theta), 1e-9);
        Assert.Equal(0.08 / Math.Sin(theta), p.LineHeldM, 1e-12);
        Assert.True(p.Over.TipN < p.Through.TipN);
    }

    [Fact]
    public void Open_water_takes_only_its_drag()
    {
        PlantPull p = Run(task: new LandingTask(PlantSpeedMS: 0.5)).Plants;
        Assert.Equal(1.0, p.LineShare);
        Assert.Equal(p.Through.FishN, p.Through.TipN);
        Assert.Equal(0.5 * 998.2 * 0.003 * 0.25, p.Through.FishN, 1e-3);
    }

    [Fact]
    public void Line_over_plants_is_no_longer_than_the_line()
    {
        PlantPull p = Run(Usual with { Cover = Mat with { LineOverM = 30.0 } }, new LandingTask(DistanceM: 5.0)).Plants;
        Assert.Equal(5.0, p.LineLaidM);
    }
}
