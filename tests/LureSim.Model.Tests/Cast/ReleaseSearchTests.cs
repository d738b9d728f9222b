using LureSim.Model.Assembly;
using LureSim.Model.Cast;
using LureSim.Model.Hands;
using LureSim.Model.Reels;

namespace LureSim.Model.Tests.Cast;

public sealed class ReleaseSearchTests
{
    private const int Stride = 8;

    // The guide may be some steps off; from there it must walk to the top, and the vertex of the parabola lies within half a stride of the best trial.
    [Theory]
    [InlineData(0.3, 3.0)]
    [InlineData(0.8, 3.0)]
    [InlineData(1.1, 6.0)]
    [InlineData(0.5, 1.5)]
    public void No_trial_lands_farther_than_the_best_but_for_what_lies_between_trials(double effort, double power)
    {
        ReleaseSearch search = Search(effort, power);
        int best = search.Best(Stride);
        KeyValuePair<int, Trial> top = search.Trials.MaxBy(t => t.Value.DistanceM);
        Assert.InRange(best, top.Key - (Stride / 2), top.Key + (Stride / 2));
        Assert.Equal(top.Key, search.Nearest(best));
        Assert.True(search.Try(best).DistanceM > top.Value.DistanceM - (0.005 * top.Value.DistanceM));
    }

    // Hands that begin to catch the rod before the release must do so in the search as in a cast run through.
    [Fact]
    public void A_catch_planned_ahead_begins_before_the_release()
    {
        (Setup setup, CastTask task) = (CastCases.Default(ReelKind.Fixed).Setup, CastCases.Default(ReelKind.Fixed).Task);
        Setup early = setup with { Hands = setup.Hands with { CatchDelayS = -0.09 } };
        var search = new ReleaseSearch(new CastParts(early, task));
        CastResult through = new CastCase(early, task).At(0.25).Run();
        Assert.Equal(1.0, search.Try(search.StepAt(0.25)).DistanceM / through.DistanceM, 0.005);
        Assert.NotInRange(through.DistanceM / new CastCase(setup, task).At(0.25).Run().DistanceM, 0.98, 1.02);
    }

    private static ReleaseSearch Search(double effort, double power)
    {
        (Setup setup, CastTask task) = (CastCases.Default(ReelKind.Fixed).Setup, CastCases.Default(ReelKind.Fixed).Task);
        return new(new CastParts(setup with { Rod = setup.Rod with { ThirdLoadN = power }, Hands = setup.Hands with { Effort = effort } }, task));
    }
}
