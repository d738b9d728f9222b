using OxyPlot;

namespace LureSim.Reports.Kit.Charts;

/// <summary>Where the number of a contour stands: once per level, where the line is farthest from the edge of the map.</summary>
internal static class ContourLabels
{
    /// <summary>The place of a level's label; null when the level does not occur.</summary>
    /// <param name="grid">Values.</param>
    /// <param name="level">Contour level.</param>
    public static DataPoint? Place(StudyGrid grid, double level)
    {
        DataPoint? best = null;
        double room = -1;
        for (int j = 0; j < grid.Y.Length; j++)
        {
            for (int i = 0; i + 1 < grid.X.Length; i++)
            {
                double a = grid.Values[i, j] - level, b = grid.Values[i + 1, j] - level;
                // False for NaN too.
                if (!(a * b <= 0) || a == b)
                {
                    continue;
                }

                double at = i + (a / (a - b));
                double here = Math.Min(Edge(at, grid.X.Length), Edge(j, grid.Y.Length));
                if (here > room)
                {
                    room = here;
                    best = new DataPoint(grid.X[i] + ((at - i) * (grid.X[i + 1] - grid.X[i])), grid.Y[j]);
                }
            }
        }

        return best;
    }

    // Distance from the nearer end over the whole length, 0 to 0.5.
    private static double Edge(double at, int count) => count < 2 ? 0.5 : Math.Min(at, count - 1 - at) / (count - 1);
}
