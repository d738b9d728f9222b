using LureSim.Studies.Cadence;

namespace LureSim.Studies.Tests.Cadence;

public sealed class EdgeRefinementTests
{
    [Fact]
    public void Agreeing_neighbours_want_nothing() =>
        Assert.Empty(EdgeRefinement.Next([1.0, 2.0, 4.0], _ => double.PositiveInfinity));

    [Fact]
    public void Every_wide_gap_wants_its_middle() =>
        Assert.Equal([1.5, 5.0], EdgeRefinement.Next([1.0, 2.0, 4.0, 6.0], i => i == 1 ? double.PositiveInfinity : 0.1));

    // Numbers of the binary system: the gap is the tolerance to the last digit.
    [Fact]
    public void A_gap_of_just_the_tolerance_is_narrow_enough()
    {
        Assert.Empty(EdgeRefinement.Next([1.0, 1.25], _ => 0.25));
        Assert.Equal([1.125], EdgeRefinement.Next([1.0, 1.25], _ => 0.2499));
    }

    [Fact]
    public void Bisection_ends_at_the_tolerance_and_brackets_every_edge()
    {
        double[] edges = [0.7123, 1.9, 2.31];
        var at = new List<double> { 0.6, 1.0, 2.0, 3.0, 4.0 };
        int Side(double x) => edges.Count(e => e < x);
        for (List<double> next = Next(); next.Count > 0; next = Next())
        {
            at.AddRange(next);
            at.Sort();
        }

        foreach (double edge in edges)
        {
            int right = at.FindIndex(x => x > edge);
            Assert.True(at[right] - at[right - 1] <= 1e-3);
        }

        List<double> Next() => EdgeRefinement.Next(at, i => Side(at[i]) != Side(at[i + 1]) ? 1e-3 : double.PositiveInfinity);
    }

    [Fact]
    public void A_tolerance_of_zero_ends_at_the_digits_of_the_machine()
    {
        double[] pair = [1.0, 1.0.BitIncrement()];
        Assert.Empty(EdgeRefinement.Next(pair, _ => 0.0));
    }
}

internal static class Digits
{
    public static double BitIncrement(this double value) => Math.BitIncrement(value);
}
