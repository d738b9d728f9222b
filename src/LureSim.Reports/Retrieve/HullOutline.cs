using LureSim.Model.Lures;
using OxyPlot;

namespace LureSim.Reports.Retrieve;

/// <summary>The hull's waterline, placed on the water.</summary>
internal static class HullOutline
{
    /// <summary>Outline as a closed polygon in world axes, m.</summary>
    /// <param name="hull">Hull.</param>
    /// <param name="x">Centre of gravity, m.</param>
    /// <param name="y">Centre of gravity, m.</param>
    /// <param name="psi">Nose from +x, counter-clockwise, rad.</param>
    public static List<DataPoint> Outline(WalkHull hull, double x, double y, double psi)
    {
        int n = hull.OutlineXM.Length;
        var points = new List<DataPoint>(2 * n);
        for (int i = 0; i < n; i++)
        {
            points.Add(Place(x, y, psi, hull.OutlineXM[i], hull.OutlineHalfBreadthM[i]));
        }

        for (int i = n - 1; i >= 0; i--)
        {
            points.Add(Place(x, y, psi, hull.OutlineXM[i], -hull.OutlineHalfBreadthM[i]));
        }

        return points;
    }

    /// <summary>A point of the hull in world axes.</summary>
    /// <param name="x">Centre of gravity, m.</param>
    /// <param name="y">Centre of gravity, m.</param>
    /// <param name="psi">Nose from +x, counter-clockwise, rad.</param>
    /// <param name="along">Ahead of the centre of gravity, m.</param>
    /// <param name="left">To the hull's left, m.</param>
    public static DataPoint Place(double x, double y, double psi, double along, double left)
    {
        (double sin, double cos) = Math.SinCos(psi);
        return new DataPoint(x + (along * cos) - (left * sin), y + (along * sin) + (left * cos));
    }
}
