using LureSim.Model.Rods;

namespace LureSim.Model.Bend;

/// <summary>A rod in a bend test, all its numbers set: what every reading would be. Not thread-safe; made anew for each set of numbers.</summary>
internal sealed class BendState
{
    // Four times the links of a cast: the chain's own error falls below a tenth of a millimetre of drop.
    private const int Links = 40;

    private readonly BendTest _test;
    private readonly double[] _x;
    private readonly RodTaper _taper;
    private readonly Dictionary<double, RodShape> _shapes = [];

    public BendState(BendTest test, double[] x)
    {
        (_test, _x) = (test, x);
        var unit = new RodTaper(test.FreeLengthM, x[BendModel.Stiffness], 1.0, x[BendModel.Ratio], x[BendModel.Exponent], x[BendModel.MassExponent], 0.01);
        _taper = unit with { RootMassKgM = FreeMassKg / unit.MassMoment(0.0, unit.FreeLengthM, 0, 0.0) };
        Chain = RodChain.Build(_taper, Links);
    }

    /// <summary>The rod.</summary>
    public RodChain Chain { get; }

    /// <summary>Mass beyond the hand, kg.</summary>
    public double FreeMassKg => _x[BendModel.Mass] * _x[BendModel.Share];

    /// <summary>One of the numbers.</summary>
    public double this[int number] => _x[number];

    /// <summary>What a reading would be.</summary>
    public double Predict(ReadingKind kind, double loadN) => kind switch
    {
        ReadingKind.Drop => Drop(loadN, Chain.FreeLengthM),
        ReadingKind.MiddleDrop => Drop(loadN, 0.5 * Chain.FreeLengthM),
        ReadingKind.Angle => -Shape(loadN).AngleRad[^1],
        ReadingKind.Bounce => Bounce(loadN),
        ReadingKind.Balance => Balance(),
        _ => _x[BendModel.Mass],
    };

    /// <summary>Shape under a weight, butt as level as it was.</summary>
    public RodShape Shape(double loadN)
    {
        if (!_shapes.TryGetValue(loadN, out RodShape? shape))
        {
            shape = RodStatics.Solve(Chain, _x[BendModel.Level], 0.0, -loadN * _x[BendModel.Weights], RodPower.GravityMS2);
            _shapes.Add(loadN, shape);
        }

        return shape;
    }

    /// <summary>Corners of a shape from where the rod is held to its tip.</summary>
    public BentShape Corners(double loadN)
    {
        RodShape shape = Shape(loadN);
        double[] x = new double[Chain.Links + 2], y = new double[Chain.Links + 2];
        for (int i = 0; i <= Chain.Links; i++)
        {
            (double sin, double cos) = Math.SinCos(shape.AngleRad[i]);
            (x[i + 1], y[i + 1]) = (x[i] + (Chain.LengthM[i] * cos), y[i] + (Chain.LengthM[i] * sin));
        }

        return new(loadN, ValueList.Own(x), ValueList.Own(y));
    }

    private double Drop(double loadN, double along) =>
        (_test.IsFromLevel ? 0.0 : Height(Shape(0.0), along)) - Height(Shape(loadN), along);

    // Height of the point so far along the rod.
    private double Height(RodShape shape, double along)
    {
        double y = 0.0;
        for (int i = 0; i <= Chain.Links && along > 0.0; i++)
        {
            double l = Math.Min(along, Chain.LengthM[i]);
            y += l * Math.Sin(shape.AngleRad[i]);
            along -= l;
        }

        return y;
    }

    private double Bounce(double loadN)
    {
        double mass = loadN * _x[BendModel.Weights] / RodPower.GravityMS2;
        RodChain chain = mass > 0.0 ? RodChain.Build(_taper, Links, mass) : Chain;
        RodShape rest = RodStatics.Solve(chain, _x[BendModel.Level], 0.0, 0.0, RodPower.GravityMS2);
        return BentFrequency.FirstHz(chain, rest, RodPower.GravityMS2);
    }

    private double Balance()
    {
        double length = _taper.FreeLengthM, middle = _taper.MassMoment(0.0, length, 1, 0.0) / _taper.MassMoment(0.0, length, 0, 0.0);
        double share = _x[BendModel.Share], held = _test.ClampedM;
        return ((1.0 - share) * _x[BendModel.Handle] * held) + (share * (held + middle));
    }
}
