using LureSim.Model.Lines;

namespace LureSim.Model.Tests.Lines;

public sealed class FiniteLengthTests
{
    [Fact]
    public void Ends_of_the_table_are_held()
    {
        Assert.Equal(1.0, FiniteLength.Factor(double.PositiveInfinity));
        Assert.Equal(0.614 / 1.19, FiniteLength.Factor(0.5), 12);
        Assert.Equal(FiniteLength.Factor(1e-3), FiniteLength.Factor(0.5), 12);
    }

    [Fact]
    public void Reads_linearly_between_entries() =>
        Assert.Equal(0.5 * (0.737 + 0.820) / 1.19, FiniteLength.Factor(1.0 / (0.5 * (0.0998 + 0.200))), 12);

    [Theory]
    [InlineData(0.0)]
    [InlineData(-2.0)]
    [InlineData(double.NaN)]
    public void A_length_that_is_none_is_refused(double ratio) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => FiniteLength.Factor(ratio));
}
