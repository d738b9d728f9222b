using LureSim.Model.Reels;

namespace LureSim.Model.Tests.Reels;

public sealed class SpoolBrakeTests
{
    private const double Matched = 7e-10, Launch = 1800.0;

    [Theory]
    [InlineData(BrakeLaw.Linear)]
    [InlineData(BrakeLaw.Quadratic)]
    [InlineData(BrakeLaw.Cubic)]
    [InlineData(BrakeLaw.Constant)]
    public void Every_law_matches_the_lure_at_its_launch(BrakeLaw law) =>
        Assert.Equal(Matched * Launch * Launch, Torque(law, Launch), 1e-12);

    // Half as fast: 1/2, 1/4, 1 of the torque; w^3 far below the knee of 1500 rad/s, w far above it.
    [Fact]
    public void The_torque_falls_with_speed_as_the_law_says()
    {
        Assert.Equal(0.5, Torque(BrakeLaw.Linear, 900.0) / Torque(BrakeLaw.Linear, 1800.0), 1e-12);
        Assert.Equal(0.25, Torque(BrakeLaw.Quadratic, 900.0) / Torque(BrakeLaw.Quadratic, 1800.0), 1e-12);
        Assert.Equal(1.0, Torque(BrakeLaw.Constant, 900.0) / Torque(BrakeLaw.Constant, 1800.0), 1e-12);
        Assert.Equal(0.125, Torque(BrakeLaw.Cubic, 5.0) / Torque(BrakeLaw.Cubic, 10.0), 1e-4);
        Assert.Equal(0.5, Torque(BrakeLaw.Cubic, 5e5) / Torque(BrakeLaw.Cubic, 1e6), 1e-4);
    }

    private static double Torque(BrakeLaw law, double w)
    {
        var brake = new SpoolBrake(law, Matched, Launch);
        return (brake.Secant(w) * w) + brake.DryNm;
    }
}
