using LureSim.Model.Assembly;
using LureSim.Model.Cover;
using LureSim.Model.Fish;
using LureSim.Model.Hands;
using LureSim.Model.Lines;
using LureSim.Model.Lures;
using LureSim.Model.Rods;
using LureSim.Model.Strike;

namespace LureSim.Model.Tests.Strike;

public sealed class StrikeTests
{
    [Fact]
    public void Held_long_enough_the_hands_pull_what_statics_say()
    {
        // A fast hook and hands that never tire: after the swing has died the chain stands still under the full torque.
        StrikeCase strike = StrikeCases.Of(LineMaterial.Braid, FishWay.Fast);
        strike = strike with { Task = strike.Task with { DurationS = 4.0, Stroke = strike.Task.Stroke with { HoldS = 4.5 } } };
        StrikeResult result = strike.Run();
        StrikeStroke stroke = strike.Task.Stroke;
        double butt = stroke.StartRad + (result.Series["rod_turn_deg"][^1] * Math.PI / 180.0);
        StrikeMoment start = result.Moments[0];
        double tipX = start.RodX[^1] - result.Series["tip_travel_m"][^1], hookX = start.LineX[^1];
        Assert.True(butt < stroke.StopRad);

        // Direction of the line: level but for the tip's height, which changes the lever by its cosine only.
        var chain = RodChain.Build(strike.Setup.Rod);
        double angle = Math.Atan2(1.5, hookX - tipX);
        double pull = RodHold.PullN(chain, (0.5 * Math.PI) - butt, -Math.Cos(angle), -Math.Sin(angle), stroke.Effort * stroke.TorqueNm, Physics.GravityMS2);
        Assert.Equal(pull, result.Series["tip_force_N"][^1], 0.02 * pull);
    }

    [Fact]
    public void Slack_line_pulls_nothing_and_costs_time()
    {
        StrikeCase strike = StrikeCases.Of(LineMaterial.Braid);
        StrikeSummary little = (strike with { Task = strike.Task with { SlackM = 0.1 } }).Run().Summary;
        StrikeResult much = (strike with { Task = strike.Task with { SlackM = 0.8 } }).Run();
        Assert.True(much.Summary.TimeToTightS > little.TimeToTightS + 0.02);
        for (int i = 0; i < much.Series.Count && much.Series["time_s"][i] < much.Summary.TimeToTightS - 0.01; i++)
        {
            Assert.InRange(much.Series["hook_force_N"][i], 0.0, StrikeRecorder.TightN);
        }
    }

    [Fact]
    public void Line_stretches_by_its_own_law()
    {
        foreach (LineMaterial material in (LineMaterial[])[LineMaterial.Braid, LineMaterial.Nylon])
        {
            StrikeCase strike = StrikeCases.Of(material, FishWay.Fast, StrikeStyle.Sweep);
            StrikeSummary s = strike.Run().Summary;

            // F L/(E A) at the peak, where neither stretch nor its rate changes; the line still swings a little across.
            double exact = s.HookForcePeakN * (strike.Task.DistanceM + strike.Task.SlackM) / strike.Setup.Line.AxialStiffnessN;
            Assert.Equal(exact, s.LineStretchM, 0.03 * exact);
        }
    }

    [Fact]
    public void A_drag_caps_the_pull()
    {
        StrikeCase locked = StrikeCases.Of(LineMaterial.Braid, FishWay.Fast), eased = StrikeCases.Of(LineMaterial.Braid, FishWay.Fast, dragN: 8.0);
        StrikeSummary tight = locked.Run().Summary, loose = eased.Run().Summary;
        double starts = eased.Setup.Reel.Clutch.StaticRatio * 8.0;
        Assert.Equal(0.0, tight.DragSlipEndM);
        Assert.NotEqual(StrikeLimit.Clutch, tight.Limit);
        Assert.Equal(StrikeLimit.Clutch, loose.Limit);
        Assert.True(loose.DragSlipM > 0.1);

        // 15 m are off the spool, so its radius has shrunk by a few per cent and the force grown by as much; the rest speeds up the spool, some 5 g at 300 m/s2.
        Assert.InRange(loose.ReelForcePeakN, starts, 1.05 * starts + 1.5);
        Assert.True(loose.HookForcePeakN < tight.HookForcePeakN);
    }

