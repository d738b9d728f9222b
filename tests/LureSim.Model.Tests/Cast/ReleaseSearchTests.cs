using LureSim.Model.Assembly;
using LureSim.Model.Cast;
using LureSim.Model.Reels;

namespace LureSim.Model.Tests.Cast;

public sealed class ReleaseSearchTests
{
    private const int Fine = 2;

    // The search halves its stride from 31 steps of the swing to 15, 7 and 3: that may leave the top one fine step of two (1 ms) aside. Then it must
    // walk there: neither neighbour of the best release lands farther.
    [Theory]
    [InlineData(0.7, 3.0)]
    [InlineData(0.8, 3.0)]
    [InlineData(1.1, 3.0)]
    [InlineData(0.9, 6.0)]
    [InlineData(1.5, 6.0)]
    [InlineData(0.5, 1.5)]
    public void No_fine_step_beside_the_best_release_lands_farther(double effort, double power)
    {
        var search = new ReleaseSearch(Parts(effort, power));
        int best = search.Best();
        double there = search.Distance(best);
        Assert.True(search.Distance(best - Fine) <= there);
        Assert.True(search.Distance(best + Fine) <= there);
    }

    private static CastParts Parts(double effort, double power)
    {
        (Setup setup, CastTask task) = (CastCases.Default(ReelKind.Fixed).Setup, CastCases.Default(ReelKind.Fixed).Task);
        return new(
            setup with { Rod = setup.Rod with { ThirdLoadN = power }, Hands = setup.Hands with { Effort = effort } },
            task with { Solver = new CastSolverSpec(SwingStepS: 0.016 / 31.0) });
    }
}
