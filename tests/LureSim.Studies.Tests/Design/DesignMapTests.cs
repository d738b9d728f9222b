using LureSim.Model.Lures;
using LureSim.Model.Margin;
using LureSim.Model.Media;
using LureSim.Model.Retrieve;
using LureSim.Model.Trim;
using LureSim.Scenarios;
using LureSim.Scenarios.Keys;
using LureSim.Studies.Design;
using LureSim.Studies.Runs;
using LureSim.Studies.Tests.Support;

namespace LureSim.Studies.Tests.Design;

/// <summary>Maps: the bits of single runs, for any pair of axes and any number of threads, and reasons where there is nothing to tell.</summary>
public sealed class DesignMapTests
{
    private const string Text = """
        [rod]
        length = "7 ft"
        power = "medium"
        [line]
        material = "braid"
        label = "30 lb"
        [lure]
        shape = "cigar"
        length = "90 mm"
        diameter = "17.5 mm"
        mass = "10 g"
        ballast = [{ mass = "1.5 g", x = "-9 mm", z = "-5 mm" }, { mass = "0.6 g", x = "10 mm", z = "-4 mm" }]
        hooks = [{ size = "no. 6", x = "20 mm", z = "-8 mm" }, { size = "no. 8", x = "-43 mm", z = "0 mm" }]
        """;

    private static readonly WaterState Fresh = WaterModel.Evaluate(new WaterSpec(20.0));

    private static readonly LureSpec Lure = new(
        LureShape.Cigar, 0.09, 0.0175, 0.0175, 0.010, 0.045, 0.0, [new(0.0015, -0.009, -0.005)], [new(0.00064, 0.020, -0.008, 1e-4, 8e-8)]);

    private static readonly ScenarioResult Scenario = ScenarioSource.FromText(Text).Resolve();

    private static readonly HookSizes Sizes = HookSizes.Of(Scenario);

    private static readonly LureSpec Sized = Scenario.Setup!.Lure;

    /// <summary>Every axis, each with the next.</summary>
    public static TheoryData<string, string> Pairs()
    {
        var pairs = new TheoryData<string, string>();
        for (int i = 0; i < MapAxis.Names.Count; i++)
        {
            pairs.Add(MapAxis.Names[i], MapAxis.Names[(i + 1) % MapAxis.Names.Count]);
        }

        return pairs;
    }

    [Fact]
    public void Cells_have_the_bits_of_single_runs_for_any_number_of_threads()
    {
        MapTask task = Task(Lure, HookSizes.None, "place", "mass", 6, 5);
        DesignMap one = Run(Lure, task with { Threads = 1 }), two = Run(Lure, task with { Threads = 2 });
        Assert.Equal(one.Cells, two.Cells);
        for (int row = 0; row < 5; row++)
        {
            for (int column = 0; column < 6; column++)
            {
                LureSpec lure = task.At(Lure, one.Columns[column], one.Rows[row]);
                TrimPoint single = TrimPoint.Of(lure, Trimming.Rest(lure, Fresh));
                Assert.Equal(single.Rest.TrimRad, one.At(column, row).TrimRad);
                Assert.Equal(single.FreeboardM, one.At(column, row).FreeboardM);
                Assert.Equal(MarginRun.Towed(lure, Fresh, new MarginTask()).Tow!.Modes[0].GrowthPerS, one.At(column, row).GrowthPerS);
            }
        }
    }

    [Theory]
    [MemberData(nameof(Pairs))]
    public void Any_pair_has_the_bits_of_single_lures_and_turned_over_the_same_cells(string columns, string rows)
    {
        MapTask task = Task(Sized, Sizes, columns, rows, 3, 2), turned = task with { Columns = task.Rows, Rows = task.Columns };
        DesignMap map = Run(Sized, task), other = Run(Sized, turned);
        for (int row = 0; row < map.Rows.Count; row++)
        {
            for (int column = 0; column < map.Columns.Count; column++)
            {
                LureSpec lure = task.At(Sized, map.Columns[column], map.Rows[row]);
                Assert.Equal(MapCell.Of(DesignPoint.Of(lure, Fresh, new MarginTask())), map.At(column, row));
                Assert.Equal(map.At(column, row), other.At(row, column));
            }
        }

        // Where it is now is on every axis, and there the lure is as it is.
        LureSpec now = task.At(Sized, task.Columns.Own(Sized), task.Rows.Own(Sized));
        Assert.InRange(task.Columns.Own(Sized), task.Columns.From, task.Columns.To);
        Assert.Equal(Sized, now);
    }

