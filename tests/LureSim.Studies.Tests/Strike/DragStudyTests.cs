using LureSim.Model;
using LureSim.Model.Assembly;
using LureSim.Model.Cover;
using LureSim.Model.Lures;
using LureSim.Model.Strike;
using LureSim.Scenarios;
using LureSim.Scenarios.Keys;
using LureSim.Studies.Strike;
using LureSim.Studies.Tests.Support;

namespace LureSim.Studies.Tests.Strike;

public sealed class DragStudyTests
{
    private static readonly ScenarioResult Own = ScenarioSource.Read(Shipped.File("treble-edge.toml"), ["strike.nodes=12", "strike.step=1 ms"], Activities.Strike);

    // Two points of 10 N, a hold of 45 N each, wire that bears anything.
    private static readonly HookHold Hook = new(2, 10.0, 45.0, 500.0);
    private static readonly double Word = ReelKeys.Drag.Choices[0].Value;

    private static Setup Setup => Own.Setup! with { Hook = Hook };

    // Between the last halving's ends the law is as good as straight: what is left is the bow of a piece of 1.39^(1/32) - 1 = 1 % of the drag.
    [Fact]
    public void Both_ends_are_where_the_law_of_the_pull_puts_them()
    {
        static double Pull(double drag) => 120.0 * (1.0 - Math.Exp(-drag / 25.0));
        DragWindow window = Window(Setup, Pull);
        Assert.Equal(-25.0 * Math.Log(1.0 - (20.0 / 120.0)), window.InStrike.LowN!.Value, 2e-3);
        Assert.Equal(-25.0 * Math.Log(1.0 - (Leader(Setup) / 120.0)), window.InStrike.HighN!.Value, 2e-3);
        Assert.Equal((WeakPlace.Leader, DragCase.Strike, false), (window.InStrike.Gives, window.InStrike.Case, window.InStrike.IsEmpty));
    }

    [Fact]
    public void The_window_of_real_strikes_is_the_one_of_a_scan()
    {
        DragWindow window = DragStudy.Run(Own.Setup!, Own.Strike!, 100.0, [], 0, CancellationToken.None).Demand().Window;
        double low = window.Range.LowN!.Value;
        double[] drags = [.. Enumerable.Range(-20, 41).Select(i => low + (0.05 * i))];
        double scanned = drags.First(d => StrikeRun.Run(Own.Setup! with { Reel = Own.Setup!.Reel with { DragN = d } }, Own.Strike!).Demand().Summary.Sets);
        Assert.InRange(low, scanned - 0.05 - 0.02, scanned + 0.02);
        Assert.Equal(DragCase.Boat, window.Range.Case);
        Assert.True(window.Points.Zip(window.Points.Skip(1)).All(p => p.First.DragN < p.Second.DragN && p.First.SlipM >= p.Second.SlipM));
    }

    [Fact]
    public void At_the_boat_the_high_end_is_the_drag_that_starts_as_the_weakest_part_gives()
    {
        DragOutcome found = Run(Setup, d => Math.Min(d, 30.0));
        Assert.Equal((DragCase.Boat, null), (found.Window.Range.Case, found.Window.InStrike.Gives));
        Assert.Equal(found.Landing.Boat.Weakest.LoadN, found.Window.Range.HighN!.Value * found.Window.BoatFactor, 1e-9);
        Assert.Equal(found.Landing.Boat.SlipStartN / Setup.Reel.DragN, found.Window.BoatFactor, 1e-9);
    }

    [Fact]
    public void Where_no_drag_sets_the_hook_there_is_no_low_end_and_no_advice()
    {
        DragWindow window = Window(Setup, d => Math.Min(d, 19.9));
        Assert.Equal((null, true, DragAdviceReason.CannotSet, null), (window.Range.LowN, window.Range.IsEmpty, window.Advice.Reason, window.Advice.At));
    }

    [Fact]
    public void A_hold_that_gives_before_the_points_are_in_leaves_an_empty_window()
    {
        DragWindow window = Window(Setup with { Hook = Hook with { HoldN = 9.0 } }, d => d);
        Assert.True(window.InStrike.IsEmpty);
        Assert.Equal((20.0, 18.0, WeakPlace.HookHold), (window.InStrike.LowN!.Value, window.InStrike.HighN!.Value, window.InStrike.Gives), Near);
        Assert.Equal((DragAdviceReason.TooWeak, null), (window.Advice.Reason, window.Advice.At));
        DragRange loose = Window(Setup with { Hook = Hook with { HoldN = 1.0 } }, d => 2.5 * d).InStrike;
        Assert.Equal((null, WeakPlace.HookHold), (loose.HighN, loose.Gives));
    }

    [Fact]
    public void What_only_the_boat_forbids_is_set_first_and_eased_then()
    {
        DragWindow window = Window(Setup with { Hook = Hook with { HoldN = 11.0 } }, d => d);
        Assert.Equal((true, DragCase.Boat, false), (window.Range.IsEmpty, window.Range.Case, window.InStrike.IsEmpty));
        Assert.Equal(DragAdviceReason.SetThenEase, window.Advice.Reason);
        Assert.Equal(window.Range.LowN, window.Advice.DragN);
    }

