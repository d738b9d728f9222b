using LureSim.Model.Landing;
using MathNet.Numerics;
using MathNet.Numerics.Integration;

namespace LureSim.Model.Tests.Landing;

/// <summary>Waves of a body under the surface, against an independent quadrature and limits.</summary>
public sealed class WaveDragTests
{
    private const double Water = 998.2, Gravity = 9.80665;
    private static readonly WaveDrag Fish = new(0.49, 0.0386, 0.13);

    // R = 16 pi rho K^2 integral over theta of |H|^2 sec^3, H the sources 2 A V x between the foci: another form of the integral, another rule.
    [Theory]
    [InlineData(0.8)]
    [InlineData(1.2)]
    [InlineData(2.0)]
    [InlineData(6.0)]
    public void It_is_the_integral_over_the_directions_of_its_waves(double speed)
    {
        double a = 0.5 * Fish.LengthM, e = Math.Sqrt(1.0 - (Fish.RadiusM * Fish.RadiusM / (a * a))), c = a * e, wave = Gravity / (speed * speed);
        double strength = 1.0 / ((4.0 * e / (1.0 - (e * e))) - (2.0 * Math.Log((1.0 + e) / (1.0 - e))));
        double Square(double theta)
        {
            double secant = 1.0 / Math.Cos(theta), k = wave * secant, z = k * c;
            double source = 2.0 * strength * speed * 2.0 * ((Math.Sin(z) / (k * k)) - (c * Math.Cos(z) / k));
            return Math.Pow(source * Math.Exp(-wave * Fish.DepthM * secant * secant), 2) * secant * secant * secant;
        }

        double expected = 16.0 * Math.PI * Water * wave * wave * GaussLegendreRule.Integrate(Square, 0.0, (0.5 * Math.PI) - 1e-6, 400);
        Assert.Equal(expected, Fish.At(Water, speed), 1e-8 * expected);
    }

    // Eccentricity to 0: the sphere (Havelock 1917), pi rho g K^3 a^6 e^(-K f) (K_0 + (1 + 1/(2 K f)) K_1), K_n of K f. The error falls as e^2.
    [Fact]
    public void A_round_body_has_the_waves_of_a_sphere()
    {
        double a = 0.05, depth = 0.12, speed = 0.9, wave = Gravity / (speed * speed), q = wave * depth;
        double sphere = Math.PI * Water * Gravity * Math.Pow(wave, 3) * Math.Pow(a, 6) * Math.Exp(-q)
            * (SpecialFunctions.BesselK(0, q) + ((1.0 + (0.5 / q)) * SpecialFunctions.BesselK(1, q)));
        double Error(double e) => Math.Abs((new WaveDrag(2.0 * a, a * Math.Sqrt(1.0 - (e * e)), depth).At(Water, speed) / sphere) - 1.0);
        Assert.Equal(4.0, Error(0.1) / Error(0.05), 0.05);
        Assert.True(Error(0.02) < 1e-3);
    }

    [Fact]
    public void The_hump_lies_at_a_Froude_number_of_a_half_or_a_little_over()
    {
        double[] speeds = [.. Enumerable.Range(2, 60).Select(i => 0.05 * i)];
        double peak = speeds.MaxBy(v => Fish.At(Water, v));
        Assert.InRange(peak / Math.Sqrt(Gravity * Fish.LengthM), 0.45, 0.75);
    }

    [Fact]
    public void A_deep_or_a_slow_body_makes_none()
    {
        Assert.True((Fish with { DepthM = 2.0 }).At(Water, 1.2) < 1e-6);
        Assert.Equal(0.0, Fish.At(Water, 0.2));
        Assert.Equal(0.0, Fish.At(Water, 0.0));
    }

    [Fact]
    public void Froudes_law_holds()
    {
        WaveDrag twice = new(2.0 * Fish.LengthM, 2.0 * Fish.RadiusM, 2.0 * Fish.DepthM);
        Assert.Equal(8.0 * Fish.At(Water, 1.1), twice.At(Water, 1.1 * Math.Sqrt(2.0)), 1e-9);
    }
}
