using LureSim.Model.Hands;
using LureSim.Model.Lines;
using LureSim.Model.Strike;
using LureSim.Scenarios;
using LureSim.Studies.Strike;
using LureSim.Studies.Tests.Support;

namespace LureSim.Studies.Tests.Strike;

public sealed class StrikeStudyTests
{
    private static readonly string[] Quick = ["strike.nodes=8", "strike.step=1 ms", "strike.duration=0.7 s"];

    [Fact]
    public void A_report_has_the_same_bits_for_any_number_of_threads()
    {
        StrikeReport one = Run("treble-edge.toml", 1), three = Run("treble-edge.toml", 3);
        Assert.Equal(one.Window, three.Window);
        Assert.Equal(one.Curves, three.Curves);
        Assert.Equal(one.Strike.Summary, three.Strike.Summary);
        Assert.Equal(one.Locked!.Series["hook_force_N"], three.Locked!.Series["hook_force_N"]);
    }

    [Fact]
    public void Curves_are_of_four_lines_of_one_label_and_of_the_rods_beside()
    {
        StrikeCurves curves = Run("treble-edge.toml").Curves;
        Assert.Equal([CurveLine.Own, CurveLine.Nylon, CurveLine.SoakedNylon, CurveLine.Fluorocarbon], curves.Lines.Select(c => c.LineKind));
        Assert.Equal([CurveRod.Lighter, CurveRod.Heavier, CurveRod.Longer], curves.Rods.Select(c => c.RodKind));
        Assert.All(curves.Lines.Skip(1), c => Assert.Equal(curves.LabelN, LineLabels.LabelOf(c.Line), 0.02 * curves.LabelN));
        Assert.Equal(30.0 * LineLabels.NewtonPerLb, curves.LabelN, 1e-9);
        Assert.All(curves.Lines.Concat(curves.Rods), c => Assert.Equal(StrikeCurveStudy.DistancesM, c.Points.Select(p => p.DistanceM)));
        Assert.Equal((2.2, 4.5, 3.0), (curves.Rods[0].Rod.ThirdLoadN, curves.Rods[1].Rod.ThirdLoadN, curves.Rods[2].Rod.ThirdLoadN));
        Assert.Equal(6.0 * 0.0254, curves.Rods[2].Rod.LengthM - curves.Lines[0].Rod.LengthM, 1e-9);

        // Far out a line that stretches more pulls less: soft lines run out of stroke.
        double[] far = [.. curves.Lines.Select(c => c.Points[^1].HookForceN)];
        Assert.True(far[0] > far[1] && far[1] > far[2], string.Join(' ', far));
    }

    [Fact]
    public void A_line_like_the_own_one_stands_once()
    {
        StrikeCurves curves = Run("small-walker-nylon.toml").Curves;
        Assert.Equal([CurveLine.Own, CurveLine.Braid, CurveLine.SoakedNylon, CurveLine.Fluorocarbon], curves.Lines.Select(c => c.LineKind));
    }

    // A leader of 3 m leaves no line at 3 m: that distance is a gap, the others are there.
    [Fact]
    public void A_distance_at_which_nothing_can_be_done_is_a_gap()
    {
        StrikeCurve own = Run("treble-edge.toml", 0, "leader.length=4 m").Curves.Lines[0];
        Assert.True(double.IsNaN(own.Points[0].HookForceN) && own.Points[0].Limit is null);
        Assert.All(own.Points.Skip(1), p => Assert.True(double.IsFinite(p.HookForceN)));
    }

    // Half the step of the curves and the usual one of a strike: what docs/strike.md says of their error.
    [Fact]
    public void The_step_of_the_curves_costs_a_fifth_of_a_percent_at_most()
    {
        ScenarioResult scenario = ScenarioSource.Read(Shipped.File("hollow-mat.toml"), [], Activities.Strike);
        foreach (double distance in new[] { 5.0, 15.0, 30.0 })
        {
            StrikeTask task = scenario.Strike! with { DistanceM = distance, DurationS = 0.7 };
            double Peak(double step) => StrikeRun.Run(scenario.Setup!, task with { Solver = task.Solver with { StepS = step } }).Demand().Summary.HookForcePeakN;
            Assert.Equal(1.0, Peak(1e-3) / Peak(5e-4), 2e-3);
        }
    }

    [Fact]
    public void Guesses_about_the_hook_are_read_both_ways_and_what_is_given_is_not()
    {
        ThresholdCase[] all = [ThresholdCase.SetsEasily, ThresholdCase.SetsHard, ThresholdCase.HoldsWeakly, ThresholdCase.HoldsStrongly, ThresholdCase.OnePoint];
        Assert.Equal(all, Run("treble-edge.toml").Window.Bands.Select(b => b.Case));
        Assert.Equal([ThresholdCase.HoldsWeakly, ThresholdCase.HoldsStrongly], Run("treble-edge.toml", 0, "strike.set_force=8 N", "strike.points=1").Window.Bands.Select(b => b.Case));
    }

    [Fact]
    public void Where_no_drag_sets_the_hook_it_is_tried_what_would()
    {
        StrikeReport report = Run("small-walker-nylon.toml");
        Assert.Null(report.Window.Range.LowN);
        Assert.Contains(report.Remedies, r => r is { Kind: RemedyKind.Line, Line: CurveLine.Braid, Sets: true });
        Assert.Contains(report.Remedies, r => r is { Kind: RemedyKind.FullEffort, Line: CurveLine.Own });
        Assert.All(report.Remedies.Where(r => r.Kind == RemedyKind.Nearer), r => Assert.True(r.DistanceM < 15.0));
        Assert.Empty(Run("treble-edge.toml").Remedies);
    }

    [Fact]
    public void Who_lands_the_fish_is_as_strong_as_who_strikes()
    {
        StrikeReport usual = Run("treble-edge.toml"), strong = Run("treble-edge.toml", 0, "strike.torque=60 N m", "strike.pull=150 N");
        Assert.Equal((40.0, 100.0), (usual.Landing.Task.TorqueNm, usual.Landing.Task.PullN));
        Assert.Equal((60.0, 150.0), (strong.Landing.Task.TorqueNm, strong.Landing.Task.PullN));
        Assert.Equal(StrikeStyle.Sweep, strong.Strike.Task.Stroke.Style);
    }

    [Fact]
    public void A_wish_to_stop_is_granted()
    {
        using var stop = new CancellationTokenSource();
        ScenarioResult scenario = ScenarioSource.Read(Shipped.File("treble-edge.toml"), Quick, Activities.Strike);
        Assert.ThrowsAny<OperationCanceledException>(() => StrikeStudy.Run(scenario, 2, done => Stop(done, stop), stop.Token));

        static void Stop(double done, CancellationTokenSource stop)
        {
            if (done > 0.3)
            {
                stop.Cancel();
            }
        }
    }

    private static StrikeReport Run(string file, int threads = 0, params string[] set) =>
        StrikeStudy.Run(ScenarioSource.Read(Shipped.File(file), [.. Quick, .. set], Activities.Strike), threads, null, CancellationToken.None).Demand();
}
