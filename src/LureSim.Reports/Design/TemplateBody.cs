using LureSim.Model.Lures;

namespace LureSim.Reports.Design;

/// <summary>A body as a template draws it: outlines from the side and from above, in millimetres from the middle of its length.</summary>
internal sealed class TemplateBody
{
    private const int Along = 181, Around = 90;
    private const double MmPerM = 1000.0;
    private readonly HullForm _hull;

    /// <summary>Takes the outlines of a lure.</summary>
    /// <param name="lure">Lure.</param>
    /// <exception cref="ArgumentException">A value is out of range.</exception>
    public TemplateBody(LureSpec lure)
    {
        _hull = HullShape.Create(lure);
        LengthMm = MmPerM * _hull.LengthM;

        // Bunched toward blunt ends; a body of given stations has its corners there.
        double half = 0.5 * LengthMm;
        double[] stations = [.. (lure.Stations ?? []).Select(s => MmPerM * s.XM).Where(x => Math.Abs(x) < half)];
        X = [.. Enumerable.Range(0, Along).Select(i => -half * Math.Cos(Math.PI * i / (Along - 1))).Concat(stations).Order()];
        Sections = [.. X.Select(At)];
    }

    /// <summary>Length, mm.</summary>
    public double LengthMm { get; }

    /// <summary>Places of the sections, tail to nose, mm.</summary>
    public IReadOnlyList<double> X { get; }

    /// <summary>Sections there.</summary>
    public IReadOnlyList<TemplateSection> Sections { get; }

    /// <summary>Largest height, mm.</summary>
    public double HeightMm => Sections.Max(s => s.BackMm) - Sections.Min(s => s.BellyMm);

    /// <summary>Largest breadth, mm.</summary>
    public double BreadthMm => 2.0 * Sections.Max(s => s.HalfBreadthMm);

    /// <summary>The section at a place.</summary>
    /// <param name="xMm">Place, mm.</param>
    public TemplateSection At(double xMm)
    {
        HullSection s = _hull.SectionAt(xMm / MmPerM);
        return new(MmPerM * (s.CentreZM + s.HalfHeightM), MmPerM * (s.CentreZM - s.HalfHeightM), MmPerM * s.HalfBreadthM);
    }

    /// <summary>How far a ball inside the body stands out of its surface, mm; 0 when it fits.</summary>
    /// <param name="xMm">Its centre, mm.</param>
    /// <param name="zMm">Its centre over the axis, mm.</param>
    /// <param name="radiusMm">Its radius, mm.</param>
    public double StandsOutMm(double xMm, double zMm, double radiusMm)
    {
        TemplateSection own = At(xMm);
        double toEnd = (0.5 * LengthMm) - Math.Abs(xMm), nearest = double.PositiveInfinity;
        bool inside = toEnd >= 0.0 && zMm <= own.BackMm && zMm >= own.BellyMm;
        for (int i = 0; i < X.Count; i++)
        {
            TemplateSection s = Sections[i];
            for (int k = 0; k <= Around; k++)
            {
                (double sin, double cos) = Math.SinCos(Math.PI * ((double)k / Around - 0.5));
                double y = s.HalfBreadthMm * cos, z = (0.5 * (s.BackMm + s.BellyMm)) + (0.5 * (s.BackMm - s.BellyMm) * sin);
                double dx = X[i] - xMm, dz = z - zMm;
                nearest = Math.Min(nearest, Math.Sqrt((dx * dx) + (y * y) + (dz * dz)));
            }
        }

        return Math.Max(0.0, radiusMm - (inside ? Math.Min(nearest, toEnd) : -nearest));
    }
}

/// <summary>A section of a body on its template.</summary>
/// <param name="BackMm">Back over the axis, mm.</param>
/// <param name="BellyMm">Belly over the axis, mm: below 0 as a rule.</param>
/// <param name="HalfBreadthMm">Half of its breadth, mm.</param>
internal readonly record struct TemplateSection(double BackMm, double BellyMm, double HalfBreadthMm);
