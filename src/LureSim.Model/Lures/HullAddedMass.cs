namespace LureSim.Model.Lures;

/// <summary>
/// Added mass of a floating hull about its centre of gravity. Sway and yaw by strips (rigid-lid value of each section
/// times the lure's surface factor), heave and pitch by strips at high frequency; end corrections from the spheroid of
/// the same slenderness (exact over strip theory: k2 in sway and heave, J in yaw and pitch); surge k1 rho V.
/// </summary>
/// <param name="SurgeKg">a11.</param>
/// <param name="SwayKg">a22.</param>
/// <param name="SwayYawKgM">a23 = sum of section value times distance ahead of G.</param>
/// <param name="YawKgM2">a33.</param>
/// <param name="HeaveKg">Heave.</param>
/// <param name="PitchKgM2">Pitch.</param>
internal sealed record HullAddedMass(
    double SurgeKg, double SwayKg, double SwayYawKgM, double YawKgM2, double HeaveKg, double PitchKgM2)
{
    /// <summary>Adds up the strips of a floating lure.</summary>
    public static HullAddedMass Of(FloatingLure f, WettedForm form)
    {
        Moments sway = default;
        Moments heave = default;
        WaterLine w = f.WaterLine;
        for (int i = 0; i < HullForm.Panels; i++)
        {
            HullPanel p = f.Hull.Panel(i, HullForm.Panels);
            double t = p.Section.RelativeLevel(w.Ny, w.Nz, w.Level(p.XM));
            if (t <= -1.0)
            {
                continue;
            }

            double halfHeight = p.Section.HalfExtentM(w.Ny, w.Nz);
            double halfBreadth = p.Section.HalfExtentM(w.Nz, -w.Ny);
            double ahead = f.AheadM(p.XM, 0.0);
            sway.Add(ahead, SectionAddedMass.Sway(t) * halfHeight * halfHeight * p.WidthM);
            heave.Add(ahead, SectionAddedMass.Heave(t) * halfBreadth * halfBreadth * p.WidthM);
        }

        double rho = f.Water.DensityKgM3;
        double across = form.SlendernessAcross;
        double k2 = Spheroid.Sway(across);
        double j = Spheroid.YawOverStrips(across);
        double lid = f.Spec.AddedMassFactor * rho;
        return new HullAddedMass(
            Spheroid.Surge(form.SlendernessAlong) * rho * f.State.Immersion.VolumeM3,
            lid * k2 * sway.M0,
            lid * k2 * sway.M1,
            lid * sway.Yaw(k2, j),
            rho * k2 * heave.M0,
            rho * heave.Yaw(k2, j));
    }

    private struct Moments
    {
        private double _m2;

        public double M0 { get; private set; }

        public double M1 { get; private set; }

        public void Add(double x, double mass)
        {
            M0 += mass;
            M1 += mass * x;
            _m2 += mass * x * x;
        }

        // J belongs to turning about the centre of the strips; the way of that centre about G is sway, with k2.
        public readonly double Yaw(double k2, double j) => M0 == 0.0
            ? 0.0
            : (j * (_m2 - (M1 * M1 / M0))) + (k2 * M1 * M1 / M0);
    }
}
