namespace LureSim.Model.Lures;

/// <summary>
/// Bodies by name. With s = 2 x / L (nose +1, tail -1) the breadth is B g(s) and the height H g(s), g below:
/// <list type="bullet">
/// <item>cigar: g = sqrt(1 - |s|^2.5);</item>
/// <item>spheroid: g = sqrt(1 - s^2);</item>
/// <item>pencil: g = sqrt(1 - |t|^3), t = (s - s0)/(1 - s0) ahead of s0 = -0.2 and (s - s0)/(1 + s0) behind;</item>
/// <item>drop: s0 = -0.4, behind it g = sqrt(1 - t^2), ahead of it g = 1 - t^2;</item>
/// <item>hollow: breadth g = sqrt(1 - |s|^3), height g = sqrt(1 - |s|^2.5), and each section's centre lies
/// 0.6 (H/2)(1 - g) below the axis, so that the belly line is flatter than the back.</item>
/// </list>
/// Invented outlines that stand for classes of bodies, not for any product.
/// </summary>
public static class HullShape
{
    /// <summary>Share of the loss of height that the flat belly of a hollow body does not show (1 = belly line straight).</summary>
    internal const double BellyFlatness = 0.6;

    /// <summary>The hull of a lure.</summary>
    /// <param name="lure">Lure; refused by <see cref="LureSpecCheck.Demand"/> when out of range.</param>
    /// <exception cref="ArgumentException">A value is out of range.</exception>
    public static HullForm Create(LureSpec lure)
    {
        LureSpecCheck.Demand(lure);
        return lure.Shape == LureShape.Stations
            ? new StationHull(lure.LengthM, lure.Stations!)
            : new NamedHull(lure.Shape, lure.LengthM, lure.DiameterM, lure.HeightM);
    }

    /// <summary>Relative breadth and height of a named shape.</summary>
    /// <param name="shape">Any shape but <see cref="LureShape.Stations"/>.</param>
    /// <param name="s">2 x / L, -1 to 1.</param>
    internal static (double Breadth, double Height) Relative(LureShape shape, double s) => shape switch
    {
        LureShape.Cigar => Round(Blunt(s, 2.5)),
        LureShape.Spheroid => Round(Blunt(s, 2.0)),
        LureShape.Pencil => Round(Blunt(FromThickest(s, -0.2), 3.0)),
        LureShape.Drop => Round(Drop(FromThickest(s, -0.4))),
        LureShape.Hollow => (Blunt(s, 3.0), Blunt(s, 2.5)),
        _ => throw new ArgumentOutOfRangeException(nameof(shape), shape, "not a named shape"),
    };

    private static (double Breadth, double Height) Round(double g) => (g, g);

    private static double Blunt(double t, double power) => Math.Sqrt(Math.Max(0.0, 1.0 - Math.Pow(Math.Abs(t), power)));

    private static double Drop(double t) => t < 0.0 ? Blunt(t, 2.0) : 1.0 - (t * t);

    private static double FromThickest(double s, double s0) => s >= s0 ? (s - s0) / (1.0 - s0) : (s - s0) / (1.0 + s0);
}

/// <summary>A hull from <see cref="HullShape"/>.</summary>
internal sealed class NamedHull(LureShape shape, double lengthM, double breadthM, double heightM) : HullForm(lengthM)
{
    /// <inheritdoc/>
    public override HullSection SectionAt(double x)
    {
        (double breadth, double height) = HullShape.Relative(shape, Math.Clamp(2.0 * x / LengthM, -1.0, 1.0));
        double halfHeight = 0.5 * heightM;
        double centre = shape == LureShape.Hollow ? -HullShape.BellyFlatness * halfHeight * (1.0 - height) : 0.0;
        return new HullSection(0.5 * breadthM * breadth, halfHeight * height, centre);
    }
}
