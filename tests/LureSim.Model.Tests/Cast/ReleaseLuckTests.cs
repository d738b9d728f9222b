using LureSim.Model.Cast;
using LureSim.Model.Hands;

namespace LureSim.Model.Tests.Cast;

public sealed class ReleaseLuckTests
{
    // The bound a spool bears is guessed at 0.6 to 5 loops, its 10 and 90 % ends; their geometric middle is 1.73.
    [Theory]
    [InlineData(0.0, 0.0)]
    [InlineData(0.6, 0.1)]
    [InlineData(1.7320508, 0.5)]
    [InlineData(5.0, 0.9)]
    public void The_chance_to_tangle_rises_smoothly_with_the_loops(double loops, double share) => Assert.Equal(share, ReleaseLuck.Tangles(loops), 1e-6);

    // A parabola that loses 1 m at one sigma loses 1 m on average (the mean of N^2 is 1), 2.706 m at P10 (1.645^2); 1 loop per sigma late: 0.399 on
    // average (half of the half-normal's 0.7979). Points 0.8 sigma apart and a grid of 41 steps come within 5 % of the mean; of P10 the grid takes its
    // neighbour at 1.546 sigma.
    [Fact]
    public void Means_are_taken_over_the_release_error()
    {
        ReleasePoint[] curve = [.. Enumerable.Range(-4, 9).Select(k => new ReleasePoint(0.008 * k, -0.64 * k * k, Math.Max(0.0, 0.8 * k)))];
        ReleaseLuck luck = ReleaseLuck.Of(new HandsSpec(ReleaseErrorS: 0.01, Scatter: 0.0), 30.0, curve);
        Assert.Equal(30.0 - 1.0, luck.MeanM, 0.05);
        Assert.Equal(0.39894, luck.Loops, 0.01);
        Assert.Equal(30.0 - 2.706, luck.P10M, 0.35);
        Assert.InRange(luck.P90M, 29.8, 30.0);
    }

    [Fact]
    public void The_least_brake_lies_where_one_in_twenty_tangles()
    {
        Assert.Equal(1.5, CastBrakes.Least([new(0.0, 30.0, 3.0, 0.6), new(1.0, 29.0, 1.0, 0.08), new(2.0, 28.0, 0.1, 0.02)])!.Value, 1e-12);
        Assert.Equal(0.0, CastBrakes.Least([new(0.0, 30.0, 0.1, 0.01), new(1.0, 29.0, 0.0, 0.0)]));
        Assert.Null(CastBrakes.Least([new(0.0, 30.0, 3.0, 0.6), new(4.0, 20.0, 2.0, 0.2)]));
        Assert.Null(CastBrakes.Least([]));
    }
}
