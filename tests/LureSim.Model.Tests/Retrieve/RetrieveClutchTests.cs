using LureSim.Model.Assembly;
using LureSim.Model.Hands;
using LureSim.Model.Lures;
using LureSim.Model.Media;
using LureSim.Model.Reels;
using LureSim.Model.Retrieve;
using LureSim.Model.Tests.Cast;
using LureSim.Model.Tests.Lures;

namespace LureSim.Model.Tests.Retrieve;

/// <summary>The drag of the reel in a retrieve.</summary>
public sealed class RetrieveClutchTests
{
    private static readonly RetrieveTask Walk = new(DurationS: 4.0, WarmUpS: 1.0) { Hull = HullFreedom.Planar, Solver = new(Nodes: 20) };

    // Steady: the angler backs away at 1 m/s, the lure follows as fast as the drag lets it.
    private static readonly RetrieveTask Pull = Walk with
    {
        DistanceM = 20.0,
        StrokeM = 0.0,
        HoldDistance = true,
        TakeUp = new(TakeUpMode.Steady, SpeedMS: 1.0),
    };

    [Fact]
    public void A_drag_that_holds_changes_no_bit()
    {
        RetrieveResult usual = Run(Walk, 35.0), locked = Run(Walk, 300.0), just = Run(Walk, 3.0);
        Assert.Equal(0.0, usual.Summary.DragSlipM);
        foreach (Channel channel in usual.Series.Channels)
        {
            Assert.Equal(channel.Values, locked.Series[channel.Name].ToArray());
            Assert.Equal(channel.Values, just.Series[channel.Name].ToArray());
        }
    }

    // What is out at the end is what was out, less what the handle won, and more by what slipped; steps that are thrown away and halved keep that book too.
    [Theory]
    [InlineData(0.5, 20, 0.5e-3, 0.14, false)]
    [InlineData(0.05, 20, 0.5e-3, 0.14, false)]
    [InlineData(0.05, 60, 1e-3, 0.05, true)]
    public void Line_out_is_what_was_out_less_what_was_won_and_more_by_what_slipped(double drag, int nodes, double step, double slack, bool halves)
    {
        double won = 0.0, last = 0.0;
        RetrieveResult run = Run(
            Walk with { TakeUp = new(SlackM: slack), Solver = new(nodes, step) }, drag, observer: v => (won, last) = (won + (v.StepS * v.TakeUpMS), v.LineOutM));
        Assert.True(run.Summary.DragSlipM > 0.005);
        Assert.Equal(halves, run.Counters.Halved > 0);
        Assert.Equal(Walk.DistanceM + slack - won + run.Summary.DragSlipM, last, 1e-9);
    }

    [Fact]
    public void The_less_drag_the_more_slips_and_the_less_comes_through()
    {
        RetrieveSummary[] runs = [.. new[] { 35.0, 0.2, 0.1, 0.05 }.Select(d => Run(Walk, d).Summary)];
        for (int i = 1; i < runs.Length; i++)
        {
            Assert.True(runs[i].DragSlipM > runs[i - 1].DragSlipM);
            Assert.True(runs[i].AdvancePerTwitchM < runs[i - 1].AdvancePerTwitchM);
        }
    }

    // Drawn away from at 1 m/s against a drag of 0.05 N with r = 1: the pull at the tip is F R_full/R e^(mu theta), and the lure goes where that takes it; the
    // rest is given. theta lies between rod and line; the line sags and leaves the tip up to 0.1 rad below the lure: 1 %.
    [Fact]
    public void On_a_steady_pull_the_tip_feels_drag_radius_and_rings()
    {
        RetrieveResult run = Run(Pull, 0.05, ratio: 1.0);
        int end = run.Series["time_s"].Count - 1;
        double At(string name) => run.Series[name][end];
        double theta = Math.Acos(Math.Cos(run.Setup.Angler.RodElevationRad) * Math.Cos(run.Setup.Angler.RodBearingRad));
        WoundLine wound = WoundLine.On(run.Setup.Reel, run.Setup.Line);
        double radius = wound.RadiusM(At("line_out_m") + run.Setup.Rod.FreeLengthM);
        double expected = 0.05 * wound.OuterRadiusM / radius * Math.Exp(0.1 * theta);
        Assert.Equal(expected, At("tip_tension_N"), 0.01 * expected);

        // The distance grew by what slipped, but for what sag takes of it.
        Assert.Equal(run.Summary.DragSlipM, At("straight_m") - run.Series["straight_m"][0], 0.15);
        Assert.True(run.Summary.DragSlipM > 0.25);
    }

    [Fact]
    public void The_account_stays_closed_and_better_with_a_finer_step()
    {
        double[] open = [.. new[] { 1e-3, 0.5e-3, 0.25e-3 }.Select(s => Run(Pull with { Solver = Pull.Solver with { StepS = s } }, 0.05).Counters.EnergyOpenShare)];
        Assert.True(open[0] < 3e-4);
        Assert.True(Math.Log2(open[0] / open[1]) > 1.4 && Math.Log2(open[1] / open[2]) > 1.4, string.Join(' ', open));
    }

    [Fact]
    public void What_slips_converges_with_the_step()
    {
        double[] slip = [.. new[] { 1e-3, 0.5e-3, 0.25e-3 }.Select(s => Run(Pull with { Solver = Pull.Solver with { StepS = s } }, 0.05).Summary.DragSlipM)];
        Assert.True(Math.Abs(slip[1] - slip[2]) < 0.5 * Math.Abs(slip[0] - slip[1]), string.Join(' ', slip));
        Assert.Equal(slip[2], slip[1], 1e-3 * slip[2]);
    }

    private static RetrieveResult Run(RetrieveTask task, double dragN, double ratio = 1.25, Action<RetrieveView>? observer = null)
    {
        ReelSpec reel = (RetrieveCases.Reel with { DragN = dragN, Clutch = new ClutchSpec(ratio) }).With(CastCases.Braid);
        return RetrieveRun.Run(
            new Setup("clutch", new WaterSpec(), new AirSpec(), new AnglerSpec(), new HandsSpec(), RetrieveCases.Rod, reel, CastCases.Braid, null, TestLures.Cigar()), task, observer: observer).Demand();
    }
}
