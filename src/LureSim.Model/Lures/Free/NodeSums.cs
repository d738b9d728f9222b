using System.Numerics;
using System.Runtime.CompilerServices;
using LureSim.Numerics;
using static LureSim.Model.Lines.Chain.Lanes;

namespace LureSim.Model.Lures.Free;

/// <summary>Sums over nodes and strips.</summary>
internal static class NodeSums
{
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

    /// <summary>Volume under water and its first moments in body axes, m3 and m4: exact where level and section are linear along a strip.</summary>
    /// <param name="nodes">Sections.</param>
    /// <param name="cut">Sections as they are cut.</param>
    /// <param name="water">Attitude.</param>
    public static (double Volume, Vec3 Moment) Volume(HullNodes nodes, NodeCut cut, in WaterAxes water)
    {
        double oy = water.OutY, oz = water.OutZ;
        Vector<double> volume = default, alongX = default, alongY = default, alongZ = default, yy = new(oy * oy), zz = new(oz * oz);
        ref double x = ref First(nodes.StripX), size = ref First(nodes.StripSize), moment = ref First(nodes.StripMoment), width = ref First(nodes.StripWidth);
        ref double b2 = ref First(nodes.StripBreadth2), c2 = ref First(nodes.StripHeight2), z = ref First(nodes.StripCentre);
        for (nuint j = 0; j < HullNodes.Count; j += (nuint)Width)
        {
            (Vector<double> mean, Vector<double> first, Vector<double> depth) = Strip(cut, j);
            Vector<double> v = Load(ref size, j), m = Load(ref moment, j), w = Load(ref width, j), middle = Load(ref x, j);

            // Section size over the strip: mean and slope; the slope's own share is 12 m/w^2 times the first moment of the wet share.
            Vector<double> perWidth = Vector.ConditionalSelect(Vector.GreaterThan(w, Vector<double>.Zero), Vector<double>.One / w, Vector<double>.Zero);
            Vector<double> wet = (v * mean) + (new Vector<double>(12.0) * m * perWidth * first);
            Vector<double> breadth2 = Load(ref b2, j), height2 = Load(ref c2, j);
            Vector<double> extent = Vector.Max(new Vector<double>(1e-9), Vector.SquareRoot((yy * breadth2) + (zz * height2)));
            Vector<double> down = v * depth / extent;
            volume += wet;
            alongX += (wet * middle) + (v * w * first) + (m * mean);
            alongY += down * breadth2;
            alongZ += (wet * Load(ref z, j)) + (down * height2);
        }

        return (Vector.Sum(volume), new Vec3(Vector.Sum(alongX), oy * Vector.Sum(alongY), oz * Vector.Sum(alongZ)));
    }

    // Over one strip with linear level: mean of the share, its first moment in strip lengths, mean of the depth moment. Nearly flat, the differences
    // of the integrals would cancel; there the corrected trapezoid is exact to the fourth order.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static (Vector<double> Mean, Vector<double> First, Vector<double> Depth) Strip(NodeCut cut, nuint j)
    {
        Vector<double> flat = new(0.05), one = Vector<double>.One, half = new(0.5), twelfth = new(1.0 / 12.0);
        ref double level = ref First(cut.Level), share = ref First(cut.Share), root = ref First(cut.Root);
        ref double sum = ref First(cut.ShareSum), moment = ref First(cut.ShareMoment), depth = ref First(cut.DepthSum);
        Vector<double> ta = Load(ref level, j), tb = Load(ref level, j + 1), d = tb - ta;
        Vector<double> fa = Load(ref share, j), fb = Load(ref share, j + 1), sa = Load(ref root, j), sb = Load(ref root, j + 1);
        Vector<long> steep = Vector.GreaterThan(Vector.Abs(d), flat);
        Vector<double> inverse = one / Vector.ConditionalSelect(steep, d, one);
        Vector<double> total = Load(ref sum, j + 1) - Load(ref sum, j);
        Vector<double> mean = inverse * total, middle = half * (ta + tb);
        Vector<double> first = inverse * inverse * (Load(ref moment, j + 1) - Load(ref moment, j) - (middle * total));
        Vector<double> deep = inverse * (Load(ref depth, j + 1) - Load(ref depth, j));

        // Slopes over t: share 2 s, depth moment -(2/3) s^3 has 2 t s.
        Vector<double> flatMean = (half * (fa + fb)) - (twelfth * d * ((sb + sb) - (sa + sa)));
        Vector<double> third = new(-1.0 / 3.0), two = new(2.0);
        Vector<double> ca = Vector.Min(one, Vector.Max(-one, ta)), cb = Vector.Min(one, Vector.Max(-one, tb));
        Vector<double> flatDeep = (third * ((sa * sa * sa) + (sb * sb * sb))) - (twelfth * d * two * ((cb * sb) - (ca * sa)));
        return (
            Vector.ConditionalSelect(steep, mean, flatMean),
            Vector.ConditionalSelect(steep, first, twelfth * (fb - fa)),
            Vector.ConditionalSelect(steep, deep, flatDeep));
    }
}
