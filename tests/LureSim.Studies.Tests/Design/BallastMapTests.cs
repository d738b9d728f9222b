using LureSim.Model.Lures;
using LureSim.Model.Margin;
using LureSim.Model.Media;
using LureSim.Model.Retrieve;
using LureSim.Model.Trim;
using LureSim.Studies.Design;
using LureSim.Studies.Runs;
using LureSim.Studies.Tests.Support;

namespace LureSim.Studies.Tests.Design;

/// <summary>Maps: the bits of single runs, for any number of threads, and reasons where there is nothing to tell.</summary>
public sealed class BallastMapTests
{
    private static readonly WaterState Fresh = WaterModel.Evaluate(new WaterSpec(20.0));

    private static readonly LureSpec Lure = new(
        LureShape.Cigar, 0.09, 0.0175, 0.0175, 0.010, 0.045, 0.0, [new(0.0015, -0.009, -0.005)], [new(0.00064, 0.020, -0.008, 1e-4, 8e-8)]);

    [Fact]
    public void Cells_have_the_bits_of_single_runs_for_any_number_of_threads()
    {
        MapTask task = MapTask.Of(Lure, MapSecond.Mass, KeptMass.Total, BallastHeight.Kept) with { Columns = 6, Rows = 5 };
        BallastMap one = BallastMapStudy.Run(Lure, Fresh, task with { Threads = 1 }, new MarginTask(), null, default);
        BallastMap two = BallastMapStudy.Run(Lure, Fresh, task with { Threads = 2 }, new MarginTask(), null, default);
        Assert.Equal(one.Cells, two.Cells);
        for (int row = 0; row < 5; row++)
        {
            for (int column = 0; column < 6; column++)
            {
                LureSpec lure = task.At(Lure, one.XM[column], one.Second[row]);
                TrimPoint single = TrimPoint.Of(lure, Trimming.Rest(lure, Fresh));
                Assert.Equal(single.Rest.TrimRad, one.At(column, row).TrimRad);
                Assert.Equal(single.FreeboardM, one.At(column, row).FreeboardM);
                Assert.Equal(MarginRun.Towed(lure, Fresh, new MarginTask()).Tow!.Modes[0].GrowthPerS, one.At(column, row).GrowthPerS);
            }
        }
    }

    // The map knows the critical side force to 0.125 / 8, the single run to its last halving.
    [Fact]
    public void The_critical_side_force_of_a_cell_is_that_of_the_whole_margin_to_its_step()
    {
        DesignPoint quick = DesignPoint.Of(Lure, Fresh, new MarginTask()), whole = DesignPoint.Whole(Lure, Fresh, new MarginTask(), default);
        Assert.InRange(quick.CriticalShedding!.Value - whole.CriticalShedding!.Value, 0.0, 0.125 / 8.0);
        Assert.Equal(whole.GrowthPerS, quick.GrowthPerS);
    }

    [Fact]
    public void Depths_of_a_point_are_those_of_the_whole_trim()
    {
        TrimPoint point = TrimPoint.Of(Lure, Fresh);
        TrimResult whole = Trimming.Run(Lure, Fresh);
        Assert.Equal(whole.FreeboardM, point.FreeboardM, 1e-12);
        Assert.Equal(whole.DraftM, point.DraftM, 1e-12);
    }

    [Fact]
    public void Cells_that_sink_or_lie_over_say_so()
    {
        MapTask mass = new(-0.02, 0.02, MapSecond.Mass, 0.001, 0.03, KeptMass.Body, Columns: 2, Rows: 2);
        BallastMap sinks = BallastMapStudy.Run(Lure, Fresh, mass, new MarginTask(), null, default);
        Assert.Equal(FloatWord.Floats, sinks.At(0, 0).Word);
        Assert.Equal(FloatWord.Sinks, sinks.At(1, 1).Word);
        Assert.Contains("sinks", sinks.At(1, 1).Reason, StringComparison.Ordinal);
        Assert.True(double.IsNaN(sinks.At(1, 1).TrimRad));
        LureSpec heavy = Lure with { Ballast = [new(0.005, -0.009, -0.005)] };
        MapTask up = new(-0.02, 0.02, MapSecond.Up, -0.005, 0.006, Columns: 2, Rows: 2);
        BallastMap over = BallastMapStudy.Run(heavy, Fresh, up, new MarginTask(), null, default);
        Assert.Equal((FloatWord.Floats, FloatWord.LiesOver), (over.At(0, 0).Word, over.At(0, 1).Word));
    }

    [Fact]
    public void Windows_are_the_longest_stretch_of_the_rhythms_tried_at_the_cells_tried()
    {
        MapTask task = new(-0.02, 0.02, MapSecond.Mass, 0.001, 0.01, KeptMass.Body, Columns: 4, Rows: 4);
        BallastMap map = BallastMapStudy.Run(Lure, Fresh, task, new MarginTask(), null, default);
        BallastMap with = BallastMapStudy.WithWindows(map, MadeUp.Setup(), new RetrieveTask(), 2, Made, null, default);
        MapWindows windows = with.Windows!;
        Assert.Equal(4, windows.Cells.Count);
        Assert.Equal(6, windows.RhythmsPerS.Count);
        WindowCell walks = windows.Cells.First(w => (w.Column, w.Row) == (1, 1)), sinks = windows.Cells.First(w => w.Row == 3);
        Assert.Equal((windows.RhythmsPerS[1], windows.RhythmsPerS[3]), (walks.FromPerS, walks.ToPerS));
        Assert.Equal(0.5, walks.WalkShare);
        Assert.NotNull(sinks.Reason);
        Assert.Throws<ArgumentException>(() => BallastMapStudy.WithWindows(map, MadeUp.Setup(), new RetrieveTask(StrokeM: 0.0), 2, Made, null, default));

        // Walks from 0.9 to 2 a second.
        static StationaryOutcome Made(Model.Assembly.Setup setup, RetrieveTask run) =>
            MadeUp.Outcome(run.CadencePerS is > 0.9 and < 2.0 ? WalkPattern.Alternating : WalkPattern.Tracking);
    }
}
