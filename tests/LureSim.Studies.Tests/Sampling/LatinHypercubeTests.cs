using LureSim.Studies.Sampling;
using MathNet.Numerics.Statistics;

namespace LureSim.Studies.Tests.Sampling;

public class LatinHypercubeTests
{
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(20)]
    [InlineData(64)]
    [InlineData(65)]
    [InlineData(1000)]
    public void Every_slice_of_every_dimension_holds_one_sample(int count)
    {
        var design = new LatinHypercube(count, 7);
        for (int d = 0; d < 40; d++)
        {
            int[] slices = [.. Enumerable.Range(0, count).Select(i => (int)(count * design.Share(i, d))).Order()];
            Assert.Equal(Enumerable.Range(0, count), slices);
        }
    }

    [Fact]
    public void Dimensions_do_not_follow_each_other()
    {
        // 780 pairs of 40 dimensions at n = 400: |r| of independent ones has a standard deviation of 0.05; the largest of 780 stays
        // below five of these, and their root mean square within a tenth of one.
        var design = new LatinHypercube(400, 1);
        double[][] x = [.. Enumerable.Range(0, 40).Select(d => Enumerable.Range(0, 400).Select(i => design.Share(i, d)).ToArray())];
        var r = new List<double>();
        for (int a = 0; a < 40; a++)
        {
            for (int b = 0; b < a; b++)
            {
                r.Add(Correlation.Pearson(x[a], x[b]));
            }
        }

        Assert.InRange(r.Max(Math.Abs), 0.0, 0.25);
        Assert.InRange(Math.Sqrt(r.Average(v => v * v)), 0.045, 0.055);
    }

    [Fact]
    public void Places_inside_the_slices_are_spread()
    {
        var design = new LatinHypercube(5000, 3);
        double[] places = [.. Enumerable.Range(0, 5000).Select(i => (5000 * design.Share(i, 4)) % 1.0)];

        // Mean and variance of a uniform law, within four standard errors (0.29 / sqrt(5000) = 0.0041; 0.0745 / sqrt(5000) = 0.0011).
        Assert.Equal(0.5, places.Average(), 0.0165);
        Assert.Equal(1.0 / 12.0, places.Variance(), 0.0044);
    }

    [Fact]
    public void A_mean_comes_out_far_better_than_by_chance()
    {
        // Of a smooth sum the error of the mean falls as n^-3/2 (Stein 1987), of plain sampling as n^-1/2: 0.0065 here.
        var design = new LatinHypercube(2000, 5);
        double mean = Enumerable.Range(0, 2000).Average(i => design.Share(i, 0) + Math.Pow(design.Share(i, 1), 2));
        Assert.Equal(0.5 + (1.0 / 3.0), mean, 1e-4);
    }

    [Fact]
    public void The_seed_decides()
    {
        Assert.Equal(new LatinHypercube(100, 1).Share(17, 3), new LatinHypercube(100, 1).Share(17, 3));
        Assert.NotEqual(new LatinHypercube(100, 1).Share(17, 3), new LatinHypercube(100, 2).Share(17, 3));
        Assert.Throws<ArgumentOutOfRangeException>(() => new LatinHypercube(10, 1).Share(10, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => new LatinHypercube(0, 1));
    }
}