    [Theory]
    [InlineData(ChangeKind.BallastAlong)]
    [InlineData(ChangeKind.BallastUp)]
    [InlineData(ChangeKind.BallastMass)]
    [InlineData(ChangeKind.TieAlong)]
    [InlineData(ChangeKind.TieUp)]
    [InlineData(ChangeKind.HookSize)]
    [InlineData(ChangeKind.Length)]
    [InlineData(ChangeKind.Section)]
    public void A_step_along_an_axis_is_the_ranked_change_of_that_step(ChangeKind kind)
    {
        ChangeKind beside = kind == ChangeKind.TieUp ? ChangeKind.TieAlong : ChangeKind.TieUp;
        MapTask task = new(MapAxis.Of(kind, Sized, Sizes), MapAxis.Of(beside, Sized, Sizes), Sizes, KeptMass.Body);
        foreach (DesignChange change in BuilderChanges.All.Where(c => c.Kind == kind))
        {
            double own = task.Columns.Own(Sized), value = kind is ChangeKind.Length or ChangeKind.Section ? own * (1.0 + change.Amount) : own + change.Amount;
            LureSpec ranked = change.Of(Sized, Sizes)!, along = task.At(Sized, value, task.Rows.Own(Sized));
            DesignPoint a = DesignPoint.Of(ranked, Fresh, new MarginTask()), b = DesignPoint.Of(along, Fresh, new MarginTask());
            Assert.NotEqual(Sized, ranked);
            Assert.Equal(a.Trim!.Rest.TrimRad, b.Trim!.Rest.TrimRad, 1e-11);
            Assert.Equal(a.Trim.Rest.MassKg, b.Trim.Rest.MassKg, 1e-15);
            Assert.Equal(a.GrowthPerS!.Value, b.GrowthPerS!.Value, 1e-8);
        }
    }

    // Mass as the cube: a body of known wood, longer and thicker by the same share, all weights but the ballast along.
    [Fact]
    public void Mass_follows_from_the_material_where_it_is_known_and_stays_where_not()
    {
        LureSpec wood = Lure with { Build = new(Kind: LureBuild.Solid, DensityKgM3: 400.0), Hooks = [] };
        LureSpec bare = LureWeight.Weighed(wood with { Ballast = [] });
        MapTask task = new(MapAxis.Of(ChangeKind.Length, bare, HookSizes.None), MapAxis.Of(ChangeKind.Section, bare, HookSizes.None), HookSizes.None);
        Assert.Equal(Math.Pow(1.1, 3.0) * bare.MassKg, task.At(bare, 1.1 * bare.LengthM, 1.1 * bare.DiameterM).MassKg, 1e-9);
        Assert.Equal(Lure.MassKg, task.At(Lure, 1.1 * Lure.LengthM, 1.1 * Lure.DiameterM).MassKg);
    }

    [Fact]
    public void The_weight_that_moves_stays_the_same_one_when_it_becomes_the_lightest()
    {
        MapTask task = Task(Sized, Sizes, "place", "mass", 3, 3);
        LureSpec light = task.At(Sized, 0.004, 0.0004);
        Assert.Equal(0.004, light.Ballast[0].XM, 1e-15);
        Assert.Equal(0.0004, light.Ballast[0].MassKg, 1e-15);
        Assert.Equal(Sized.Ballast[1], light.Ballast[1]);
        Assert.Equal(Sized.MassKg, light.MassKg);
    }

    [Fact]
    public void A_lure_without_a_weight_gets_a_new_one_on_the_map_of_place_and_mass_alone()
    {
        LureSpec bare = Lure with { Ballast = [] };
        MapTask task = Task(bare, HookSizes.None, "place", "mass", 3, 2);
        BallastSpec put = task.At(bare, -0.01, 0.001).Ballast.Single();
        Assert.Equal(-0.01, put.XM, 1e-15);
        Assert.Equal(0.001, put.MassKg, 1e-15);
        Assert.Equal(BallastRoom.LowestM(HullShape.Create(Lure).SectionAt(-0.01), put), put.ZM, 1e-12);
        Assert.All(Run(bare, task).Cells, c => Assert.NotEqual(FloatWord.Refused, c.Word));
    }

    [Theory]
    [InlineData("tie", "tie", "two axes that differ, not \"tie\" twice")]
    [InlineData("tie", "hooks", "no hook of the lure is given by its size")]
    [InlineData("tie", "mass", "the lure has no weight (lure.ballast)")]
    [InlineData("height", "place", "the lure has no weight (lure.ballast)")]
    public void Pairs_that_make_no_map_of_a_lure_are_refused(string columns, string rows, string why) =>
        Assert.Contains(why, Assert.Throws<ArgumentException>(() => Task(Lure with { Ballast = [] }, HookSizes.None, columns, rows, 2, 2)).Message, StringComparison.Ordinal);

    [Fact]
    public void A_height_that_varies_is_not_the_lowest_too() => Assert.Contains(
        "the height of the weight is an axis",
        Assert.Throws<ArgumentException>(() => MapTask.Of(Lure, HookSizes.None, ChangeKind.BallastAlong, ChangeKind.BallastUp, KeptMass.Total, BallastHeight.Lowest)).Message,
        StringComparison.Ordinal);

