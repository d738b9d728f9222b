using LureSim.Model.Hands;
using LureSim.Numerics;

namespace LureSim.Model.Tests.Hands;

public sealed class WristSwingTests
{
    private const double Length = 1.8, Stroke = 0.3;
    private static readonly Twitch Twitch = new(2.0, 0.1, 0.15, 1.0);

    // Square to the line and level: the rod points to +y, the pull to -x, away from the lure.
    [Fact]
    public void A_level_rod_square_to_the_line_is_pulled_straight_away_from_the_lure()
    {
        var swing = new WristSwing(new AnglerSpec(1.2, 0.0, 0.5 * Math.PI), Length, Stroke, Twitch);
        Near(new Vec3(0.0, 1.0, 0.0), swing.Along);
        Near(new Vec3(-1.0, 0.0, 0.0), swing.Pull);
        Near(new Vec3(0.0, -Length, 1.2), swing.Hand);
        Assert.Equal(1.2, swing.TipHeightM, 1e-15);
        Assert.Equal(1.0, swing.PullShare, 1e-15);

        // Side = rod x pull.
        Near(new Vec3(0.0, 0.0, 1.0), swing.At(0.0).Side);
        Near(new Vec3(0.0, 0.0, 1.2), swing.At(0.0).Position);
    }

    // A rod along (cos a, 0, sin a): pull = -x made square to it, (-sin a, 0, cos a); its share along the line is sin a.
    [Fact]
    public void A_rod_pointed_over_the_lure_draws_by_the_sine_of_its_elevation()
    {
        const double a = 0.5;
        var swing = new WristSwing(new AnglerSpec(1.2, a, 0.0), Length, Stroke, Twitch);
        Near(new Vec3(-Math.Sin(a), 0.0, Math.Cos(a)), swing.Pull);
        Assert.Equal(Math.Sin(a), swing.PullShare, 1e-12);
        Assert.Equal(1.2 + (Length * Math.Sin(a)), swing.TipHeightM, 1e-12);

        // One that points straight at the lure is lifted.
        Near(new Vec3(0.0, 0.0, 1.0), new WristSwing(new AnglerSpec(1.2, 0.0, 0.0), Length, Stroke, Twitch).Pull);
    }

    // At the end of the pull the tip has gone its arc B: angle B/L, at rest. Half way it runs at pi/2 B/0.1 s, square to the turned rod.
    [Fact]
    public void The_tip_runs_an_arc_of_the_stroke_about_the_hand()
    {
        var swing = new WristSwing(new AnglerSpec(1.2, -0.35, 1.05), Length, Stroke, Twitch);
        Assert.Equal(Stroke / Length, swing.Angle(0.1).Angle, 1e-12);
        TipFrame end = swing.At(0.1);
        Assert.Equal(Length, (end.Position - swing.Hand).Length, 1e-12);
        Assert.Equal(Math.Cos(Stroke / Length), Vec3.Dot(swing.Along, (1.0 / Length) * (end.Position - swing.Hand)), 1e-12);
        Assert.True(Vec3.Dot(swing.Pull, end.Position - swing.At(0.0).Position) > 0.29);
        TipFrame half = swing.At(0.05);
        Assert.Equal(0.5 * Math.PI * Stroke / 0.1, half.DriveMS, 1e-9);
        Near(half.DriveMS * half.Stroke, half.Velocity);
        Assert.Equal(0.0, Vec3.Dot(half.Stroke, half.Position - swing.Hand), 1e-12);

        // Rates against central differences: third derivatives of 1e5 leave 1e-6.
        TipFrame before = swing.At(0.05 - 1e-5), after = swing.At(0.05 + 1e-5);
        Near(half.Velocity, 5e4 * (after.Position - before.Position), 1e-5);
        Near(half.StrokeRate, 5e4 * (after.Stroke - before.Stroke), 1e-5);
    }

    private static void Near(Vec3 expected, Vec3 actual, double tolerance = 1e-12) => Assert.Equal(0.0, (expected - actual).Length, tolerance);
}
