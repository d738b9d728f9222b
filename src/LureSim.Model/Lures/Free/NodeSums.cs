using System.Numerics;
using System.Runtime.CompilerServices;
using LureSim.Numerics;
using static LureSim.Model.Lines.Chain.Lanes;

namespace LureSim.Model.Lures.Free;

/// <summary>Sums over nodes and strips.</summary>
internal static class NodeSums
{
    private const double LeastExtentM = 1e-9;
    private const double Flat = 0.05, Edge = 0.9, Level = 0.001;

    /// <summary>Moments of a coefficient per metre.</summary>
    /// <param name="nodes">Sections.</param>
    /// <param name="perMetre">Coefficient, one a node.</param>
    /// <param name="arm">Roll arms, m; empty where all are 0.</param>
    public static NodeMoments Moments(HullNodes nodes, double[] perMetre, double[] arm)
    {
        Vector<double> s = default, sx = default, sxx = default, sa = default, sxa = default, saa = default;
        ref double c = ref First(perMetre), width = ref First(nodes.Width), x = ref First(nodes.X);
        if (arm.Length == 0)
        {
            for (nuint j = 0; j < HullNodes.Count; j += (nuint)Width)
            {
                Vector<double> v = Load(ref c, j) * Load(ref width, j), xj = Load(ref x, j), vx = v * xj;
                s += v;
                sx += vx;
                sxx += vx * xj;
            }

            return new NodeMoments(Vector.Sum(s), Vector.Sum(sx), Vector.Sum(sxx), 0.0, 0.0, 0.0);
        }

        ref double a = ref First(arm);
        for (nuint j = 0; j < HullNodes.Count; j += (nuint)Width)
        {
            Vector<double> v = Load(ref c, j) * Load(ref width, j), xj = Load(ref x, j), aj = Load(ref a, j), vx = v * xj, va = v * aj;
            s += v;
            sx += vx;
            sxx += vx * xj;
            sa += va;
            sxa += vx * aj;
            saa += va * aj;
        }

        return new NodeMoments(Vector.Sum(s), Vector.Sum(sx), Vector.Sum(sxx), Vector.Sum(sa), Vector.Sum(sxa), Vector.Sum(saa));
    }

    /// <summary>Volume under water and its first moments in body axes, m3 and m4. Every strip is an elliptic cylinder cut by the inclined water
    /// exactly, so that force and moment are the slopes of one potential and no motion makes energy.</summary>
    /// <param name="nodes">Sections.</param>
    /// <param name="water">Attitude.</param>
    public static (double Volume, Vec3 Moment) Volume(HullNodes nodes, in WaterAxes water)
    {
        double oy = water.OutY, oz = water.OutZ;
        Vector<double> volume = default, alongX = default, alongZ = default, downY = default, downZ = default;
        Vector<double> yy = new(oy * oy), zz = new(oz * oz), half = new(0.5);
        Vector<double> height = new(water.Height), slope = new(water.Up.X), lift = new(water.Up.Z), per = new(-1.0 / water.Tilt), least = new(LeastExtentM);
        ref double x = ref First(nodes.StripX), size = ref First(nodes.StripSize), width = ref First(nodes.StripWidth);
        ref double b2 = ref First(nodes.StripBreadth2), c2 = ref First(nodes.StripHeight2), z = ref First(nodes.StripCentre);
        for (nuint j = 0; j < HullNodes.Count; j += (nuint)Width)
        {
            Vector<double> v = Load(ref size, j), w = Load(ref width, j), middle = Load(ref x, j), centre = Load(ref z, j);
            Vector<double> breadth2 = Load(ref b2, j), height2 = Load(ref c2, j);
            Vector<double> extent = Vector.Max(least, Vector.SquareRoot((yy * breadth2) + (zz * height2)));
            Vector<double> scale = per / extent, rise = half * slope * w, h = height + (slope * middle) + (lift * centre);
            (Vector<double> mean, Vector<double> first, Vector<double> depth) = Strip(scale * (h - rise), scale * (h + rise));
            Vector<double> wet = v * mean, down = v * depth / extent;
            volume += wet;
            alongX += (wet * middle) + (v * w * first);
            alongZ += wet * centre;
            downY += down * breadth2;
            downZ += down * height2;
        }

        return (Vector.Sum(volume), new Vec3(Vector.Sum(alongX), oy * Vector.Sum(downY), Vector.Sum(alongZ) + (oz * Vector.Sum(downZ))));
    }

