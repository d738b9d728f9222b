using LureSim.Model.Lures;

namespace LureSim.Model.Tests.Lures;

public sealed class HookWireTests
{
    // Pulled halves of a round section, each at yield: stress times area pi d^2/8 times the distance of their centroids, 2 * 2d/(3 pi), over the lever.
    [Theory]
    [InlineData(0.75, 4.5)]
    [InlineData(1.2, 9.0)]
    [InlineData(1.8, 16.0)]
    public void The_bend_opens_at_the_plastic_moment_of_its_wire(double wireMm, double gapMm)
    {
        double d = 1e-3 * wireMm, half = Math.PI * d * d / 8.0, apart = 2.0 * 2.0 * d / (3.0 * Math.PI);
        double Force(double yield, double lever) => yield * half * apart / (lever * 1e-3 * gapMm);
        Ranged opens = HookWire.OpeningN(d, 1e-3 * gapMm);
        Assert.Equal(Force(1.7e9, 0.7), opens.Value, 1e-12 * opens.Value);
        Assert.Equal(Force(1.3e9, 0.9), opens.Low, 1e-12 * opens.Low);
        Assert.Equal(Force(2.0e9, 0.5), opens.High, 1e-12 * opens.High);
    }

    // By hand: 1.7e9 * 1.2e-3^3 / 6 = 0.4896 N m over 0.7 * 9 mm.
    [Fact]
    public void A_treble_of_1_2_mm_wire_opens_at_78_N_per_point() => Assert.Equal(77.714, HookWire.OpeningN(1.2e-3, 9e-3).Value, 5e-4);

    // The same by a sum over strips of the section, which knows neither centroid nor d^3/6; midpoints of n strips are off by the order of n^-3/2.
    [Fact]
    public void The_plastic_moment_is_that_of_a_sum_over_strips()
    {
        const int n = 2000;
        double d = 1.5e-3, sum = 0.0;
        for (int i = 0; i < n; i++)
        {
            double z = d * (((i + 0.5) / n) - 0.5);
            sum += Math.Abs(z) * 2.0 * Math.Sqrt((0.25 * d * d) - (z * z)) * d / n;
        }

        Assert.Equal(1.7e9 * sum / (0.7 * 13e-3), HookWire.OpeningN(d, 13e-3).Value, 1e-4 * HookWire.OpeningN(d, 13e-3).Value);
    }

    [Fact]
    public void Force_in_flesh_goes_with_the_wire() => Assert.Equal((1.0, 1.8), (HookWire.FleshFactor(1e-3), Math.Round(HookWire.FleshFactor(1.8e-3), 12)));

    [Theory]
    [InlineData(0.0)]
    [InlineData(-1.0)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void A_measure_is_a_finite_length(double measure)
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => HookWire.OpeningN(measure, 9e-3));
        Assert.Throws<ArgumentOutOfRangeException>(() => HookWire.OpeningN(1.2e-3, measure));
        Assert.Throws<ArgumentOutOfRangeException>(() => HookWire.FleshFactor(measure));
    }

    [Fact]
    public void A_treble_may_hang_by_one_to_three_points()
    {
        Assert.Equal(new Ranged(2, 1, 3), HookHold.UsualPoints(HookKind.ThreePoint));
        Assert.Equal(new Ranged(2, 2, 2), HookHold.UsualPoints(HookKind.TwoPoint));
        Assert.Equal(new Ranged(1, 1, 1), HookHold.UsualPoints(HookKind.OnePoint));
    }
}
