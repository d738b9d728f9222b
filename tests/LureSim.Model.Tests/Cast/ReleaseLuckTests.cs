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

    // A release error of one sigma on a straight slope of 100 m/s to both sides, 1 loop per 10 ms late: mean of |N| is 0.7979 sigma (half-normal), so the
    // mean lies 0.7979 m below and half of the casts throw 0.399 loops on average. A grid of 41 steps comes within 2 %.
    [Fact]
    public void Means_are_taken_over_the_release_error()
    {
        ReleasePoint[] curve = [new(-0.1, -10.0, 0.0), new(0.0, 0.0, 0.0), new(0.1, -10.0, 10.0)];
        ReleaseLuck luck = ReleaseLuck.Of(new HandsSpec(ReleaseErrorS: 0.01, Scatter: 0.0), 30.0, curve);
        Assert.Equal(30.0 - 0.7979, luck.MeanM, 0.02);
        Assert.Equal(0.39894, luck.Loops, 0.01);
        Assert.Equal(30.0 - 1.645, luck.P10M, 0.1);
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
