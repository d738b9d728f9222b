using LureSim.Model.Lures;
using LureSim.Model.Retrieve;
using LureSim.Scenarios;

namespace LureSim.Validation.Invariants;

/// <summary>Flat floaters: the hull in six degrees of freedom and the planar one, which share no step, tell the same walk.</summary>
public sealed class BothHullsTests
{
    // Inside the windows, not at their edges: over the whole map the widths of the two differ by up to 3.4 cm (docs/retrieve.md).
    [Theory]
    [InlineData("large-walker.toml", 1.5, 14)]
    [InlineData("large-walker.toml", 2.0, 10)]
    [InlineData("small-walker.toml", 1.25, 14)]
    [InlineData("small-walker.toml", 2.0, 10)]
    public void A_flat_floater_walks_alike(string file, double rhythm, double slackCm)
    {
        RetrieveSummary six = Settled(file, rhythm, slackCm, HullFreedom.Six), planar = Settled(file, rhythm, slackCm, HullFreedom.Planar);
        Assert.Equal(WalkPattern.Alternating, six.Pattern);
        Assert.Equal(WalkPattern.Alternating, planar.Pattern);
        Assert.Equal(planar.WidthM, six.WidthM, 0.035);
        Assert.Equal(planar.HeadingSwingDeg, six.HeadingSwingDeg, 25.0);
        Assert.Equal(planar.AdvancePerTwitchM, six.AdvancePerTwitchM, 0.03);

        // What only one of them can tell.
        Assert.Equal(0.0, planar.RollPeakDeg);
        Assert.True(six.RollPeakDeg > 20.0 && six.PitchHighDeg - six.PitchLowDeg > 2.0);
    }

    // A lure that rests 25 deg tail-down goes flatter when it is pulled; the planar hull keeps the attitude of rest.
    [Fact]
    public void A_slanted_lure_flattens_on_a_pull()
    {
        RetrieveSummary towed = Shipped.Read(
            Shipped.Named("slanted-walker.toml"), "retrieve.stroke=0 cm", "retrieve.take_up_speed=0.5 m/s", "retrieve.hold_distance=true",
            "retrieve.duration=16 s", "retrieve.warm_up=10 s", "solver.nodes=20", "solver.step=1 ms").Run().Summary;
        Assert.Equal(25.0, towed.RestTrimDeg, 0.5);
        Assert.InRange(towed.PitchMeanDeg, 5.0, 18.0);
        Assert.Equal(WalkPattern.Tracking, towed.Pattern);
    }

    private static RetrieveSummary Settled(string file, double rhythm, double slackCm, HullFreedom hull)
    {
        Scenario spec = Shipped.Read(
            Shipped.Named(file), FormattableString.Invariant($"retrieve.cadence={rhythm} /s"), FormattableString.Invariant($"retrieve.slack={slackCm} cm"),
            "retrieve.hold_distance=true", "retrieve.duration=30 s", "retrieve.warm_up=18 s", "solver.nodes=40", "solver.step=1 ms");
        return (spec with { Retrieve = spec.Retrieve! with { Hull = hull } }).Run().Summary;
    }
}
