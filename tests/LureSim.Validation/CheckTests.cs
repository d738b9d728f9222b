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
        var growing = new Check("X", "x", "s", "t", [new Row("q", "-", 1.0, 1.0, 0.1, Tol.Relative)],
            new Ladder("N", "q", [(10, 0.1), (20, 0.2)]));
        Assert.ThrowsAny<Xunit.Sdk.XunitException>(() => PublishedChecks.Verify(growing));
    }
}
