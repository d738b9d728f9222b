using LureSim.Model.Hands;

namespace LureSim.Model.Tests.Hands;

public sealed class HandDriveTests
{
    private static readonly Catch None = new(0.05, 0.0, 0.0, 10.0, true);
    private const double Effort = 40.0, Top = 13.0, Ramp = 0.06, Hold = -3.0, Inertia = 0.2;

    // Smoothstep s^2 (3 - 2 s): 0, 0.15625, 0.5, 1 at s = 0, 1/4, 1/2, 1. What held the start fades as the drive rises.
    [Theory]
    [InlineData(0.0, 0.0)]
    [InlineData(0.015, 0.15625)]
    [InlineData(0.03, 0.5)]
    [InlineData(0.06, 1.0)]
    [InlineData(1.0, 1.0)]
    public void The_drive_rises_from_the_load_that_holds_the_start(double time, double rise)
    {
        DriveLoad load = Drive(1e9).About(time, 0.0, 0.0, LetGo.Never);
        Assert.Equal((Effort * rise) + (Hold * (1.0 - rise)), load.At(0.0, 0.0), 1e-12);
    }

    // F0 (1 - v/v0): half of it at half the top speed, nothing at the top speed; beyond, the hands let go and do not brake.
    [Theory]
    [InlineData(0.0, 1.0)]
    [InlineData(0.5, 0.5)]
    [InlineData(0.999, 0.001)]
    [InlineData(1.2, 0.0)]
    [InlineData(-0.5, 1.5)]
    public void The_drive_falls_with_speed_and_never_brakes(double speed, double share)
    {
        DriveLoad load = Drive(1e9).About(1.0, 0.0, speed * Top, LetGo.Never);
        Assert.Equal(share * Effort, load.At(0.0, speed * Top), 1e-10);
        if (speed > 1.0)
        {
            Assert.Equal(new DriveLoad(0.0, 0.0, 0.0), load);
        }
    }

    // Half way through the window the drive has halved.
    [Fact]
    public void The_drive_gives_way_over_the_window_of_the_stop() =>
        Assert.Equal(0.5 * Effort, new HandDrive(Effort, Top, Ramp, new Stop(0.7, 0.1, Inertia, 0.0, 10.0), Hold, None).About(1.0, 0.75, 0.0, LetGo.Never).At(0.75, 0.0), 1e-9);

    // Past the window a brake with strength to spare settles like a critically damped arm of 10 rad/s: x = x0 (1 + 10 t) e^(-10 t) has
    // x' = -100 x0 t e^(-10 t) and I x'' = 100 I x0 (10 t - 1) e^(-10 t), which the load must be all along it.
    [Theory]
    [InlineData(0.0)]
    [InlineData(0.05)]
    [InlineData(0.2)]
    public void A_small_motion_past_the_stop_dies_critically_damped(double t)
    {
        const double x0 = 0.5;
        double decay = Math.Exp(-10.0 * t), place = x0 * (1.0 + (10.0 * t)) * decay, speed = -100.0 * x0 * t * decay;
        DriveLoad load = new HandDrive(0.0, Top, Ramp, new Stop(0.7, 0.1, Inertia, 1e9, 10.0), 0.0, None).About(1.0, 0.7 + place, speed, LetGo.Never);
        Assert.Equal(100.0 * Inertia * x0 * ((10.0 * t) - 1.0) * decay, load.At(0.7 + place, speed), 1e-7);
    }

    // k (x - x_s) + c v = 0.2 x 100 x 0.1 + 2 x 0.2 x 10 x v is the limit of 30 N m at v = 7 rad/s: there the brake gives tanh(1) of it.
    [Theory]
    [InlineData(7.0, 0.7615941559557649)]
    [InlineData(700.0, 1.0)]
    public void A_hard_motion_past_the_stop_is_braked_no_harder_than_the_hands_can(double speed, double share) =>
        Assert.Equal(-30.0 * share, new HandDrive(0.0, Top, Ramp, new Stop(0.7, 0.1, Inertia, 30.0, 10.0), 0.0, None).About(1.0, 0.8, speed, LetGo.Never).At(0.8, speed), 1e-9);

    // Let go, the drive fades with a smoothstep over 50 ms: 1, 0.84375, 0.5, 0 of it are left.
    [Theory]
    [InlineData(-1.0, 1.0)]
    [InlineData(0.0125, 0.84375)]
    [InlineData(0.025, 0.5)]
    [InlineData(0.05, 0.0)]
    [InlineData(1.0, 0.0)]
    public void The_drive_fades_once_the_line_is_let_go(double since, double left) =>
        Assert.Equal(left * Effort, Drive(1e9).About(2.0 + since, 0.0, 0.0, new LetGo(2.0, 0.8)).At(0.0, 0.0), 1e-12);

    // Caught, it settles like a critically damped arm at the place it follows to, whatever the stop was: the closed form of above about 0.9 rad.
    [Theory]
    [InlineData(0.0)]
    [InlineData(0.05)]
    [InlineData(0.2)]
    public void The_catch_settles_where_the_line_points(double t)
    {
        const double x0 = -0.5, aim = 0.9;
        double decay = Math.Exp(-15.0 * t), place = x0 * (1.0 + (15.0 * t)) * decay, speed = -225.0 * x0 * t * decay;
        var drive = new HandDrive(Effort, Top, Ramp, new Stop(0.2, 0.1, Inertia, 20.0, 10.0), Hold, new Catch(0.05, 0.0, 1e9, 15.0, true));
        DriveLoad load = drive.About(3.0, aim + place, speed, new LetGo(2.0, aim));
        Assert.Equal(225.0 * Inertia * x0 * ((15.0 * t) - 1.0) * decay, load.At(aim + place, speed), 1e-6);
    }

    // A push is only slowed, by 2 I w_c v, and no catch is stronger than its limit; one planned ahead begins before the release.
    [Fact]
    public void The_catch_slows_within_its_limit_and_may_begin_before_the_release()
    {
        HandDrive Slow(double limit, double delay) => new(0.0, Top, Ramp, new Stop(1e9, 0.1, Inertia, 20.0, 10.0), 0.0, new Catch(0.05, delay, limit, 15.0, false));
        Assert.Equal(-2.0 * Inertia * 15.0 * 3.0, Slow(1e9, 0.0).About(3.0, 5.0, 3.0, new LetGo(2.0, 0.0)).At(5.0, 3.0), 1e-6);
        Assert.Equal(-7.0, Slow(7.0, 0.0).About(3.0, 5.0, 300.0, new LetGo(2.0, 0.0)).At(5.0, 300.0), 1e-9);
        Assert.Equal(0.0, Slow(7.0, 0.0).About(1.995, 5.0, 300.0, new LetGo(2.0, 0.0)).At(5.0, 300.0));
        Assert.Equal(-3.5, Slow(7.0, -0.03).About(1.995, 5.0, 300.0, new LetGo(2.0, 0.0)).At(5.0, 300.0), 1e-9);
    }

    private static HandDrive Drive(double stop) => new(Effort, Top, Ramp, new Stop(stop, 0.1, Inertia, 20.0, 10.0), Hold, None);
}
