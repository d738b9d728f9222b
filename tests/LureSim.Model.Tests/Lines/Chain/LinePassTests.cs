using LureSim.Model.Lines;
using LureSim.Model.Lines.Chain;
using LureSim.Model.Media;
using LureSim.Numerics;
using LureSim.Numerics.Steps;
using LureSim.Numerics.Tension;

namespace LureSim.Model.Tests.Lines.Chain;

/// <summary>One step of the line against what a hand computes: straight lines, where each law stands alone.</summary>
public sealed class LinePassTests
{
    private const double Density = 1000.0, Diameter = 1e-3, Mu = 8e-4, Ct = 0.02, Ea = 500.0, Tau = 0.01, Cd = 1.2, Dt = 1e-3;

    // Weightless: no gravity, so no film and no sag either.
    private static readonly LineMedium Water = new(
        new WaterState(Density, 1e-3, 0.072), new AirState(1.2, 1.8e-5), DragCurve.Constant(Cd), GravityMS2: 0.0);

    // Two segments of a metre. Half of what the reel takes in runs past the middle node, toward the tip: a node that moves at v
    // along the line from tip to tie slips at v - V/2, and 1/2 rho Ct pi d l |slip| is its drag over its speed.
    [Theory]
    [InlineData(0.5, 0.6, 0.2)]
    [InlineData(-0.5, 0.6, 0.8)]
    [InlineData(0.0, 0.6, 0.3)]
    [InlineData(0.5, 0.0, 0.5)]
    public void Skin_friction_counts_the_speed_of_the_reeled_line_along_itself(double v, double feed, double slip)
    {
        (LinePass pass, LineState end) = Step(Line(), 2, 2.0, 1.9, feed, new Vec3(v, 0.0, 0.0), depth: 1.0);
        double coefficient = 0.5 * Density * Ct * Math.PI * Diameter * 1.0 * slip;
        Assert.Equal(coefficient, pass.Drag(1).Along, 1e-12 * coefficient);

        // Backward Euler of the loose node, m v' = -c (v - V/2): a node that goes with the water past it is not held back.
        double mass = Mu * 1.0, expected = ((mass * v) + (Dt * coefficient * 0.5 * feed)) / (mass + (Dt * coefficient));
        Assert.Equal(expected, end.VX[1], 1e-12);
        Assert.Equal(0.0, end.VY[1], 1e-15);
    }

    // 1/2 rho Cd d l v^2 across, against mass and the water carried along (Ca = 1: rho times the displaced volume).
    [Fact]
    public void Across_the_line_water_drags_and_is_carried_along()
    {
        const double v = 0.4;
        (LinePass pass, LineState end) = Step(Line(), 2, 2.0, 1.9, 0.0, new Vec3(0.0, v, 0.0), depth: 1.0);
        double coefficient = 0.5 * Density * Cd * Diameter * 1.0 * v, mass = Mu + (Density * Mu / 1200.0);
        Assert.Equal(coefficient, pass.Drag(1).Across, 1e-12);
        Assert.Equal(mass * v / (mass + (Dt * coefficient)), end.VY[1], 1e-12);
        Assert.Equal(0.0, end.VX[1], 1e-15);
    }

    // A dry node in a wind W moves as if the air stood still and the node came at v - W; under water there is no wind.
    [Theory]
    [InlineData(10.0, 1.2)]
    [InlineData(-1.0, 0.0)]
    public void Wind_blows_on_what_is_dry(double height, double airDensity)
    {
        const double wind = 5.0;
        (LinePass pass, LineState end) = Step(Line(), 2, 2.0, 1.9, 0.0, Vec3.Zero, -height, p => p.WindY[1] = wind);
        double coefficient = 0.5 * airDensity * Cd * Diameter * wind;
        Assert.Equal(coefficient, pass.Drag(1).Across, 1e-12);
        Assert.Equal(Dt * coefficient * wind / (Mu + (Dt * coefficient)), end.VY[1], 1e-12);
    }

    // Kelvin-Voigt closed form: a line held at both ends is as taut as its strain, EA s/L, and shortening it at V adds EA tau V/L.
    // All segments shorten alike, so the nodes between stay where they are.
    [Theory]
    [InlineData(1, 0.3)]
    [InlineData(4, 0.3)]
    [InlineData(4, -0.1)]
    [InlineData(4, 0.0)]
    public void A_held_line_that_is_reeled_is_taut_by_strain_and_by_its_rate(int segments, double feed)
    {
        const double length = 2.0, apart = 2.01;
        (LinePass pass, LineState end) = Step(Line(), segments, length, apart, feed, Vec3.Zero, depth: -10.0);
        double expected = Ea / length * (apart - length + (Tau * feed));
        for (int j = 0; j < segments; j++)
        {
            // The thin air takes what its skin friction takes from a line that slips at V: 1e-7 N here.
            Assert.Equal(expected, pass.Solver.Tension[j], 1e-6);
            Assert.Equal(apart * j / segments, end.X[j], 1e-9);
        }
    }

