using LureSim.Model.Lures;
using LureSim.Reports.Kit.Text;
using LureSim.Scenarios.Keys;

namespace LureSim.Reports.Design;

/// <summary>A place to mark on a blank: a hole for ballast, a hanger, the line tie.</summary>
/// <param name="Name">Short name on the drawing, and the end of its name in the SVG.</param>
/// <param name="XMm">From the middle of the length, toward the nose, mm.</param>
/// <param name="ZMm">Over the axis, mm.</param>
/// <param name="RadiusMm">Radius of the circle drawn round it, mm; 0 = a cross alone.</param>
/// <param name="Words">What it is and where.</param>
internal sealed record TemplateMark(string Name, double XMm, double ZMm, double RadiusMm, string Words)
{
    private const double MmPerM = 1000.0, MmPerInch = 25.4, GPerCm3 = 1e-3, GPerKg = 1000.0, KgPerOunce = 0.028349523125;

    // Half the last digit shown.
    private const double Touching = 0.05;

    /// <summary>All marks of a lure: weights, hangers, tie.</summary>
    /// <param name="lure">Lure.</param>
    /// <param name="body">Its outlines.</param>
    public static IReadOnlyList<TemplateMark> Of(LureSpec lure, TemplateBody body) =>
    [
        .. lure.Ballast.Select((b, i) => Weight($"B{i + 1}", b, body)),
        .. lure.Hooks.Select((h, i) => Mark($"H{i + 1}", h.XM, h.ZM, 0.0, $"{(h.HasPoints ? "hanger of hook or skirt" : "ring or swivel")}, {Mass(h.MassKg)}", body)),
        Mark("T", lure.TieXM, lure.TieZM, 0.0, "line tie", body),
    ];

    private static TemplateMark Weight(string name, BallastSpec b, TemplateBody body)
    {
        double radius = MmPerM * b.BallRadiusM, beyond = body.StandsOutMm(MmPerM * b.XM, MmPerM * b.ZM, radius);
        string stuff = b.DensityKgM3 == BodyMaterials.LeadKgM3 ? "of lead" : $"at {Trade.Fixed(GPerCm3 * b.DensityKgM3, 2)} g/cm3";
        string ball = b.MassKg == 0.0 ? "" : $"; circle: a ball of this mass {stuff}, {Size(2.0 * radius)} across"
            + (beyond < Touching ? "" : $", stands out of the body by {Size(beyond)}: make it longer and thinner about the same centre, or move it");
        TemplateMark mark = Mark(name, b.XM, b.ZM, radius, $"ballast, {Mass(b.MassKg)}", body);
        return mark with { Words = mark.Words + ball };
    }

    private static TemplateMark Mark(string name, double x, double z, double radius, string what, TemplateBody body)
    {
        double xMm = MmPerM * x, zMm = MmPerM * z;
        return new(name, xMm, zMm, radius, $"{what}: {Place(xMm, zMm, body)}");
    }

    private static string Place(double x, double z, TemplateBody body)
    {
        double nose = (0.5 * body.LengthMm) - x, tail = x + (0.5 * body.LengthMm);
        if (nose < -Touching || tail < -Touching)
        {
            string end = nose < 0.0 ? $"{Size(-nose)} ahead of the nose" : $"{Size(-tail)} behind the tail";
            return $"{end}, {Against(z, "over the axis", "on the axis", "under the axis")}";
        }

        TemplateSection s = body.At(x);
        string along = nose < Touching ? "at the nose" : tail < Touching ? "at the tail" : $"{Size(nose)} from the nose";
        return s.BackMm - s.BellyMm < Touching
            ? $"{along}, {Against(z, "over the axis", "on the axis", "under the axis")}"
            : $"{along}, {Against(z - s.BackMm, "over the back", "on the back", "under the back")}, {Against(z - s.BellyMm, "over the belly", "on the belly", "under the belly")}";
    }

    private static string Against(double mm, string over, string on, string under) =>
        Math.Abs(mm) < Touching ? on : $"{Size(Math.Abs(mm))} {(mm > 0.0 ? over : under)}";

    /// <summary>A length for the workshop: "42.0 mm (1.65 in)".</summary>
    /// <param name="mm">Length, mm.</param>
    internal static string Size(double mm) => $"{Trade.Fixed(mm, 1)} mm ({Trade.Fixed(mm / MmPerInch, 2)} in)";

    /// <summary>A mass for the workshop: "2.50 g (0.088 oz)".</summary>
    /// <param name="kg">Mass, kg.</param>
    internal static string Mass(double kg) => $"{Trade.Fixed(GPerKg * kg, 2)} g ({Trade.Fixed(kg / KgPerOunce, 3)} oz)";
}
