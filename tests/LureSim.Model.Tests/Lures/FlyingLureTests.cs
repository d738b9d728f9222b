using LureSim.Model.Lures;

namespace LureSim.Model.Tests.Lures;

public sealed class FlyingLureTests
{
    // Spheroid 100 x 30 x 20 mm. Front: pi/4 B H = 4.712389e-4 m2, Cd 0.3. Seen from the side an ellipse, pi/4 L H, from above pi/4 L B; their
    // mean pi/8 L (B + H) = 1.963495e-3 m2, Cd 1.1 x 0.7. Tumbling: 4/(3 pi) of both (mean of |sin|^3 and |cos|^3 over a turn). Hooks 2 x 3e-5.
    [Theory]
    [InlineData(0.0, 2.0137167e-4)]
    [InlineData(1.0, 7.6166667e-4)]
    [InlineData(0.5, 4.8151917e-4)]
    public void Drag_area_is_mixed_from_flying_straight_and_tumbling(double tumbling, double area) =>
        Assert.Equal(area, FlyingLure.AreaM2(Lure() with { Flight = new(tumbling, 0.3, 0.7) }), 2e-4 * area);

    [Fact]
    public void A_known_area_is_taken_as_it_is() =>
        Assert.Equal(0.00123, FlyingLure.AreaM2(Lure() with { Flight = new(0.5, 0.3, 0.7, 0.00123) }));

    [Fact]
    public void It_flies_with_its_hooks() => Assert.Equal(0.0177, FlyingLure.MassKg(Lure()), 1e-15);

    private static LureSpec Lure() => new(
        LureShape.Spheroid, 0.100, 0.030, 0.020, 0.0155, 0.05, 0.0, [], [new(0.0011, 0.0, -0.009, 3e-5, 1.4e-7), new(0.0011, -0.05, 0.0, 3e-5, 1.4e-7)]);
}