    [Fact]
    public void Soft_line_runs_out_of_stroke_where_stiff_line_meets_the_hands()
    {
        StrikeSummary braid = StrikeCases.Of(LineMaterial.Braid, distance: 30.0, style: StrikeStyle.Snap).Run().Summary;
        StrikeSummary nylon = StrikeCases.Of(LineMaterial.Nylon, distance: 30.0, style: StrikeStyle.Snap).Run().Summary;
        Assert.Equal(StrikeLimit.Hands, braid.Limit);
        Assert.Equal(StrikeLimit.Stroke, nylon.Limit);
        Assert.True(braid.HookForcePeakN > nylon.HookForcePeakN);

        // Per newton nylon of the same label stretches as their stiffnesses say, from material data alone.
        double ratio = StrikeCases.Line(LineMaterial.Braid).AxialStiffnessN / StrikeCases.Line(LineMaterial.Nylon).AxialStiffnessN;
        Assert.InRange(ratio, 4.0, 5.0);
        Assert.Equal(ratio, nylon.LineStretchM / nylon.HookForcePeakN * braid.HookForcePeakN / braid.LineStretchM, 0.05 * ratio);
    }

    [Fact]
    public void More_points_need_more_force()
    {
        StrikeCase strike = StrikeCases.Of(LineMaterial.Nylon, distance: 25.0);
        double peak = strike.Run().Summary.HookForcePeakN, each = 0.45 * peak;
        double?[] times = [.. Enumerable.Range(1, 3).Select(n => strike.With(new HookHold(n, each)).Run().Summary.TimeToForceS)];
        Assert.True(times[0] < times[1]);
        Assert.Null(times[2]);
    }

    [Fact]
    public void Peak_converges_with_step_and_nodes()
    {
        StrikeCase strike = StrikeCases.Of(LineMaterial.Braid);
        double Peak(double step, int nodes) => strike.Step(step, nodes).Run().Summary.HookForcePeakN;
        double fine = Peak(6.25e-5, 24);
        double[] errors = [.. new[] { 1e-3, 5e-4, 2.5e-4 }.Select(h => Math.Abs(Peak(h, 24) - fine))];
        Assert.True(errors[2] < errors[0], string.Join(' ', errors));
        Assert.InRange(errors[1], 0.0, 2e-3 * fine);
        double[] coarse = [.. new[] { 6, 12, 24 }.Select(n => Math.Abs(Peak(2.5e-4, n) - Peak(2.5e-4, 48)))];
        Assert.InRange(coarse[2], 0.0, 5e-3 * fine);
    }

    [Fact]
    public void Energy_closes_better_with_smaller_steps()
    {
        StrikeCase strike = StrikeCases.Of(LineMaterial.Nylon, FishWay.Runs, dragN: 10.0).Over(CoverKind.Mat);
        double[] open = [.. new[] { 1e-3, 5e-4, 2.5e-4 }.Select(h => strike.Step(h).Run().Counters.EnergyOpenShare)];
        Assert.True(open[1] < open[0] && open[2] < open[1], string.Join(' ', open));
        Assert.InRange(open[1], 0.0, 2e-3);
    }

    [Fact]
    public void A_free_fish_is_thrown_and_a_held_one_takes_more()
    {
        StrikeSummary free = StrikeCases.Of(LineMaterial.Braid).Run().Summary;
        StrikeSummary fast = StrikeCases.Of(LineMaterial.Braid, FishWay.Fast).Run().Summary;
        StrikeSummary mat = StrikeCases.Of(LineMaterial.Braid).Over(CoverKind.Mat).Run().Summary;
        Assert.True(free.FishSpeedMS > 1.0 && fast.FishSpeedMS == 0.0);
        Assert.InRange(mat.HookForcePeakN, free.HookForcePeakN, fast.HookForcePeakN);
    }

    [Fact]
    public void Same_strike_same_bits() =>
        Assert.Equal(StrikeCases.Of(LineMaterial.Nylon, FishWay.Runs).Run().Series.Channels[1].Values, StrikeCases.Of(LineMaterial.Nylon, FishWay.Runs).Run().Series.Channels[1].Values);

    [Fact]
    public void A_strike_can_be_stopped() => Assert.Throws<OperationCanceledException>(
        () => StrikeRun.Run(StrikeCases.Of(LineMaterial.Braid).Setup, new StrikeTask(), new RunContext(null, new CancellationToken(true))));

    [Fact]
    public void A_hook_nearer_than_the_tip_is_refused()
    {
        StrikeCase strike = StrikeCases.Of(LineMaterial.Braid, distance: 3.0);
        strike = strike with { Setup = strike.Setup with { Angler = strike.Setup.Angler with { HandHeightM = 3.5 } } };
        ArgumentException e = Assert.Throws<ArgumentException>(() => strike.Run());
        Assert.Contains("farther", e.Message, StringComparison.Ordinal);
    }
}
