using LureSim.Model.Lures;

namespace LureSim.Model.Tests.Lures;

public sealed class SectionAddedMassTests
{
    [Fact]
    public void Rises_with_draft_and_stays_near_a_half_ellipse_of_the_draft()
    {
        double last = 0.0;
        for (double t = -0.95; t < 1.0; t += 0.05)
        {
            double value = SectionAddedMass.Sway(t);
            Assert.True(value > last);
            Assert.InRange(value / (0.5 * Math.PI * (1.0 + t) * (1.0 + t)), 0.8, 1.2);
            last = value;
        }
    }

    [Fact]
    public void Continuous_at_full_immersion_and_deep_water_forgets_the_surface()
    {
        Assert.Equal(SectionAddedMass.Sway(1.0), SectionAddedMass.Sway(1.0 - 1e-9), 1e-3);
        Assert.Equal(SectionAddedMass.Heave(1.0), SectionAddedMass.Heave(1.0 - 1e-9), 1e-3);
        Assert.Equal(Math.PI, SectionAddedMass.Sway(1e3), 1e-4);
        Assert.Equal(Math.PI, SectionAddedMass.Heave(double.PositiveInfinity), 1e-12);
    }

    [Fact]
    public void Dry_section_has_none()
    {
        Assert.Equal(0.0, SectionAddedMass.Sway(-1.0));
        Assert.Equal(0.0, SectionAddedMass.Heave(double.NegativeInfinity));
    }
}
