using LureSim.References.Ode;

namespace LureSim.Numerics.Tests.Ode;

public sealed class BracketedRootTests
{
    [Theory]
    [InlineData(0, 0.7390851332151607)]
    [InlineData(1, 0.1)]
    [InlineData(2, 0.3)]
    public void Finds_smooth_flat_and_jumping_zeros(int which, double expected)
    {
        var f = new F(which);
        Assert.Equal(expected, BracketedRoot.Find(f, 0.0, f.At(0.0), 1.0, f.At(1.0), 1e-15), which == 1 ? 1e-4 : 3e-15);
    }

    [Fact]
    public void Ends_on_a_function_that_turns_nan() =>
        Assert.InRange(BracketedRoot.Find(new F(3), 0.0, -1.0, 1.0, 1.0, 1e-15), 0.0, 1.0);

    private readonly struct F(int which) : IScalarFunction
    {
        public double At(double x) => which switch
        {
            0 => x - Math.Cos(x),
            1 => Math.Pow(x - 0.1, 3),
            2 => x < 0.3 ? -1.0 : 2.0,
            _ => double.NaN,
        };
    }
}
