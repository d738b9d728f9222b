namespace LureSim.Model.Tests.Foundation;

public sealed class RangedTests
{
    // f = 2: a = 3/5; f = 3: a = 8/10. The ends stand in the ratio f^2 and the middle is their mean.
    [Theory]
    [InlineData(10.0, 2.0, 4.0, 16.0)]
    [InlineData(10.0, 3.0, 2.0, 18.0)]
    [InlineData(-10.0, 2.0, -16.0, -4.0)]
    public void A_guess_about_its_middle(double middle, double spread, double low, double high)
    {
        Ranged guess = Ranged.About(middle, spread);
        Assert.Equal(middle, guess.Value);
        Assert.Equal(low, guess.Low, 1e-12);
        Assert.Equal(high, guess.High, 1e-12);
    }

    [Theory]
    [InlineData(1.0, 1.0)]
    [InlineData(1.0, 0.5)]
    [InlineData(1.0, double.NaN)]
    [InlineData(1.0, double.PositiveInfinity)]
    [InlineData(double.NaN, 2.0)]
    public void What_has_no_spread_or_no_middle_is_refused(double middle, double spread) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Ranged.About(middle, spread));

    [Fact]
    public void A_number_says_its_guess_by_spread_or_by_ends_not_by_both()
    {
        Assert.Equal(Ranged.About(10.0, 2.0), new ParameterAttribute("x", "", 0.0, 100.0) { Spread = 2.0 }.Guess(10.0));
        Assert.Equal(new(10.0, 3.0, 30.0), new ParameterAttribute("x", "", 0.0, 100.0) { GuessLow = 3.0, GuessHigh = 30.0 }.Guess(10.0));
        Assert.Equal(double.NaN, new ParameterAttribute("x", "", 0.0, 100.0).Guess(10.0).Low);
        Assert.Throws<InvalidOperationException>(() => new ParameterAttribute("x", "", 0.0, 100.0) { Spread = 2.0, GuessLow = 3.0 }.Guess(10.0));
        Assert.Throws<ArgumentOutOfRangeException>(() => new ParameterAttribute("x", "", 0.0, 100.0) { Spread = 2.0 }.Guess(double.NaN));
    }
}
