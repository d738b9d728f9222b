namespace LureSim.Model.Lures;

/// <summary>
/// Bodies by name. With s = 2 x / L (nose +1, tail -1) the breadth is B g(s) and the height H g(s). From the thickest place s0 each end has
/// its own t, 0 there and 1 at its tip, and its own power p:
/// <list type="bullet">
/// <item>cigar: g = sqrt(1 - t^p), p = 2.5, s0 = 0;</item>
/// <item>spheroid: the same with p = 2;</item>
/// <item>pencil: the same with p = 3, s0 = -0.2;</item>
/// <item>drop: s0 = -0.4, behind it g = sqrt(1 - t^p), ahead of it g = 1 - t^p, p = 2;</item>
/// <item>hollow: breadth p = 3, height p = 2.5, and each section's centre lies f (H/2)(1 - g) below the axis, f = 0.6, so that the belly line
/// is flatter than the back.</item>
/// </list>
/// p, s0 and f are the shape's own unless <see cref="LureFormSpec"/> says others. Invented outlines that stand for classes of bodies, not for any product.
/// </summary>
public static class HullShape
{
    /// <summary>The hull of a lure.</summary>
    /// <param name="lure">Lure; refused by <see cref="LureSpecCheck.Demand"/> when out of range.</param>
    /// <exception cref="ArgumentException">A value is out of range.</exception>
    public static HullForm Create(LureSpec lure)
    {
        LureSpecCheck.Demand(lure);
        return lure.Shape == LureShape.Stations
            ? new StationHull(lure.LengthM, lure.Stations!)
            : new NamedHull(lure.Shape, lure.LengthM, lure.DiameterM, lure.HeightM, lure.Form);
    }

    /// <summary>What a shape has of its own: the form that an empty one stands for, every member known.</summary>
    /// <param name="shape">Any shape but <see cref="LureShape.Stations"/>.</param>
    public static LureFormSpec Usual(LureShape shape) => shape switch
    {
        LureShape.Cigar => new(2.5, 2.5, 0.5, 0.0),
        LureShape.Spheroid => new(2.0, 2.0, 0.5, 0.0),
        LureShape.Pencil => new(3.0, 3.0, 0.6, 0.0),
        LureShape.Drop => new(2.0, 2.0, 0.7, 0.0),
        LureShape.Hollow => new(3.0, 3.0, 0.5, 0.6),
        _ => throw new ArgumentOutOfRangeException(nameof(shape), shape, "not a named shape"),
    };
}

/// <summary>The outline of a named shape in one view, 1 where it is thickest.</summary>
/// <param name="Nose">p of the nose.</param>
/// <param name="Tail">p of the tail.</param>
/// <param name="Thickest">s0.</param>
/// <param name="IsPointed">The nose runs out in a point.</param>
internal readonly record struct ShapeOutline(double Nose, double Tail, double Thickest, bool IsPointed)
{
    /// <summary>g at s, 0 to 1.</summary>
    /// <param name="s">2 x / L, -1 to 1.</param>
    public double At(double s)
    {
        double t = s >= Thickest ? (s - Thickest) / (1.0 - Thickest) : (s - Thickest) / (1.0 + Thickest);
        return t < 0.0 ? Blunt(t, Tail) : IsPointed ? 1.0 - (Nose == 2.0 ? t * t : Math.Pow(t, Nose)) : Blunt(t, Nose);
    }

    private static double Blunt(double t, double power) => Math.Sqrt(Math.Max(0.0, 1.0 - Math.Pow(Math.Abs(t), power)));
}

/// <summary>A hull from <see cref="HullShape"/>.</summary>
internal sealed class NamedHull : HullForm
{
    // The height of a hollow body is less blunt than its breadth.
    private const double HollowHeight = 2.5;

    private readonly ShapeOutline _breadth, _height;
    private readonly double _breadthM, _halfHeightM, _belly;
    private readonly bool _alike;

    public NamedHull(LureShape shape, double lengthM, double breadthM, double heightM, LureFormSpec? form = null)
        : base(lengthM)
    {
        LureFormSpec usual = HullShape.Usual(shape);
        double thickest = form?.ThickestPlace is double place ? 1.0 - (2.0 * place) : UsualThickest(shape);
        _breadth = new(form?.NoseBluntness ?? usual.NoseBluntness!.Value, form?.TailBluntness ?? usual.TailBluntness!.Value, thickest, shape == LureShape.Drop);
        _height = shape == LureShape.Hollow
            ? _breadth with { Nose = form?.NoseBluntness ?? HollowHeight, Tail = form?.TailBluntness ?? HollowHeight }
            : _breadth;
        _alike = _height == _breadth;
        (_breadthM, _halfHeightM, _belly) = (breadthM, 0.5 * heightM, form?.BellyFlatness ?? usual.BellyFlatness!.Value);
    }

    /// <inheritdoc/>
    public override HullSection SectionAt(double x)
    {
        double s = Math.Clamp(2.0 * x / LengthM, -1.0, 1.0);
        double breadth = _breadth.At(s), height = _alike ? breadth : _height.At(s);
        double centre = _belly > 0.0 ? -_belly * _halfHeightM * (1.0 - height) : 0.0;
        return new HullSection(0.5 * _breadthM * breadth, _halfHeightM * height, centre);
    }

    private static double UsualThickest(LureShape shape) => shape switch
    {
        LureShape.Pencil => -0.2,
        LureShape.Drop => -0.4,
        _ => 0.0,
    };
}
