using LureSim.Numerics;

namespace LureSim.Model.Tests.References;

/// <summary>
/// The line of docs/reference-cases.md written a second time, plainly and for an explicit method: tension of a segment
/// max(0, k e + c e') where it is stretched, drag and weight of a node. Shares nothing with the product's line.
/// </summary>
internal sealed class ExplicitLine(int segments, double diameter, double length, double gravity)
{
    private const double WaterDensity = 1000.0, AirDensity = 1.225, LineDensity = 970.0;
    private readonly double _area = Math.PI * diameter * diameter / 4.0;

    /// <summary>Unit directions.</summary>
    public Vec3[] Direction { get; } = new Vec3[segments];

    /// <summary>Tensions, N.</summary>
    public double[] Tension { get; } = new double[segments];

    /// <summary>l, m.</summary>
    public double Segment => length / segments;

    /// <summary>Mass of an inner node, kg.</summary>
    public double NodeMass => LineDensity * _area * Segment;

    /// <summary>Directions and tensions of all segments; EA 5000 N, BA 4.5 N s.</summary>
    public void Stretch(ReadOnlySpan<Vec3> x, ReadOnlySpan<Vec3> v)
    {
        double k = 5000.0 / Segment, c = 4.5 / Segment;
        for (int j = 0; j < segments; j++)
        {
            Vec3 d = x[j + 1] - x[j];
            double len = d.Length, e = len - Segment;
            Direction[j] = (1.0 / len) * d;
            Tension[j] = e > 0.0 ? Math.Max(0.0, (k * e) + (c * Vec3.Dot(Direction[j], v[j + 1] - v[j]))) : 0.0;
        }
    }

    /// <summary>Drag, weight and buoyancy of a node that carries a share of a segment's length, N.</summary>
    public Vec3 Outer(int node, Vec3 x, Vec3 v, double share)
    {
        Vec3 sum = node < segments ? Direction[node - 1] + Direction[node] : Direction[node - 1];
        Vec3 u = (1.0 / sum.Length) * sum;
        double h = Smooth(0.5 - (x.Z / 0.010)), rho = AirDensity + ((WaterDensity - AirDensity) * h);
        double along = Vec3.Dot(v, u);
        Vec3 across = v - (along * u);
        double scale = 0.5 * rho * diameter * Segment * share;
        Vec3 drag = scale * ((1.2 * across.Length * across) + (0.01 * Math.PI * Math.Abs(along) * along * u));
        return new Vec3(0.0, 0.0, Weight(h, share)) - drag;
    }

    /// <summary>Buoyancy less weight, N.</summary>
    public double Weight(double wet, double share) =>
        share * gravity * ((WaterDensity * _area * Segment * wet) - NodeMass);

    /// <summary>Smoothstep, clipped.</summary>
    public static double Smooth(double s)
    {
        s = Math.Clamp(s, 0.0, 1.0);
        return s * s * (3.0 - (2.0 * s));
    }
}
