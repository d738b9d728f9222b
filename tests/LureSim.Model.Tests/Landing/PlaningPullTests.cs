using LureSim.Model.Fish;
using LureSim.Model.Landing;
using static LureSim.Model.Tests.Landing.LandingCases;

namespace LureSim.Model.Tests.Landing;

/// <summary>A tired fish drawn along: balances, scaling, bands.</summary>
public sealed class PlaningPullTests
{
    private const double Water = 998.2;

    private static PlaningPull Fish(double mass) => new(mass, FishBody.DragAreaM2(mass), Water);

    // Savitsky 1964, his example of a boat: C_L0 = 0.085 at 10 deg of deadrise gives C_L 0.069, read off a chart (from memory): 2 %.
    [Fact]
    public void Deadrise_takes_what_it_takes_of_the_example_of_the_source()
    {
        double trim = 5.0, slender = Math.Pow(0.085 / (0.0120 * Math.Pow(trim, 1.1)), 2);
        Assert.Equal(0.085, PlaningLift.Coefficient(slender, trim * Degree, 0.0), 1e-12);
        Assert.Equal(0.069, PlaningLift.Coefficient(slender, trim * Degree, 10.0 * Degree), 0.02 * 0.069);
        Assert.Equal(0.0, PlaningLift.Coefficient(1e-6, trim * Degree, 45.0 * Degree));
    }

    // Fish alike in shape: lengths times 2, mass times 8, speeds times sqrt 2, forces times 8 (Froude), the band's ends too.
    [Fact]
    public void Fish_of_one_shape_follow_Froudes_law()
    {
        HeadUpFish small = Fish(0.5).HeadUp(1.4, 0.15, default), large = Fish(4.0).HeadUp(1.4 * Math.Sqrt(2.0), 0.15, default);
        Same(small.LeastMS, large.LeastMS, Math.Sqrt(2.0));
        Same(small.PullN, large.PullN, 8.0);
        Same(Fish(0.5).Towed(1.0, 0.1).PullN, Fish(4.0).Towed(Math.Sqrt(2.0), 0.1).PullN, 8.0);
        Assert.Equal(Fish(0.5).Towed(1.0, 0.1).Froude, Fish(4.0).Towed(Math.Sqrt(2.0), 0.1).Froude, 1e-12);

        static void Same(Ranged one, Ranged other, double factor)
        {
            Assert.Equal(factor * one.Value, other.Value, 1e-6 * other.Value);
            Assert.Equal(factor * one.Low, other.Low, 1e-6 * other.High);
            Assert.Equal(factor * one.High, other.High, 1e-6 * other.High);
        }
    }

    [Fact]
    public void A_level_line_pulls_no_more_than_the_drag()
    {
        Ranged area = FishBody.DragAreaM2(1.5);
        TowedFish slow = Fish(1.5).Towed(0.3, 0.0);
        Assert.Equal(0.5 * Water * area.Value * 0.09, slow.PullN.Value, 1e-6);
        Assert.Equal(0.5 * Water * area.Low * 0.09, slow.PullN.Low, 1e-12);
        TowedFish fast = Fish(1.5).Towed(1.2, 0.0);
        Assert.Equal((0.5 * Water * area.High * 1.44) + fast.WaveN.High, fast.PullN.High, 1e-12);
    }

    // At the least speed lift and the line's upward share carry what is out: w M g, here rebuilt from the pull and the lift of the source.
    [Fact]
    public void At_the_least_speed_the_weight_out_of_the_water_is_just_carried()
    {
        const double elevation = 0.2, trim = 12.0 * Degree;
        HeadUpFish fish = Fish(1.5).HeadUp(1e-3, elevation, default);
        double v = fish.LeastMS.Value, width = FishBody.WidthM(1.5);
        double lift = 0.5 * Water * v * v * width * width * PlaningLift.Coefficient(4.0, trim, 30.0 * Degree);
        double pull = fish.PullN.Value;
        Assert.Equal(0.08 * 1.5 * Gravity, lift + (pull * Math.Sin(elevation)), 1e-6);

        double drag = Fish(1.5).Towed(v, 0.0).PullN.Value;
        Assert.Equal(drag + (lift * Math.Tan(trim)), pull * Math.Cos(elevation), 1e-6);
    }

    [Fact]
    public void A_steeper_line_needs_less_speed()
    {
        double[] least = [.. new[] { 0.0, 0.1, 0.3, 0.6, 1.0 }.Select(theta => Fish(1.5).HeadUp(1.4, theta, default).LeastMS.Value)];
        Assert.Equal(least.OrderDescending(), least);
    }

    [Fact]
    public void Bands_hold_their_middle_for_every_fish_and_speed()
    {
        foreach (double mass in new[] { 0.2, 1.0, 3.0, 20.0 })
        {
            foreach (double speed in new[] { 0.3, 1.0, 2.5 })
            {
                HeadUpFish up = Fish(mass).HeadUp(speed, 0.1, FishBody.PullN(mass));
                TowedFish tow = Fish(mass).Towed(speed, 0.1);
                Assert.All(new[] { up.LeastMS, up.PullN, up.FightN, tow.PullN }, r => Assert.True(r.Low < r.Value && r.Value < r.High));
                Assert.Equal(speed >= up.LeastMS.Value, up.ReelKeepsItUp);
            }
        }
    }

    // Coasting bluegill sunfish: drag coefficient 0.015 +- 0.007 on the wetted area (Gellman and others, abstract of a meeting of the Society for Integrative
    // and Comparative Biology). Wetted area of the ellipsoid L x 0.27 L x 0.15 L by Thomsen's formula, good to 1 %.
    [Fact]
    public void The_band_of_drag_areas_holds_a_coasting_sunfish()
    {
        double a = 0.5, b = 0.135, c = 0.075, p = 1.6075, length = FishBody.LengthM(1.5);
        double wetted = 4.0 * Math.PI * length * length * Math.Pow((Math.Pow(a * b, p) + Math.Pow(a * c, p) + Math.Pow(b * c, p)) / 3.0, 1.0 / p);
        Ranged area = FishBody.DragAreaM2(1.5);
        Assert.InRange(0.008 * wetted, area.Low, area.High);
        Assert.InRange(0.022 * wetted, area.Low, area.High);
    }
}
