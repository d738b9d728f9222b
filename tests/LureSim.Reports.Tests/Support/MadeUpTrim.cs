using LureSim.Model.Lures;
using LureSim.Model.Trim;

namespace LureSim.Reports.Tests.Support;

/// <summary>A lure at rest drawn by hand: an ellipse, nose up by 0.1 rad, that rights itself up to 120 degrees.</summary>
internal static class MadeUpTrim
{
    public static TrimResult Result() => At(0.1);

    /// <summary>The same, level.</summary>
    public static TrimResult Level() => At(0.0);

    private static TrimResult At(double trim)
    {
        var rest = new FloatReport(
            trim, 0, 0.004, 0.005, [-0.03, 0, 0.03], [0.012, 0.01, 0.008], 0.018, 1.8e-5, 2.9e-5, -0.004, -0.002, -0.003, -0.001, 0.0035, 0.04, 1.2e-3,
            0.002, 11.8, 0.007, 0.23, 0.52, []);
        double[] along = [.. Enumerable.Range(0, 21).Select(i => Math.PI * i / 20)];
        double[] x = [.. along.Select(a => -0.055 * Math.Cos(a))], half = [.. along.Select(a => 0.01 * Math.Sin(a))];
        double Seen(double at, double z) => -0.002 + z + (trim * at);
        var profile = new HullProfile(
            x, [.. x.Zip(half, Seen)], x, [.. x.Zip(half, (at, z) => Seen(at, -z))],
            [
                new("centre of gravity", -0.004, -0.0045), new("centre of buoyancy", -0.003, -0.003), new("line tie", 0.054, 0.0035),
                new("ballast", -0.03, -0.01), new("hook", 0.02, -0.012), new("hook", -0.05, -0.015),
            ]);
        double[] heel = [.. Enumerable.Range(0, 37).Select(i => Math.PI * i / 36)];
        var righting = new RightingCurve(heel, [.. heel.Select(h => 0.003 * Math.Sin(1.5 * h))]);
        return new(new LureSpec(LureShape.Cigar, 0.11, 0.0205, 0.0205, 0.018, 0.051, 0, [], []), rest, righting, profile, 0.012, 0.008, 0.05, 9.5);
    }
}
