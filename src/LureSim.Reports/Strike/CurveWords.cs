using LureSim.Model;
using LureSim.Model.Lines;
using LureSim.Reports.Kit.Text;
using LureSim.Studies.Strike;

namespace LureSim.Reports.Strike;

/// <summary>What curves over the distance say in words.</summary>
internal static class CurveWords
{
    /// <summary>Name of a curve's line.</summary>
    /// <param name="curve">Curve.</param>
    public static string Line(StrikeCurve curve) => curve.LineKind switch
    {
        CurveLine.Own => "this line, " + Material(curve.Line.Material),
        CurveLine.Braid => "braid",
        CurveLine.Nylon => "dry nylon",
        CurveLine.SoakedNylon => "soaked nylon",
        _ => "fluorocarbon",
    };

    /// <summary>Name of a curve's rod.</summary>
    /// <param name="curve">Curve.</param>
    /// <param name="own">Curve of the own rod.</param>
    /// <param name="shown">Units.</param>
    public static string Rod(StrikeCurve curve, StrikeCurve own, Shown shown) => curve.RodKind switch
    {
        CurveRod.Own => "this rod",
        CurveRod.Lighter => "a power lighter",
        CurveRod.Heavier => "a power heavier",
        _ => $"{shown.Size(curve.Rod.LengthM - own.Rod.LengthM)} longer",
    };

    /// <summary>How far out the own line and the one that reaches least set the hook.</summary>
    /// <param name="curves">Curves.</param>
    /// <param name="points">Points of the hook that share the load.</param>
    /// <param name="shown">Units.</param>
    public static string Title(StrikeCurves curves, int points, Shown shown)
    {
        string all = StrikeNames.Points(points);
        (StrikeCurve Curve, Ranged? Reach)[] reach = [.. curves.Lines.Select(c => (c, Reach(c, curves.SettingN)))];
        if (reach.All(r => r.Reach is null))
        {
            double most = curves.Lines[0].Points.Max(p => double.IsFinite(p.HookForceN) ? p.HookForceN : 0.0);
            return $"No line sets {all}: {shown.Pull(most)} at most of the {shown.Pull(curves.SettingN)} due";
        }

        (StrikeCurve least, Ranged? leastReach) = reach.MinBy(r => r.Reach?.High ?? 0.0);
        string own = $"{Trade.Capital(Material(curves.Lines[0].Line.Material))} sets {all} {Out(reach[0].Reach, curves, shown)}";
        return least == curves.Lines[0] ? own : $"{own}, {Line(least)} {Out(leastReach, curves, shown)}";
    }

    private static string Out(Ranged? reach, StrikeCurves curves, Shown shown)
    {
        StrikeCurvePoint[] points = [.. curves.Lines[0].Points.Where(p => double.IsFinite(p.HookForceN))];
        return reach is not Ranged r ? "nowhere"
            : r.Low > points[0].DistanceM ? $"from {shown.Range(ShownQuantity.Distance, r.Low, r.High)}"
            : r.High >= points[^1].DistanceM ? $"as far as {shown.Distance(r.High)}" : $"out to {shown.Distance(r.High)}";
    }

    /// <summary>Distances between which the pull sets all points, the ends between computed ones by a straight line, m; null where it never does.</summary>
    /// <param name="curve">Curve.</param>
    /// <param name="settingN">Pull that sets all points, N.</param>
    public static Ranged? Reach(StrikeCurve curve, double settingN)
    {
        ArgumentNullException.ThrowIfNull(curve);
        StrikeCurvePoint[] points = [.. curve.Points.Where(p => double.IsFinite(p.HookForceN))];
        int first = Array.FindIndex(points, p => p.HookForceN >= settingN), last = Array.FindLastIndex(points, p => p.HookForceN >= settingN);
        if (first < 0)
        {
            return null;
        }

        double near = first == 0 ? points[0].DistanceM : Crossing(points[first - 1], points[first], settingN);
        double far = last == points.Length - 1 ? points[^1].DistanceM : Crossing(points[last], points[last + 1], settingN);
        return new(points.MaxBy(p => p.HookForceN)!.DistanceM, near, far);
    }

    private static double Crossing(StrikeCurvePoint a, StrikeCurvePoint b, double levelN) =>
        a.DistanceM + ((levelN - a.HookForceN) / (b.HookForceN - a.HookForceN) * (b.DistanceM - a.DistanceM));

    private static string Material(LineMaterial material) => material switch
    {
        LineMaterial.Braid => "braid",
        LineMaterial.Nylon => "nylon",
        _ => "fluorocarbon",
    };
}
