using System.Globalization;
using LureSim.Model.Lures;
using LureSim.Model.Media;
using LureSim.Model.Trim;
using LureSim.Scenarios;

namespace LureSim.Validation.Lures;

/// <summary>
/// The closed forms of H1, H2, A1 to A3, A5 and T2 again, this time the way a designer meets them: sections written into a scenario file, read, floated and
/// reduced by the program, with the error falling as sections are added. Beams of H3 and H5 have corners and cannot be written as sections, which are ellipses.
/// </summary>
public static class TypedHullChecks
{
    private const double Long = 0.1, Wide = 0.02;

    private static readonly int[] Counts = [9, 17, 33, 65];

    /// <summary>H8.</summary>
    [PublishedCheck]
    public static Check AtRest()
    {
        TrimResult spheroid = Rest(Spheroid(Counts[^1], 0.5));
        var rows = new List<Row>
        {
            new("spheroid of 65 sections: volume of the hull", "cm3", 1e6 * Samples.SpheroidVolume(Long, Wide), 1e6 * spheroid.Rest.HullVolumeM3, 2e-3, Tol.Relative),
            new("its BM across", "mm", 3.75, 1e3 * Bm(spheroid.Rest.GmTransverseM, spheroid), 2e-3, Tol.Relative),
            new("its BM lengthwise", "mm", 93.75, 1e3 * Bm(spheroid.Rest.GmLongitudinalM, spheroid), 3e-3, Tol.Relative),
            new("its trim", "deg", 0.0, spheroid.Rest.TrimRad * 180.0 / Math.PI, 1e-6, Tol.Absolute),
        };
        foreach ((double sg, double draft, double bm) in new[] { (0.2, 0.25407, 0.700317), (0.5, 0.5, 0.424413), (0.8, 0.74593, 0.175079) })
        {
            TrimResult log = Rest(Log(sg));
            rows.Add(new($"log of three sections, specific gravity {sg}: draft / D", "-", draft, log.DraftM / Wide, 2e-5, Tol.Absolute));
            rows.Add(new($"its BM / R, {sg}", "-", bm, Bm(log.Rest.GmTransverseM, log) / (0.5 * Wide), 1e-5, Tol.Absolute));
        }

        return new Check(
            "H8", "Log and spheroid typed in as sections of a scenario", "H1 and H2, through reader, mapping, float and report",
            "A log is exact but for the digits written. Between sections breadth and height run straight: the error of a spheroid falls with their number, see the ladder.", rows,
            new("sections", "volume and BM lengthwise, relative", [.. Counts.Select(n => ((double)n, FloatError(n)))], 1.9, "order 2 of straight pieces, sections bunched at the ends as cosines"));
    }

    /// <summary>A8.</summary>
    [PublishedCheck]
    public static Check AddedMass()
    {
        WalkHull hull = Reduced(Spheroid(Counts[^1], 0.5));
        const double ten = 10.0 * Math.PI / 180.0;
        return new Check(
            "A8", "Added mass and Munk moment of a spheroid typed in as 65 sections", "A1 to A3 and A5, through reader, mapping, float and reduction",
            "Straight pieces between the sections: see the ladder.",
            [
                new("surge added mass", "g", 0.61800, 1e3 * (hull.M11 - hull.MassKg), 3e-3, Tol.Relative),
                new("sway added mass", "g", 9.34782, 1e3 * (hull.M22 - hull.MassKg), 2e-3, Tol.Relative),
                new("Munk moment, 0.5 m/s, 10 deg", "N m", 3.73222e-4, (hull.M22 - hull.M11) * 0.25 * Math.Sin(ten) * Math.Cos(ten), 2e-3, Tol.Relative),
            ],
            new("sections", "sway added mass, relative", [.. Counts.Select(n => ((double)n, Math.Abs((1e3 * (Reduced(Spheroid(n, 0.5)).M22 - hull.MassKg) / 9.34782) - 1.0)))],
                1.8, "order 2 of straight pieces; hull.M22 itself is good to 5e-5"));
    }

    private static double FloatError(int n)
    {
        TrimResult t = Rest(Spheroid(n, 0.5));
        return Math.Max(Math.Abs((t.Rest.HullVolumeM3 / Samples.SpheroidVolume(Long, Wide)) - 1.0), Math.Abs((Bm(t.Rest.GmLongitudinalM, t) / 0.09375) - 1.0));
    }

    // GM = BM + B over G.
    private static double Bm(double gm, TrimResult t) =>
        gm - ((t.Rest.CentreOfBuoyancyZM - t.Rest.CentreOfGravityZM) * Math.Cos(t.Rest.TrimRad)) - ((t.Rest.CentreOfBuoyancyXM - t.Rest.CentreOfGravityXM) * Math.Sin(t.Rest.TrimRad));

    private static TrimResult Rest(LureSpec lure) => Trimming.Run(lure, Samples.Water);

    private static WalkHull Reduced(LureSpec lure) => WalkHullBuilder.Build(lure with { AddedMassFactor = 1.0 }, Samples.Water);

    private static LureSpec Log(double specificGravity) =>
        Typed(specificGravity * Math.PI * 0.25 * Wide * Wide * Long, [(-0.5 * Long, Wide), (0.0, Wide), (0.5 * Long, Wide)]);

    // The mass of the true spheroid; of few sections it floats a little deeper, as such a lure would.
    private static LureSpec Spheroid(int n, double specificGravity) => Typed(
        specificGravity * Samples.SpheroidVolume(Long, Wide),
        [.. Enumerable.Range(0, n).Select(i => Math.PI * i / (n - 1)).Select(a => (-0.5 * Long * Math.Cos(a), Wide * Math.Sin(a)))]);

    private static LureSpec Typed(double volumeM3, (double X, double Breadth)[] sections)
    {
        string Metres(double m) => $"\"{m.ToString("F9", CultureInfo.InvariantCulture)} m\"";
        string list = string.Join(", ", sections.Select(s => $"{{ x = {Metres(s.X)}, breadth = {Metres(s.Breadth)}, height = {Metres(s.Breadth)} }}"));
        string mass = (volumeM3 * Samples.Water.DensityKgM3).ToString("F9", CultureInfo.InvariantCulture);
        ScenarioResult read = ScenarioSource.FromText(
            $"[lure]\nshape = \"stations\"\nmass = \"{mass} kg\"\ntie = {{ x = {Metres(0.5 * Long)}, z = \"0 mm\" }}\nstations = [{list}]\n", asked: Activities.Rest).Resolve();
        return read.IsValid ? read.Setup!.Lure : throw new InvalidOperationException(string.Join("; ", read.Errors));
    }
}
