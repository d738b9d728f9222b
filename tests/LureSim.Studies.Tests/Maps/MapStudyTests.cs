using LureSim.Model.Assembly;
using LureSim.Model.Retrieve;
using LureSim.Studies.Maps;
using LureSim.Studies.Runs;
using LureSim.Studies.Tests.Support;

namespace LureSim.Studies.Tests.Maps;

public sealed class MapStudyTests
{
    private static (Setup Setup, RetrieveTask Task)? Make(double x, double y) => (MadeUp.Setup(), Task(x, y));

    private static RetrieveTask Task(double x, double y) => new(CadencePerS: 1 + (2 * x), StrokeM: 0.1 + (0.2 * y));

    private static StationaryOutcome Lab(Setup s, RetrieveTask t) => MadeUp.Outcome(
        t.CadencePerS * t.StrokeM < 0.4 ? WalkPattern.Alternating : WalkPattern.OneSided, t.StrokeM);

    [Fact]
    public void Patterns_lie_on_their_side_of_a_known_boundary_and_glide_is_kept_where_it_walks()
    {
        MapGrid map = MapStudy.Run(new MapPlan(Depth: 3), Make, Lab);
        int width = map.Patterns.GetLength(0), height = map.Patterns.GetLength(1);
        Assert.Equal((97, 65), (width, height));
        for (int i = 0; i < width; i++)
        {
            for (int j = 0; j < height; j++)
            {
                RetrieveTask task = Task(i / (width - 1.0), j / (height - 1.0));
                bool walks = Lab(MadeUp.Setup(), task).Pattern == WalkPattern.Alternating;
                Assert.Equal(walks, map.Patterns[i, j] == WalkPattern.Alternating);
                Assert.Equal(walks ? task.StrokeM : double.NaN, map.GlideM[i, j], 1e-12);
            }
        }
    }

    [Fact]
    public void Set_ups_that_make_no_sense_stay_empty()
    {
        MapGrid map = MapStudy.Run(new MapPlan(Depth: 3), (x, y) => x > 0.5 ? null : Make(x, y), Lab);
        Assert.Null(map.Patterns[96, 0]);
        Assert.NotNull(map.Patterns[48, 0]);
        Assert.Contains(map.Samples, s => s.Point is null);
    }

    [Fact]
    public void Threads_leave_no_trace()
    {
        var plan = new MapPlan(2, 2, 1, 1, 1, Run: new StationaryPlan(2.0, 4));
        MapGrid one = MapStudy.Run(plan with { Threads = 1 }, Make), many = MapStudy.Run(plan with { Threads = 3 }, Make);
        Assert.Equal(one.Samples.Select(s => (s.I, s.J)), many.Samples.Select(s => (s.I, s.J)));
        Assert.All(one.Samples.Zip(many.Samples), p => Assert.Equal(p.First.Point!.Outcomes, p.Second.Point!.Outcomes));
        Assert.Equal(one.GlideM, many.GlideM);
    }

    [Fact]
    public void A_map_that_knows_earlier_runs_makes_only_the_others_and_comes_to_the_same()
    {
        using var stop = new CancellationTokenSource();
        var plan = new MapPlan(Depth: 3, Starts: 3, Threads: 1);
        var kept = new Dictionary<int, StationaryOutcome>();
        Assert.Throws<OperationCanceledException>(() => MapStudy.Run(plan, Make, Lab, new(null, null, KeepSome), stop.Token));
        Assert.Equal(300, kept.Count);
        int whole = 0, rest = 0;
        MapGrid through = MapStudy.Run(plan, Make, Lab, new(null, null, (_, _) => whole++));
        MapGrid resumed = MapStudy.Run(plan with { Threads = 3 }, Make, Lab, new(null, kept.GetValueOrDefault, (_, _) => rest++));
        Assert.Equal(whole, rest + 300);
        Assert.Equal(through.Samples.Select(s => (s.I, s.J)), resumed.Samples.Select(s => (s.I, s.J)));
        Assert.All(through.Samples.Zip(resumed.Samples), p => Assert.Equal(p.First.Point!.Outcomes, p.Second.Point!.Outcomes));
        Assert.Equal(through.Patterns, resumed.Patterns);
        Assert.Equal(through.GlideM, resumed.GlideM);

        void KeepSome(int index, StationaryOutcome outcome)
        {
            kept.Add(index, outcome);
            if (kept.Count == 300)
            {
                stop.Cancel();
            }
        }
    }

    [Fact]
    public void One_start_far_from_the_edge_of_walking_and_all_where_it_walks_next_to_it()
    {
        MapGrid map = MapStudy.Run(new MapPlan(Depth: 3), Make, Lab);
        Assert.All(map.Samples.Where(s => !s.Point!.Walks), s => Assert.Single(s.Point!.Outcomes));
        MapSample[] walking = [.. map.Samples.Where(s => s.Point!.Walks)];
        Assert.Contains(walking, s => s.Point!.Outcomes.Count == 1);
        Assert.Contains(walking, s => s.Point!.Outcomes.Count == 3);
        Assert.All(walking.Where(IsNextToOther), s => Assert.Equal(3, s.Point!.Outcomes.Count));
        Assert.Equal(3, MapGrid.WidestOf(map.Samples.Select(s => s.Point))!.Outcomes.Count);

        bool IsNextToOther(MapSample s) => map.Samples.Any(o => Math.Abs(o.I - s.I) <= 1 && Math.Abs(o.J - s.J) <= 1 && !o.Point!.Walks);
    }

    [Fact]
    public void Where_only_one_side_of_the_starts_walks_the_edge_is_that_of_all()
    {
        // From one side of the nose it walks up to 2.2 a second, from the other to 2.5: all starts walk to 2.2.
        static StationaryOutcome Sided(Setup s, RetrieveTask t) =>
            MadeUp.Outcome(t.CadencePerS < (t.StartHeadingRad > 0 ? 2.2 : 2.5) ? WalkPattern.Alternating : WalkPattern.Tracking);
        MapGrid map = MapStudy.Run(new MapPlan(Depth: 3), Make, Sided);
        double step = 2.0 / (map.Patterns.GetLength(0) - 1);
        for (int j = 0; j < map.Patterns.GetLength(1); j++)
        {
            int last = Enumerable.Range(0, map.Patterns.GetLength(0)).Last(i => map.Patterns[i, j] == WalkPattern.Alternating);
            Assert.InRange(1 + (last * step), 2.2 - step, 2.2);
        }
    }

    [Fact]
    public void Only_the_runs_ahead_begin_without_a_hand()
    {
        var gate = new Lock();
        int without = 0, with = 0;
        MapStudy.Run(new MapPlan(Depth: 3), Make, (s, t) =>
        {
            lock (gate)
            {
                _ = t.StartTakeUpMS is null ? without++ : with++;
            }

            return Lab(s, t);
        });

        // The second, fifth, eighth and eleventh of 13 columns, the second, fifth and eighth of 9 rows.
        Assert.Equal(4 * 3, without);
        Assert.True(with > 100);
    }
}
