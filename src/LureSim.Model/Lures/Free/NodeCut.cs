using System.Numerics;
using System.Runtime.CompilerServices;
using static LureSim.Model.Lines.Chain.Lanes;

namespace LureSim.Model.Lures.Free;

/// <summary>
/// The hull's sections cut by the flat water at one attitude: level and immersed share. With t the level over the section's centre in half-heights:
/// share = pi - acos t + t sqrt(1 - t^2) (times b c). Beyond 1 all is wet, below -1 dry. acos: sqrt(1 - t) times a
/// Chebyshev polynomial of degree 11, error 1.2e-11 (form of Abramowitz and Stegun 4.4.46).
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

    private static double[] New() => new double[HullNodes.Count];

    private void SetShares()
    {
        Vector<double> one = Vector<double>.One, pi = new(Math.PI);
        ref double level = ref First(Level), angle = ref First(Angle), root = ref First(Root), share = ref First(Share);
        for (nuint j = 0; j < HullNodes.Count; j += (nuint)Width)
        {
            Vector<double> tc = Vector.Min(one, Vector.Max(-one, Load(ref level, j)));
            Vector<double> a = Acos(tc), s = Vector.SquareRoot(one - (tc * tc));
            Store(a, ref angle, j);
            Store(s, ref root, j);
            Store(pi - a + (tc * s), ref share, j);
        }
    }

    /// <summary>acos of values from -1 to 1.</summary>
    /// <param name="t">Values.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Vector<double> Acos(Vector<double> t)
    {
        Vector<double> x = Vector.Abs(t);
        Vector<double> p = new(-0.00014192929258570076);
        p = (p * x) + new Vector<double>(0.0010184400994330644);
        p = (p * x) + new Vector<double>(-0.0034473696620261765);
        p = (p * x) + new Vector<double>(0.0075337570279589271);
        p = (p * x) + new Vector<double>(-0.01249200618824034);
        p = (p * x) + new Vector<double>(0.017799367643881396);
        p = (p * x) + new Vector<double>(-0.02415605907516806);
        p = (p * x) + new Vector<double>(0.033645766079765452);
        p = (p * x) + new Vector<double>(-0.050789343138991611);
        p = (p * x) + new Vector<double>(0.089048445105999047);
        p = (p * x) + new Vector<double>(-0.21460183301862976);
        p = (p * x) + new Vector<double>(1.5707963267828307);
        Vector<double> a = Vector.SquareRoot(Vector<double>.One - x) * p;
        return Vector.ConditionalSelect(Vector.LessThan(t, Vector<double>.Zero), new Vector<double>(Math.PI) - a, a);
    }
}
