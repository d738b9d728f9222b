using LureSim.Model.Assembly;
using LureSim.Model.Hands;
using LureSim.Model.Retrieve;
using LureSim.Studies.Cadence;
using LureSim.Studies.Runs;
using LureSim.Studies.Tests.Support;

namespace LureSim.Studies.Tests.Cadence;

/// <summary>What a search tells while it goes on.</summary>
public sealed class CadenceNewsTests
{
    private static StationaryOutcome Lab(Setup s, RetrieveTask t) => MadeUp.Outcome(t.CadencePerS > s.Angler.HandHeightM ? WalkPattern.Alternating : WalkPattern.Tracking);

    private static (Setup, RetrieveTask)[] Many(int count) =>
        [.. Enumerable.Range(0, count).Select(i => (MadeUp.Setup() with { Angler = new AnglerSpec(HandHeightM: 1 + (0.4 * i)) }, new RetrieveTask()))];

    [Theory]
    [InlineData(1)]
    [InlineData(3)]
    public void Every_rhythm_is_told_and_last_as_it_is_in_the_result(int threads)
    {
        var told = new Dictionary<(int, double), RhythmPoint>();
        var order = new List<int>();
        RhythmSearch[] searches = CadenceStudy.Search(Many(3), new CadencePlan(Threads: threads), Lab, new(null, (i, p) => told[(i, p.PerS)] = p, (i, _) => order.Add(i)));
        Assert.Equal([0, 1, 2], order.Order());
        for (int i = 0; i < searches.Length; i++)
        {
            IReadOnlyList<RhythmPoint> points = searches[i].Finish(new(1, 1, 1)).Result!.Points;
            Assert.Equal(points.Select(p => p.PerS), told.Keys.Where(k => k.Item1 == i).Select(k => k.Item2).Order());
            Assert.All(points, p => Assert.Equal(p.Outcomes, told[(i, p.PerS)].Outcomes));
        }
    }

    [Fact]
    public void On_one_thread_set_ups_are_finished_one_after_the_other()
    {
        var order = new List<int>();
        var rhythms = new List<int>();
        CadenceStudy.Search(Many(3), new CadencePlan(Threads: 1), Lab, new(null, (i, _) => rhythms.Add(i), (i, _) => order.Add(i)));
        Assert.Equal([0, 1, 2], order);
        Assert.Equal(rhythms.Order(), rhythms);
    }

    [Fact]
    public void The_share_rises_and_stays_under_one()
    {
        var shares = new List<double>();
        CadenceStudy.Search(Many(2), new CadencePlan(Threads: 2), Lab, new(shares.Add));
        Assert.Equal(shares.Order(), shares);
        Assert.InRange(shares[^1], 0.2, 0.99);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(4)]
    public void A_run_that_throws_ends_the_search_with_what_it_threw(int threads)
    {
        int runs = 0;
        var thrown = Assert.Throws<InvalidDataException>(() => CadenceStudy.Search(
            Many(2), new CadencePlan(Threads: threads), (s, t) => Interlocked.Increment(ref runs) == 30 ? throw new InvalidDataException("made up") : Lab(s, t)));
        Assert.Equal("made up", thrown.Message);
    }
}