    // Over one strip with linear level: mean of the share, its first moment in strip lengths, mean of the depth moment -(2/3)(1 - t^2)^(3/2).
    // Nearly flat, the differences of the integrals would cancel; there the corrected trapezoid is exact to the fourth order, away from the corners
    // where the section goes under or comes out.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static (Vector<double> Mean, Vector<double> First, Vector<double> Depth) Strip(Vector<double> ta, Vector<double> tb)
    {
        Vector<double> one = Vector<double>.One, half = new(0.5), twelfth = new(1.0 / 12.0), third = new(-1.0 / 3.0), two = new(2.0);
        Vector<double> d = tb - ta, ca = Vector.Min(one, Vector.Max(-one, ta)), cb = Vector.Min(one, Vector.Max(-one, tb));
        (Vector<double> aa, Vector<double> ab) = (NodeCut.Acos(ca), NodeCut.Acos(cb));
        Vector<double> sa = Vector.SquareRoot(one - (ca * ca)), sb = Vector.SquareRoot(one - (cb * cb));

        // Slopes over t: share 2 s, depth moment 2 t s.
        Vector<double> shares = (ca * sa) - aa, other = (cb * sb) - ab;
        Vector<double> mean = new Vector<double>(Math.PI) + (half * (shares + other)) - (twelfth * d * two * (sb - sa));
        Vector<double> first = twelfth * (other - shares);
        Vector<double> deep = (third * ((sa * sa * sa) + (sb * sb * sb))) - (twelfth * d * two * ((cb * sb) - (ca * sa)));
        Vector<double> size = Vector.Abs(d), edge = Vector.Max(Vector.Abs(ca), Vector.Abs(cb));
        Vector<long> inside = Vector.LessThan(size, new Vector<double>(Flat)) & Vector.LessThan(edge, new Vector<double>(Edge));
        Vector<long> steep = ~(inside | Vector.Equals(ca, cb) | Vector.LessThan(size, new Vector<double>(Level)));
        if (Vector.EqualsAll(steep, Vector<long>.Zero))
        {
            return (mean, first, deep);
        }

        Vector<double> inverse = one / Vector.ConditionalSelect(steep, d, one);
        (Vector<double> sumA, Vector<double> momentA, Vector<double> depthA) = Integrals(ta, ca, aa, sa);
        (Vector<double> sumB, Vector<double> momentB, Vector<double> depthB) = Integrals(tb, cb, ab, sb);
        Vector<double> total = sumB - sumA;
        return (
            Vector.ConditionalSelect(steep, inverse * total, mean),
            Vector.ConditionalSelect(steep, inverse * inverse * (momentB - momentA - (half * (ta + tb) * total)), first),
            Vector.ConditionalSelect(steep, inverse * (depthB - depthA), deep));
    }

    // Indefinite integrals over t of the share, of t times the share, and of the depth moment.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static (Vector<double> Share, Vector<double> Moment, Vector<double> Depth) Integrals(
        Vector<double> t, Vector<double> tc, Vector<double> a, Vector<double> s)
    {
        Vector<double> one = Vector<double>.One, pi = new(Math.PI), quarter = new(0.25), third = new(1.0 / 3.0), half = new(0.5);
        Vector<double> over = Vector.Max(one, t), square = tc * tc, ts = tc * s, asin = (half * pi) - a;
        Vector<double> inner = (half * square * (pi - a)) - (quarter * (asin - ts)) + (new Vector<double>(0.125) * (asin - (ts * (one - (square + square)))));
        return (
            (tc * (pi - a)) + s - (third * s * s * s) + (pi * (over - one)),
            inner + (half * pi * ((over * over) - one)),
            new Vector<double>(-1.0 / 12.0) * ((ts * (new Vector<double>(5.0) - (square + square))) + (new Vector<double>(3.0) * asin)));
    }
}
