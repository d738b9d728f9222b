namespace LureSim.Model.Lures;

/// <summary>Size of the immersed part of a hull, as the end corrections and the resistance need it.</summary>
/// <param name="LengthM">Length over which sections touch the water, along the axis, m.</param>
/// <param name="DraftM">Largest draft h, m.</param>
/// <param name="BreadthM">Largest immersed breadth B, m.</param>
/// <param name="SurfaceM2">Wetted surface S, m2.</param>
/// <param name="SectionM2">Largest immersed section, m2.</param>
internal sealed record WettedForm(double LengthM, double DraftM, double BreadthM, double SurfaceM2, double SectionM2)
{
    /// <summary>
    /// f across: length over the height 2 h of hull and mirror image (the surface as a rigid lid). A half-immersed
    /// body of revolution gives its L/D. Held at 1 or more.
    /// </summary>
    public double SlendernessAcross => Math.Max(1.0, LengthM / (2.0 * DraftM));

    /// <summary>f along: length over the mean diameter sqrt(2 h B) of hull and mirror image, 1 or more.</summary>
    public double SlendernessAlong => Math.Max(1.0, LengthM / Math.Sqrt(2.0 * DraftM * BreadthM));

    /// <summary>Measures a floating lure.</summary>
    public static WettedForm Of(FloatingLure f)
    {
        WaterLine w = f.WaterLine;
        double length = 0.0, draft = 0.0, breadth = 0.0, surface = 0.0, section = 0.0;
        for (int i = 0; i < HullForm.Panels; i++)
        {
            HullPanel p = f.Hull.Panel(i, HullForm.Panels);
            double level = w.Level(p.XM);
            SectionCut cut = p.Section.Cut(w.Ny, w.Nz, level);
            if (cut.Wetting == Wetting.Dry)
            {
                continue;
            }

            length += p.WidthM;
            draft = Math.Max(draft, f.DraftM(p.XM));
            double widest = p.Section.RelativeLevel(w.Ny, w.Nz, level) < 0.0
                ? cut.ChordM
                : 2.0 * p.Section.HalfExtentM(w.Nz, -w.Ny);
            breadth = Math.Max(breadth, widest);
            surface += p.Section.WettedPerimeterM(w.Ny, w.Nz, level) * p.SlantM;
            section = Math.Max(section, cut.AreaM2);
        }

        return new WettedForm(length, draft, breadth, surface, section);
    }
}