    // Of a line too long for its place nothing pulls, however it is reeled.
    [Fact]
    public void A_loose_line_has_no_tension()
    {
        (LinePass pass, _) = Step(Line(), 4, 2.0, 1.9, 0.3, Vec3.Zero, depth: -10.0);
        Assert.All(pass.Solver.Tension.Take(4), t => Assert.Equal(0.0, t));
    }

    // Node on the water by half: buoyancy of half its volume, weight of all of it.
    [Theory]
    [InlineData(10.0, 0.0)]
    [InlineData(0.0, 0.5)]
    [InlineData(-10.0, 1.0)]
    public void Weight_is_less_by_the_water_that_the_wet_share_displaces(double height, double wet)
    {
        const double g = 9.8;
        (LinePass pass, LineState end) = Step(Line(), 2, 2.0, 1.9, 0.0, Vec3.Zero, -height, medium: Water with { GravityMS2 = g });
        Assert.Equal(wet, pass.WetShare(1), 1e-12);
        double displaced = Density * Mu / 1200.0, mass = Mu + (wet * displaced);
        Assert.Equal(Dt * g * ((wet * displaced) - Mu) / mass, end.VZ[1], 1e-12);
    }

    // A film holds a dry line at a depth d with 2 sigma (d/l_c) sqrt(1 - (d/2 l_c)^2) per length, as a secant spring k of the step; a broken one does
    // not. l_c = sqrt(sigma/(rho g)). Vertical backward Euler: v = dt (k d - net weight)/(m + dt^2 k), m with the water carried along.
    [Theory]
    [InlineData(0.5, 1.0)]
    [InlineData(1.0, 1.0)]
    [InlineData(1.9, 1.0)]
    [InlineData(1.0, 0.0)]
    [InlineData(-0.5, 1.0)]
    public void A_film_bears_a_dry_line_by_its_depth(double lengths, double whole)
    {
        const double g = 9.8, sigma = 0.072;
        double capillary = Math.Sqrt(sigma / (Density * g)), depth = lengths * capillary;
        LineMedium medium = Water with { GravityMS2 = g };
        (LinePass pass, LineState end) = Step(
            Line() with { Film = SurfaceFilm.Dry }, 2, 2.0, 1.9, 0.0, Vec3.Zero, depth, p => p.Film[1] = whole, medium);
        double k = depth > 0.0 ? whole * 2.0 * sigma / capillary * Math.Sqrt(1.0 - (0.25 * lengths * lengths)) : 0.0;
        double displaced = Density * Mu / 1200.0 * medium.WetShare(-depth);
        double v = Dt * ((k * depth) + (g * (displaced - Mu))) / (Mu + displaced + (Dt * Dt * k));
        Assert.Equal(v, end.VZ[1], 1e-12);
        Assert.Equal(-depth + (Dt * v), end.Z[1], 1e-15);
    }

    private static LineSpec Line() => new(
        LineMaterial.Braid, Diameter, Mu, 1200.0, Ea, Tau, 0.0, SurfaceFilm.Wetted, 1e9, TangentialDragCoefficient: Ct);

    /// <summary>One backward Euler step of a straight level line between two held ends, its inner nodes moving at one velocity.</summary>
    private static (LinePass Pass, LineState End) Step(
        LineSpec line, int segments, double length, double apart, double feed, Vec3 velocity, double depth, Action<LinePass>? set = null, LineMedium? medium = null)
    {
        var mesh = new LineMesh(line, null, length, segments);
        var pass = new LinePass(mesh, medium ?? Water) { FeedMS = feed };
        set?.Invoke(pass);
        LineState now = new(segments), end = new(segments);
        for (int i = 0; i <= segments; i++)
        {
            (now.X[i], now.Z[i]) = (apart * i / segments, -depth);
            bool inner = i > 0 && i < segments;
            (now.VX[i], now.VY[i], now.VZ[i]) = inner ? (velocity.X, velocity.Y, velocity.Z) : (0.0, 0.0, 0.0);
        }

        Bdf2 step = Bdf2.BackwardEuler(Dt);
        pass.Begin(step, now, now, end);
        LineEnd Held(int i) => LineEnd.Prescribed(new Vec3(now.X[i], now.Y[i], now.Z[i]), Vec3.Zero);
        pass.SetDirections(end);
        pass.Solve(step, end, Held(0), Held(segments), out _, out _);
        return (pass, end);
    }
}
