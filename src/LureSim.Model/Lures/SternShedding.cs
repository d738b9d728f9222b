namespace LureSim.Model.Lures;

/// <summary>
/// The side force of a hull that sheds its cross-flow before its end. In ideal flow the side momentum p(x) = a(x) (v + r x) of every
/// section is handed back over the tapering stern: no side force is left, only the full Munk moment. A real stern lets it go from x0 on:
/// Y = -chi |u| p(x0), N = x0 Y + chi u (sum of p dx behind x0), the difference of Munk's slender-body load with and without the part behind x0
/// (Munk 1924, NACA Rep. 184; Hopkins 1951, NACA RM A51C14: potential load ends at x0; both from memory). a(x) is the section's share
/// of the Munk moment, so its sum over the hull is m22 - m11.
/// </summary>
/// <remarks>
/// Power -chi u [a0 w0^2 - r (b0 v + b1 r)] is never positive as long as a(x) behind x0 is at most 2 a0: the form is negative
/// definite when 4 a0 (sum of a xi dx) is above (sum of a dx)^2, xi the distance behind x0. The builder keeps to that.
/// </remarks>
/// <param name="XM">x0 from the centre of gravity, m: behind it moving ahead, before it moving astern.</param>
/// <param name="AtKgM">chi a0, kg/m.</param>
/// <param name="BehindKg">chi b0, b0 = sum of a dx behind x0, kg.</param>
/// <param name="BehindKgM">chi b1, b1 = sum of a x dx behind x0, kg m.</param>
public sealed record SternShedding(double XM, double AtKgM, double BehindKg, double BehindKgM)
{
    private const int Strips = 64;

    /// <summary>No shedding: ideal flow closes behind the hull.</summary>
    public static SternShedding None { get; } = new(0.0, 0.0, 0.0, 0.0);

    /// <summary>Part of the moment that a step takes at its guess, N m: chi u (b0 v + b1 r).</summary>
    /// <param name="u">Surge, m/s.</param>
    /// <param name="v">Sway, m/s.</param>
    /// <param name="r">Yaw rate, rad/s.</param>
    public double MomentNm(double u, double v, double r) => u * ((BehindKg * v) + (BehindKgM * r));

    /// <summary>Measures a floating lure.</summary>
    /// <param name="f">Lure afloat.</param>
    /// <param name="form">Its wetted form.</param>
    /// <param name="ahead">True: sheds at the tail, moving ahead; false: at the nose, moving astern.</param>
    internal static SternShedding Of(FloatingLure f, WettedForm form, bool ahead)
    {
        double end = (ahead ? -0.5 : 0.5) * f.Hull.LengthM;
        double place = (ahead ? -1.0 : 1.0) * f.Spec.SternPlace * f.Hull.LengthM;
        double width = Math.Abs(end - place) / Strips;
        double chi = f.Spec.SternShedding, a0 = MunkShareKgM(f, form, place);
        double b0 = 0.0, b1 = 0.0;
        for (int i = 0; i < Strips; i++)
        {
            double x = place + ((i + 0.5) / Strips * (end - place));
            double a = width * Math.Min(MunkShareKgM(f, form, x), 2.0 * a0);
            b0 += a;
            b1 += a * f.AheadM(x, 0.0);
        }

        return new SternShedding(f.AheadM(place, 0.0), chi * a0, chi * b0, chi * b1);
    }

    /// <summary>a(x), kg/m: added mass of the section in sway less its share of that in surge (Hopkins' k2 - k1); a translating spheroid
    /// has exactly the same k2 in every section.</summary>
    internal static double MunkShareKgM(FloatingLure f, WettedForm form, double x)
    {
        WaterLine w = f.WaterLine;
        HullSection s = f.Hull.SectionAt(x);
        double half = s.HalfExtentM(w.Ny, w.Nz);
        double t = half == 0.0 ? -1.0 : s.RelativeLevel(w.Ny, w.Nz, w.Level(x));
        if (t <= -1.0)
        {
            return 0.0;
        }

        double sway = f.Spec.AddedMassFactor * Spheroid.Sway(form.SlendernessAcross) * SectionAddedMass.Sway(t) * half * half;
        double surge = Spheroid.Surge(form.SlendernessAlong) * s.Cut(w.Ny, w.Nz, w.Level(x)).AreaM2;
        return f.Water.DensityKgM3 * Math.Max(0.0, sway - surge);
    }
}
