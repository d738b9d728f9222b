namespace LureSim.Validation;

/// <summary>The comparison helper must be able to fail.</summary>
public sealed class CheckTests
{
    [Theory]
    [InlineData(1.0, 1.011, Tol.Relative, false)]
    [InlineData(1.0, 1.009, Tol.Relative, true)]
    [InlineData(100.0, 100.02, Tol.Absolute, false)]
    [InlineData(1.0, double.NaN, Tol.Relative, false)]
    [InlineData(0.0, double.NaN, Tol.Absolute, false)]
    public void Row_passes_only_inside_its_tolerance(double expected, double computed, Tol kind, bool passes) =>
        Assert.Equal(passes, new Row("q", "-", expected, computed, 0.01, kind).Passes);

    [Fact]
    public void Verify_fails_on_a_broken_row_and_on_an_error_that_grows()
    {
        var bad = new Check("X", "x", "s", "t", [new Row("q", "-", 1.0, 2.0, 0.1, Tol.Relative)]);
        Assert.ThrowsAny<Xunit.Sdk.XunitException>(() => PublishedChecks.Verify(bad));
        Assert.ThrowsAny<Xunit.Sdk.XunitException>(() => PublishedChecks.Verify(With(1.0, (10, 0.1), (20, 0.2))));
    }

    [Fact]
    public void A_ladder_demands_its_order_and_a_fall_at_every_level()
    {
        PublishedChecks.Verify(With(1.9, (10, 0.4), (20, 0.1), (40, 0.025)));
        PublishedChecks.Verify(With(1.9, (0.4, 0.4), (0.2, 0.1), (0.1, 0.025)));
        Assert.Equal(2.0, With(1.9, (10, 0.4), (20, 0.1), (40, 0.025)).Ladder!.Order, 1e-12);
    }

    [Theory]
    [InlineData(0.4, 0.2, 0.1)]
    [InlineData(0.4, 0.41, 0.02)]
    [InlineData(0.4, 0.01, 0.011)]
    [InlineData(0.4, double.NaN, 0.01)]
    [InlineData(0.4, 0.1, double.NaN)]
    public void A_ladder_of_too_low_an_order_or_with_a_step_up_fails(double first, double second, double third)
    {
        Assert.ThrowsAny<Xunit.Sdk.XunitException>(() => PublishedChecks.Verify(With(1.9, (10, first), (20, second), (40, third))));
        Assert.ThrowsAny<Xunit.Sdk.XunitException>(() => PublishedChecks.Verify(With(1.9, (0.4, first), (0.2, second), (0.1, third))));
    }

    private static Check With(double leastOrder, params (double Level, double Error)[] levels) => new(
        "X", "x", "s", "t", [new Row("q", "-", 1.0, 1.0, 0.1, Tol.Relative)], new Ladder("N", "q", levels, leastOrder, "made up"));
}