    // Sizes 10 to 5/0: hooks no. 6 and no. 8 can go one size down and eight up together.
    [Fact]
    public void An_axis_of_hooks_holds_every_size_that_all_hooks_can_go_to()
    {
        var axis = MapAxis.Of(ChangeKind.HookSize, Sized, Sizes);
        Assert.Equal([.. Enumerable.Range(-1, 10).Select(i => (double)i)], axis.Values());
        Assert.Equal(11, HookSizes.Count);
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
    public void Cells_that_sink_or_lie_over_or_cannot_be_made_say_so()
    {
        DesignMap sinks = Run(Lure, Weight(ChangeKind.BallastMass, 0.001, 0.03));
        Assert.Equal(FloatWord.Floats, sinks.At(0, 0).Word);
        Assert.Equal(FloatWord.Sinks, sinks.At(1, 1).Word);
        Assert.Contains("sinks", sinks.At(1, 1).Reason, StringComparison.Ordinal);
        Assert.True(double.IsNaN(sinks.At(1, 1).TrimRad));
        LureSpec heavy = Lure with { Ballast = [new(0.005, -0.009, -0.005)] };
        DesignMap over = Run(heavy, Weight(ChangeKind.BallastUp, -0.005, 0.006));
        Assert.Equal((FloatWord.Floats, FloatWord.LiesOver), (over.At(0, 0).Word, over.At(0, 1).Word));

        // Half a metre is no lure, and one of wood cannot even be weighed.
        LureSpec wood = LureWeight.Weighed(Lure with { Build = new(Kind: LureBuild.Solid, DensityKgM3: 400.0) });
        DesignMap large = Run(wood, new(new(ChangeKind.Length, 0.09, 0.5, 2), new(ChangeKind.TieUp, -0.001, 0.0, 2), HookSizes.None));
        Assert.Equal((FloatWord.Floats, FloatWord.Refused), (large.At(0, 0).Word, large.At(1, 0).Word));
        Assert.NotNull(large.At(1, 0).Reason);
    }

    [Fact]
    public void Windows_are_the_longest_stretch_of_the_rhythms_tried_at_the_cells_tried()
    {
        MapTask task = Weight(ChangeKind.BallastMass, 0.001, 0.01);
        DesignMap map = Run(Lure, task with { Columns = task.Columns with { Count = 4 }, Rows = task.Rows with { Count = 4 } });
        MapWindows windows = With(map, 2).Windows!;
        Assert.Equal(4, windows.Cells.Count);
        Assert.Equal(6, windows.RhythmsPerS.Count);
        WindowCell walks = windows.Cells.First(w => (w.Column, w.Row) == (1, 1)), sinks = windows.Cells.First(w => w.Row == 3);
        Assert.Equal((windows.RhythmsPerS[1], windows.RhythmsPerS[3]), (walks.FromPerS, walks.ToPerS));
        Assert.Equal(0.5, walks.WalkShare);
        Assert.NotNull(sinks.Reason);
        Assert.Throws<ArgumentException>(() => DesignMapStudy.WithWindows(map, MadeUp.Setup(), new RetrieveTask(StrokeM: 0.0), 2, Made, null, default));
    }

    [Fact]
    public void Windows_are_tried_at_every_size_of_hooks_and_at_one_value_at_least()
    {
        MapTask task = Task(Sized, Sizes, "tie", "hooks", 3, 10);
        Assert.Equal(10, With(Run(Sized, task), 20).Windows!.Cells.Count);
    }

    private static DesignMap With(DesignMap map, int step) => DesignMapStudy.WithWindows(map, MadeUp.Setup(), new RetrieveTask(), step, Made, null, default);

    // Walks from 0.9 to 2 a second.
    private static StationaryOutcome Made(Model.Assembly.Setup setup, RetrieveTask run) =>
        MadeUp.Outcome(run.CadencePerS is > 0.9 and < 2.0 ? WalkPattern.Alternating : WalkPattern.Tracking);

    private static DesignMap Run(LureSpec lure, MapTask task) => DesignMapStudy.Run(lure, Fresh, task, new MarginTask(), null, default);

    private static MapTask Task(LureSpec lure, HookSizes sizes, string columns, string rows, int across, int up)
    {
        MapTask task = MapTask.Of(lure, sizes, MapAxis.KindOf(columns)!.Value, MapAxis.KindOf(rows)!.Value, KeptMass.Total, BallastHeight.Kept);
        return task with { Columns = Few(task.Columns, across), Rows = Few(task.Rows, up) };

        static MapAxis Few(MapAxis axis, int count) => axis.IsCounted ? axis : axis with { Count = count };
    }

    private static MapTask Weight(ChangeKind beside, double from, double to) =>
        new(new(ChangeKind.BallastAlong, -0.02, 0.02, 2), new(beside, from, to, 2), HookSizes.None, KeptMass.Body);
}
