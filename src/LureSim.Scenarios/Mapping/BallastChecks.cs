using LureSim.Model.Lures;
using LureSim.Scenarios.Keys;

namespace LureSim.Scenarios.Mapping;

/// <summary>Whether the ballast of a solid body fits into it where it is said to sit. The most compact form of a weight is a ball; the most room that a weight
/// centred at a place can have is the body as far to either side as its nearer end.</summary>
internal static class BallastChecks
{
    private const int Slices = 40, Directions = 180;

    /// <summary>Faults for what cannot be, notes for what would stand out of the body.</summary>
    public static void Run(MapContext c, LureSpec lure)
    {
        if (lure.Build.Kind != LureBuild.Solid)
        {
            return;
        }

        HullForm hull = HullShape.Create(lure);
        foreach (BallastSpec b in lure.Ballast.Where(b => b.MassKg > 0.0))
        {
            string what = $"{MapContext.Show(LureKeys.Mass, b.MassKg)} at x = {MapContext.Show(LureKeys.TieX, b.XM)}, z = {MapContext.Show(LureKeys.TieZ, b.ZM)}";
            double room = RoomM3(hull, b.XM), needs = b.MassKg / b.DensityKgM3;
            if (needs > room)
            {
                c.Fault(LureKeys.Ballast, $"{what} takes {1e6 * needs:G3} cm3, but the body has only {1e6 * room:G3} cm3 around that place");
                continue;
            }

            double depth = DepthM(hull.SectionAt(b.XM), b.ZM), radius = b.BallRadiusM;
            if (radius > depth)
            {
                c.Note(LureKeys.Ballast, string.Concat(
                    $"{what} is a ball {MapContext.Show(LureKeys.TieX, 2.0 * radius)} thick, but only ",
                    depth > 0.0 ? $"{MapContext.Show(LureKeys.TieX, 2.0 * depth)} fit inside there" : "its place is no longer inside the body",
                    ": its hole breaks through the surface; a rod along the body, several weights or a heavier metal fit better"));
            }
        }
    }

    private static double RoomM3(HullForm hull, double x)
    {
        double reach = (0.5 * hull.LengthM) - Math.Abs(x), sum = 0.0;
        for (int i = 0; i < Slices; i++)
        {
            sum += hull.SectionAt(x + (reach * (((2.0 * i) + 1.0 - Slices) / Slices))).AreaM2;
        }

        return Math.Max(0.0, reach) * 2.0 * sum / Slices;
    }

    // Distance from (0, z) to the nearest point of the section's ellipse; below 0 outside of it.
    private static double DepthM(HullSection s, double z)
    {
        double up = z - s.CentreZM, nearest = double.PositiveInfinity;
        for (int i = 0; i <= Directions; i++)
        {
            (double sin, double cos) = Math.SinCos(Math.PI * i / Directions);
            double y = s.HalfBreadthM * sin, off = (s.HalfHeightM * cos) - up;
            nearest = Math.Min(nearest, Math.Sqrt((y * y) + (off * off)));
        }

        return Math.Abs(up) < s.HalfHeightM ? nearest : -nearest;
    }
}
