using LureSim.Reports.Kit.Text;

namespace LureSim.Reports.Tests.Text;

public sealed class TradeTests
{
    [Theory]
    [InlineData(0.0, "0")]
    [InlineData(0.00004, "0")]
    [InlineData(0.0123, "0.012")]
    [InlineData(0.0996, "0.10")]
    [InlineData(0.996, "1.0")]
    [InlineData(9.96, "10")]
    [InlineData(9.44, "9.4")]
    [InlineData(-0.237, "-0.24")]
    [InlineData(12.4, "12")]
    [InlineData(1234.5, "1234")]
    public void Digits_keeps_two_figures(double value, string text) => Assert.Equal(text, Trade.Digits(value));

    [Theory]
    [InlineData(-0.3, 0, "0")]
    [InlineData(-0.04, 1, "0.0")]
    [InlineData(-0.0, 2, "0.00")]
    [InlineData(-0.6, 0, "-1")]
    [InlineData(-10.0, 1, "-10.0")]
    public void A_fixed_number_is_never_minus_zero(double value, int places, string expected) => Assert.Equal(expected, Trade.Fixed(value, places));
}
