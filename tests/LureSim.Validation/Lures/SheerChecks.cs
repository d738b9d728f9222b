using LureSim.Model.Lines;
using LureSim.Model.Lures;

namespace LureSim.Validation.Lures;

/// <summary>Steady towing of the reduced hull.</summary>
public static class SheerChecks
{
    /// <summary>T2.</summary>
    [PublishedCheck]
    public static Check FiniteSheerAngle()
    {
        (double f, double deg)[] table = [(4, 27.4204), (5, 24.0086), (6, 21.1828)];
        List<Row> rows = [.. table.Select(p => new Row($"sheer angle, L/D {p.f}", "deg", p.deg, SheerDeg(p.f), 0.12, Tol.Absolute))];
        rows.AddRange(table.Select(p => new Row(
            $"moment turns away from straight ahead, L/D {p.f}", "sign", 1.0, Math.Sign(YawMoment(Hull(p.f), 0.01)), 0.0, Tol.Absolute)));
        foreach (double chi in new[] { 0.5, 1.0 })
        {
            // The stern's own Munk share for a(x) = a (1 - s^2): a0 = 0.51 a, 0.0405 a L behind x0 = -0.35 L; the whole hull 2/3 a L.
            double straight = chi * ((0.51 * 0.85) + 0.0405) / (2.0 / 3.0);
            double tan = Math.Tan(24.0086 * Math.PI / 180.0) * (1.0 - straight);
            rows.Add(new($"sheer angle, L/D 5, {chi} of the stern's cross-flow shed", "deg", Math.Atan(tan) * 180.0 / Math.PI, SheerDeg(5.0, chi), 0.12, Tol.Absolute));
        }

        rows.Add(new("shed share above which it tows straight, L/D 5", "-", (2.0 / 3.0) / ((0.51 * 0.85) + 0.0405), Neutral(5.0), 2e-3, Tol.Relative));
        return new Check(
            "T2", "Sheer angle of a finless half-immersed spheroid towed by its nose",
            "derived: Munk moment against cross-flow drag, tan b = (4/3)(k2-k1)(D/x_p)/Cd with Cd = 1, x_p = L/2; shed at the stern: SternShedding's equation on the spheroid's a(x)",
            "The walk's 21 equal strips overstate the lateral area of a spheroid by up to 0.5 %: 0.5 % of tan b is 0.12 deg at most.", rows);
    }

    // Cd is given so that Cd times the finite-length factor of the reduction is the 1 of the derivation.
    private static WalkHull Hull(double f, double chi = 0.0) => WalkHullBuilder.Build(
        Samples.HalfSpheroid(0.1, 0.1 / f) with { CrossFlowCd = 1.0 / FiniteLength.Factor(f), SternShedding = chi }, Samples.Water);

    // Yaw moment about G at drift b and unit speed: Munk from the mass matrix, cross-flow drag by strips, and the tow,
    // whose lateral part balances that drag at the tie. Positive turns the nose away from the line.
    private static double YawMoment(WalkHull hull, double b)
    {
        double u = Math.Cos(b);
        double v = Math.Sin(b);
        double lateral = 0.0, turning = 0.0;
        for (int i = 0; i < hull.StripXM.Length; i++)
        {
            double force = hull.StripDragKgM[i] * v * v;
            lateral += force;
            turning += force * hull.StripXM[i];
        }

        SternShedding stern = hull.ShedAhead;
        double shed = stern.AtKgM * u * v;
        turning += (shed * stern.XM) - stern.MomentNm(u, v, 0.0);
        return ((hull.M22 - hull.M11) * u * v) + turning - (hull.TieArmM * (lateral + shed));
    }

    private static double Neutral(double f) => Samples.Root(chi => -YawMoment(Hull(f, chi), 1e-6), 0.1, 3.0);

    private static double SheerDeg(double f, double chi = 0.0)
    {
        WalkHull hull = Hull(f, chi);
        return Samples.Root(b => -YawMoment(hull, b), 0.01, 1.5) * 180.0 / Math.PI;
    }
}
