using System.Numerics;
using System.Runtime.CompilerServices;
using static LureSim.Model.Lines.Chain.Lanes;

namespace LureSim.Model.Lures.Free;

/// <summary>
/// The hull's sections cut by the flat water at one attitude: level, immersed share, and the integrals over the level that make the volume of a
/// strip exact. With t the level over the section's centre in half-heights: share = pi - acos t + t sqrt(1 - t^2) (times b c), its first moment
/// -(2/3)(1 - t^2)^(3/2), and the indefinite integrals of share, t share and moment. Beyond 1 all is wet, below -1 dry.
/// acos: Abramowitz and Stegun 4.4.46, error 2e-8.
/// </summary>
internal sealed class NodeCut
{
    private const double LeastHalfHeightM = 1e-6;

    private readonly HullNodes _nodes;

    /// <summary>Allocates the work arrays of one hull.</summary>
    /// <param name="nodes">Sections.</param>
    public NodeCut(HullNodes nodes)
    {
        ArgumentNullException.ThrowIfNull(nodes);
        _nodes = nodes;
    }

    /// <summary>t, level over the section's centre in half-heights.</summary>
    public double[] Level { get; } = New();

    /// <summary>h_e, half-height along e_v, m.</summary>
    public double[] HalfHeight { get; } = New();

    /// <summary>acos t, t held to -1 to 1.</summary>
    public double[] Angle { get; } = New();

    /// <summary>sqrt(1 - t^2), 0 where dry or wet.</summary>
    public double[] Root { get; } = New();

    /// <summary>Immersed share times pi: 0 dry, pi wet.</summary>
    public double[] Share { get; } = New();

    /// <summary>Integral of the share over t.</summary>
    public double[] ShareSum { get; } = New();

    /// <summary>Integral of t times the share.</summary>
    public double[] ShareMoment { get; } = New();

    /// <summary>Integral of the first moment of the share.</summary>
    public double[] DepthSum { get; } = New();

    /// <summary>Cuts all sections.</summary>
    /// <param name="water">Attitude.</param>
    public void Set(in WaterAxes water)
    {
        double oy = water.OutY, oz = water.OutZ;
        Vector<double> height = new(water.Height), slope = new(water.Up.X), lift = new(water.Up.Z), per = new(-1.0 / water.Tilt);
        Vector<double> yy = new(oy * oy), zz = new(oz * oz), least = new(LeastHalfHeightM);
        ref double x = ref First(_nodes.X), z = ref First(_nodes.Centre), b = ref First(_nodes.Breadth2), c = ref First(_nodes.Height2);
        ref double level = ref First(Level), half = ref First(HalfHeight);
        for (nuint j = 0; j < HullNodes.Count; j += (nuint)Width)
        {
            Vector<double> h = height + (slope * Load(ref x, j)) + (lift * Load(ref z, j));
            Vector<double> he = Vector.Max(least, Vector.SquareRoot((yy * Load(ref b, j)) + (zz * Load(ref c, j))));
            Store(he, ref half, j);
            Store(per * h / he, ref level, j);
        }

        SetShares();
    }

    private static double[] New() => new double[HullNodes.Count + Width];

    private void SetShares()
    {
        Vector<double> one = Vector<double>.One, pi = new(Math.PI), quarter = new(0.25), third = new(1.0 / 3.0), half = new(0.5);
        ref double level = ref First(Level), angle = ref First(Angle), root = ref First(Root);
        ref double share = ref First(Share), sum = ref First(ShareSum), moment = ref First(ShareMoment), depth = ref First(DepthSum);
        for (nuint j = 0; j < HullNodes.Count; j += (nuint)Width)
        {
            Vector<double> t = Load(ref level, j);
            Vector<double> tc = Vector.Min(one, Vector.Max(-one, t)), over = Vector.Max(one, t);
            Vector<double> a = Acos(tc);
            Vector<double> square = tc * tc, s = Vector.SquareRoot(one - square), ts = tc * s;
            Vector<double> asin = (half * pi) - a;
            Store(a, ref angle, j);
            Store(s, ref root, j);
            Store(pi - a + ts, ref share, j);
            Store((tc * (pi - a)) + s - (third * s * s * s) + (pi * (over - one)), ref sum, j);
            Vector<double> inner = (half * square * (pi - a)) - (quarter * (asin - ts)) + (new Vector<double>(0.125) * (asin - (ts * (one - (square + square)))));
            Store(inner + (half * pi * ((over * over) - one)), ref moment, j);
            Store(new Vector<double>(-1.0 / 12.0) * ((ts * (new Vector<double>(5.0) - (square + square))) + (new Vector<double>(3.0) * asin)), ref depth, j);
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector<double> Acos(Vector<double> t)
    {
        Vector<double> x = Vector.Abs(t);
        Vector<double> p = new(-0.0012624911);
        p = (p * x) + new Vector<double>(0.0066700901);
        p = (p * x) + new Vector<double>(-0.0170881256);
        p = (p * x) + new Vector<double>(0.0308918810);
        p = (p * x) + new Vector<double>(-0.0501743046);
        p = (p * x) + new Vector<double>(0.0889789874);
        p = (p * x) + new Vector<double>(-0.2145988016);
        p = (p * x) + new Vector<double>(1.5707963050);
        Vector<double> a = Vector.SquareRoot(Vector<double>.One - x) * p;
        return Vector.ConditionalSelect(Vector.LessThan(t, Vector<double>.Zero), new Vector<double>(Math.PI) - a, a);
    }
}
