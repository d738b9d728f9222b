using LureSim.Model.Lures;

namespace LureSim.Validation.Lures;

/// <summary>A box: the published worked examples are pontoons. Its sections are clipped as polygons.</summary>
internal sealed class BoxHull(double length, double breadth, double height) : IHull
{
    private readonly (double Y, double Z)[] _corners =
    [
        (-0.5 * breadth, -0.5 * height), (0.5 * breadth, -0.5 * height), (0.5 * breadth, 0.5 * height), (-0.5 * breadth, 0.5 * height),
    ];

    /// <inheritdoc/>
    public double LengthM => length;

    /// <inheritdoc/>
    public SectionCut Cut(double x, double ny, double nz, double d)
    {
        var wet = new List<(double Y, double Z)>();
        var chord = new List<(double Y, double Z)>();
        for (int i = 0; i < 4; i++)
        {
            (double y0, double z0) = _corners[i];
            (double y1, double z1) = _corners[(i + 1) % 4];
            double s0 = (ny * y0) + (nz * z0) - d;
            double s1 = (ny * y1) + (nz * z1) - d;
            if (s0 < 0.0)
            {
                wet.Add((y0, z0));
            }

            if ((s0 < 0.0) != (s1 < 0.0))
            {
                double w = s0 / (s0 - s1);
                (double Y, double Z) p = (y0 + (w * (y1 - y0)), z0 + (w * (z1 - z0)));
                wet.Add(p);
                chord.Add(p);
            }
        }

        return wet.Count == 0 ? default : Polygon(wet, chord);
    }

    private static SectionCut Polygon(List<(double Y, double Z)> p, List<(double Y, double Z)> chord)
    {
        double area = 0.0, my = 0.0, mz = 0.0;
        for (int i = 0; i < p.Count; i++)
        {
            (double Y, double Z) a = p[i];
            (double Y, double Z) b = p[(i + 1) % p.Count];
            double cross = 0.5 * ((a.Y * b.Z) - (b.Y * a.Z));
            area += cross;
            my += cross * (a.Y + b.Y) / 3.0;
            mz += cross * (a.Z + b.Z) / 3.0;
        }

        if (chord.Count < 2)
        {
            return new SectionCut(Wetting.Wet, area, my / area, mz / area, 0.0, 0.0, 0.0);
        }

        ((double y0, double z0), (double y1, double z1)) = (chord[0], chord[1]);
        double size = Math.Sqrt(Math.Pow(y1 - y0, 2) + Math.Pow(z1 - z0, 2));
        return new SectionCut(
            Wetting.Partial, area, my / area, mz / area, size, 0.5 * (y0 + y1), 0.5 * (z0 + z1));
    }
}
