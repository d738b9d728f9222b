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
        MapGrid map = MapStudy.Run(new MapPlan(), Make, Lab);
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
        MapGrid map = MapStudy.Run(new MapPlan(), (x, y) => x > 0.5 ? null : Make(x, y), Lab);
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
    public void Finished_points_are_handed_on_before_a_stop()
    {
        using var stop = new CancellationTokenSource();
        var finished = new List<MapSample>();
        var plan = new MapPlan(Starts: 3, Threads: 1);
        Assert.Throws<OperationCanceledException>(() => MapStudy.Run(plan, Make, Lab, null, Keep, stop.Token));
        Assert.Equal(5, finished.Count);
        Assert.All(finished, s => Assert.Equal(3, s.Point!.Outcomes.Count));

        // Each is the point that the whole map holds there.
        MapGrid whole = MapStudy.Run(plan, Make, Lab);
        Assert.True(whole.IsWhole);
        Assert.All(finished, s => Assert.Equal(s.Point!.Outcomes, whole.Samples.Single(w => (w.I, w.J) == (s.I, s.J)).Point!.Outcomes));
        MapGrid part = MapGrid.Part(finished);
        Assert.False(part.IsWhole);
        Assert.Equal(finished.OrderBy(s => (s.I, s.J)), part.Samples);

        void Keep(MapSample sample)
        {
            finished.Add(sample);
            if (finished.Count == 5)
            {
                stop.Cancel();
            }
        }
    }
}