    [Theory]
    [InlineData(CoverKind.Open, 25.0, DragAdviceReason.Middle)]
    [InlineData(CoverKind.Mat, 25.0, DragAdviceReason.Shut)]
    [InlineData(CoverKind.Mat, 500.0, DragAdviceReason.HighAmongPlants)]
    public void Among_plants_the_highest_drag_is_advised_in_open_water_the_middle(CoverKind cover, double most, DragAdviceReason reason)
    {
        DragWindow window = Window(Setup with { Cover = CoverSpec.Of(cover) }, d => Math.Min(2.0 * d, most));
        double expected = reason switch
        {
            DragAdviceReason.Middle => Math.Sqrt(window.Range.LowN!.Value * window.Range.HighN!.Value),
            DragAdviceReason.Shut => Word,
            _ => 0.8 * window.InStrike.HighN!.Value,
        };
        Assert.Equal(reason, window.Advice.Reason);
        Assert.Equal(expected, window.Advice.DragN!.Value, 1e-9);
        Assert.Equal(Math.Min(2.0 * expected, most), window.Advice.At!.HookForceN, 1e-9);
    }

    [Theory]
    [InlineData(10.0)]
    [InlineData(60.0)]
    public void Locked_is_what_a_reel_really_holds_or_the_drag_that_the_scenario_has_where_that_is_more(double own)
    {
        DragOutcome found = Run(Setup with { Reel = Setup.Reel with { DragN = own } }, d => d);
        Assert.Equal(Math.Max(own, Word), found.Window.LockedN);
        Assert.Equal(found.Window.LockedN, found.Locked!.Setup.Reel.DragN);
        Assert.Equal(DragStudy.LooseN, found.Loose!.Setup.Reel.DragN);
        Assert.Equal(own, found.Own.Setup.Reel.DragN);
        Assert.Equal(found.Window.LockedN, found.Window.Points[^1].DragN);
    }

    [Fact]
    public void Other_readings_move_the_end_that_is_theirs()
    {
        ThresholdReading[] readings =
        [
            new(ThresholdCase.SetsEasily, Hook with { SetN = 5.0 }), new(ThresholdCase.SetsHard, Hook with { SetN = 20.0 }), new(ThresholdCase.HoldsWeakly, Hook with { HoldN = 15.0 }),
            new(ThresholdCase.HoldsStrongly, Hook with { HoldN = 100.0 }), new(ThresholdCase.OnePoint, Hook with { Points = 1 }),
        ];
        DragWindow window = DragStudy.Run(Setup, Own.Strike!, 100.0, readings, 1, CancellationToken.None, MadeUpStrike.Of(d => Math.Min(d, 39.0))).Demand().Window;
        DragRange[] found = [.. window.Bands.Select(b => b.Range)];
        Assert.Equal(readings.Select(r => r.Case), window.Bands.Select(b => b.Case));
        Assert.Equal([10.0, 20.0, 10.0], new[] { found[0].LowN!.Value, found[2].LowN!.Value, found[4].LowN!.Value }, Near1);
        Assert.Null(found[1].LowN);
        Assert.Equal(30.0 / window.BoatFactor, found[2].HighN!.Value, 1e-6);
        Assert.Equal(window.Range.HighN!.Value, found[3].HighN!.Value, 1e-9);
    }

    [Fact]
    public void A_strike_that_cannot_be_finished_is_a_gap_and_the_own_one_ends_the_study()
    {
        DragWindow window = Window(Setup, d => d < 3.0 ? double.NaN : d);
        Assert.True(window.Points[0].DragN > 3.0);
        Assert.Equal(20.0, window.Range.LowN!.Value, 0.05);
        Assert.Null(Run(Setup, d => d < 3.0 ? double.NaN : d).Loose);
        Assert.Equal("made up", DragStudy.Run(Setup, Own.Strike!, 100.0, [], 1, CancellationToken.None, MadeUpStrike.Of(_ => double.NaN)).Failure!.Reason);
    }

    private static bool Near((double, double, WeakPlace?) a, (double, double, WeakPlace?) b) => Near1(a.Item1, b.Item1) && Near1(a.Item2, b.Item2) && a.Item3 == b.Item3;

    private static bool Near1(double a, double b) => Math.Abs(a - b) < 1e-9;

    private static double Leader(Setup setup) => Own.Strike!.KnotShare * setup.Leader!.Line.BreakN;

    private static DragWindow Window(Setup setup, Func<double, double> pull) => Run(setup, pull).Window;

    private static DragOutcome Run(Setup setup, Func<double, double> pull) => DragStudy.Run(setup, Own.Strike!, 100.0, [], 1, CancellationToken.None, MadeUpStrike.Of(pull)).Demand();
}
