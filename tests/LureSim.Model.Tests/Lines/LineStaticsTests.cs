using LureSim.Model.Lines;
using LureSim.Model.Media;
using LureSim.References.Lines;

namespace LureSim.Model.Tests.Lines;

public sealed class LineStaticsTests
{
    private static readonly WaterState Water = WaterModel.Evaluate(new(20.0));

    [Theory]
    [InlineData(LineMaterial.Nylon, 1)]
    [InlineData(LineMaterial.Fluorocarbon, 1)]
    [InlineData(LineMaterial.Braid, -1)]
    public void Sinking_speed_balances_drag_and_net_weight(LineMaterial material, int sign)
    {
        LineSpec line = LineSizing.Resolve(material, 0.3e-3, null, null, SurfaceFilm.Wetted).Spec;
        double v = LineStatics.SinkingSpeed(line, Water);
        double drag = 0.5 * Water.DensityKgM3 * CylinderDrag.Cd(Math.Abs(v) * line.DiameterM / Water.KinematicViscosityM2S) * line.DiameterM * v * v;
        Assert.Equal(sign, Math.Sign(v));
        Assert.Equal(Math.Abs(LineStatics.NetWeight(line, Water)), drag, 1e-12);
    }

    [Fact]
    public void Impact_strain_and_speed_are_inverse()
    {
        foreach (double v in new[] { 0.1, 3.0, 80.0, 900.0 })
        {
            Assert.Equal(v, TransverseImpact.Speed(1500.0, TransverseImpact.Strain(1500.0, v)), 1e-9 * v);
        }
    }

    [Fact]
    public void A_soft_blow_follows_the_two_thirds_law()
    {
        double limit = Math.Pow(5.0 * 5.0 / (2.0 * 1e4 * 1e4), 2.0 / 3.0);
        Assert.Equal(1.0, TransverseImpact.Strain(1e4, 5.0) / limit, 0.005);
    }

    [Fact]
    public void Line_classes_refuse_what_does_not_exist() => Assert.Throws<ArgumentException>(() => LineClasses.LimitN(25));
}
