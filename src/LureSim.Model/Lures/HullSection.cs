using MathNet.Numerics.Integration;

namespace LureSim.Model.Lures;

/// <summary>An elliptic section of a hull.</summary>
/// <param name="HalfBreadthM">b, m.</param>
/// <param name="HalfHeightM">c, m.</param>
/// <param name="CentreZM">Height of the ellipse's centre over the axis, m.</param>
public readonly record struct HullSection(double HalfBreadthM, double HalfHeightM, double CentreZM)
{
    /// <summary>pi b c, m2.</summary>
    public double AreaM2 => Math.PI * HalfBreadthM * HalfHeightM;

    /// <summary>
    /// Perimeter, m. Ramanujan 1914, Q. J. Math. 45:350, second formula (from memory): exact for a circle, within
    /// 1e-9 for half-axes up to 1 : 2 and 4e-4 for a flat plate.
    /// </summary>
    public double PerimeterM
    {
        get
        {
            double sum = HalfBreadthM + HalfHeightM;
            if (sum == 0.0)
            {
                return 0.0;
            }

            double h = Math.Pow((HalfBreadthM - HalfHeightM) / sum, 2);
            return Math.PI * sum * (1.0 + (3.0 * h / (10.0 + Math.Sqrt(4.0 - (3.0 * h)))));
        }
    }

    /// <summary>Half-extent q of the ellipse along a unit vector: half its height seen from the water line.</summary>
    /// <param name="ny">y of the unit vector.</param>
    /// <param name="nz">z of the unit vector.</param>
    public double HalfExtentM(double ny, double nz)
    {
        double y = ny * HalfBreadthM;
        double z = nz * HalfHeightM;
        return Math.Sqrt((y * y) + (z * z));
    }

    /// <summary>
    /// t, distance of the water line from the centre over the half-extent q: below -1 dry, above 1 wet, 0 half
    /// immersed. Infinite for a section of no size.
    /// </summary>
    /// <param name="ny">y of the unit normal out of the water.</param>
    /// <param name="nz">z of the unit normal.</param>
    /// <param name="d">Distance of the water line from the axis along it, m.</param>
    public double RelativeLevel(double ny, double nz, double d)
    {
        double level = d - (nz * CentreZM);
        double q = HalfExtentM(ny, nz);
        return q > 0.0 ? level / q : level >= 0.0 ? double.PositiveInfinity : double.NegativeInfinity;
    }

    /// <summary>
    /// Cuts the ellipse exactly: a stretch turns it into the unit disc, whose segment has area
    /// pi - acos t + t sqrt(1 - t^2) and first moment -(2/3)(1 - t^2)^(3/2).
    /// </summary>
    /// <param name="ny">y of the unit normal out of the water.</param>
    /// <param name="nz">z of the unit normal.</param>
    /// <param name="d">Distance of the water line from the axis along it, m.</param>
    public SectionCut Cut(double ny, double nz, double d)
    {
        double t = RelativeLevel(ny, nz, d);
        if (t <= -1.0)
        {
            return default;
        }

        if (t >= 1.0)
        {
            return new SectionCut(Wetting.Wet, AreaM2, 0.0, CentreZM, 0.0, 0.0, CentreZM);
        }

        double q = HalfExtentM(ny, nz);
        double my = ny * HalfBreadthM / q;
        double mz = nz * HalfHeightM / q;
        double root = Math.Sqrt(1.0 - (t * t));
        double segment = Math.PI - Math.Acos(t) + (t * root);
        double arm = segment > 0.0 ? -2.0 / 3.0 * root * root * root / segment : -1.0;
        double stretchY = mz * HalfBreadthM;
        double stretchZ = my * HalfHeightM;
        double chord = 2.0 * root * Math.Sqrt((stretchY * stretchY) + (stretchZ * stretchZ));
        return new SectionCut(
            Wetting.Partial,
            HalfBreadthM * HalfHeightM * segment,
            HalfBreadthM * arm * my,
            CentreZM + (HalfHeightM * arm * mz),
            chord,
            HalfBreadthM * t * my,
            CentreZM + (HalfHeightM * t * mz));
    }

    /// <summary>Length of the immersed part of the outline, m (Gauss-Legendre over the arc; exact for a circle).</summary>
    /// <param name="ny">y of the unit normal out of the water.</param>
    /// <param name="nz">z of the unit normal.</param>
    /// <param name="d">Distance of the water line from the axis along it, m.</param>
    public double WettedPerimeterM(double ny, double nz, double d)
    {
        double t = RelativeLevel(ny, nz, d);
        if (t <= -1.0)
        {
            return 0.0;
        }

        if (t >= 1.0)
        {
            return PerimeterM;
        }

        double b = HalfBreadthM;
        double c = HalfHeightM;
        double down = Math.Atan2(-nz * c, -ny * b);
        double half = Math.PI - Math.Acos(t);
        return GaussLegendreRule.Integrate(
            angle => ArcSpeed(b, c, angle), down - half, down + half, 32);
    }

    // ds/d(angle) of the outline (b cos, c sin).
    private static double ArcSpeed(double b, double c, double angle)
    {
        double y = b * Math.Sin(angle);
        double z = c * Math.Cos(angle);
        return Math.Sqrt((y * y) + (z * z));
    }
}
