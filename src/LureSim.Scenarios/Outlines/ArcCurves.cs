namespace LureSim.Scenarios.Outlines;

/// <summary>Elliptic arcs as cubic curves of at most an eighth of a turn each, off by less than 5e-6 of the radius.</summary>
internal static class ArcCurves
{
    /// <summary>An arc between two points (SVG 1.1, appendix F.6): radii too small are made just large enough, zero radii make a line.</summary>
    public static IEnumerable<Curve> Of(Spot from, Spot radii, double turned, bool large, bool sweep, Spot to)
    {
        double rx = Math.Abs(radii.X), ry = Math.Abs(radii.Y);
        if (from == to)
        {
            return [];
        }

        if (rx == 0.0 || ry == 0.0)
        {
            return [Curve.Line(from, to)];
        }

        Spot half = Turn(0.5 * (from - to), -turned);
        double over = Math.Sqrt((half.X * half.X / (rx * rx)) + (half.Y * half.Y / (ry * ry)));
        (rx, ry) = (rx * Math.Max(1.0, over), ry * Math.Max(1.0, over));
        double a = rx * half.Y, b = ry * half.X, sum = (a * a) + (b * b);
        double root = Math.Sqrt(Math.Max(0.0, ((rx * rx * ry * ry) - sum) / sum)) * (large == sweep ? -1.0 : 1.0);
        Spot centre = new(root * rx * half.Y / ry, -root * ry * half.X / rx);
        double start = Math.Atan2((half.Y - centre.Y) / ry, (half.X - centre.X) / rx);
        double end = Math.Atan2((-half.Y - centre.Y) / ry, (-half.X - centre.X) / rx);
        double angle = end - start;
        angle += sweep && angle < 0.0 ? 2.0 * Math.PI : !sweep && angle > 0.0 ? -2.0 * Math.PI : 0.0;
        Spot middle = (0.5 * (from + to)) + Turn(centre, turned);
        return Pieces(middle, rx, ry, turned, start, angle);
    }

    /// <summary>A whole ellipse.</summary>
    public static IEnumerable<Curve> Ellipse(Spot centre, double rx, double ry) => Pieces(centre, rx, ry, 0.0, 0.0, 2.0 * Math.PI);

    private static IEnumerable<Curve> Pieces(Spot centre, double rx, double ry, double turned, double start, double angle)
    {
        int n = Math.Max(1, (int)Math.Ceiling(Math.Abs(angle) / (0.25 * Math.PI)));
        double step = angle / n, k = 4.0 / 3.0 * Math.Tan(0.25 * step);
        for (int i = 0; i < n; i++)
        {
            (double s0, double c0) = Math.SinCos(start + (i * step));
            (double s1, double c1) = Math.SinCos(start + ((i + 1) * step));
            Spot On(double x, double y) => centre + Turn(new(rx * x, ry * y), turned);
            yield return new(On(c0, s0), On(c0 - (k * s0), s0 + (k * c0)), On(c1 + (k * s1), s1 - (k * c1)), On(c1, s1));
        }
    }

    private static Spot Turn(Spot p, double angle)
    {
        (double s, double c) = Math.SinCos(angle);
        return new((c * p.X) - (s * p.Y), (s * p.X) + (c * p.Y));
    }
}
