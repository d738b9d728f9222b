using LureSim.Reports.Kit.Drawing;
using OxyPlot;

namespace LureSim.Reports.Kit.Charts;

/// <summary>Where the name of a region of a map stands: in its middle, and only where the whole name lies inside the region.</summary>
internal static class RegionNames
{
    // About the plot of a map, px: enough to tell how many cells a name covers.
    private const double PlotWidth = 1380, PlotHeight = 660, Margin = 6;

    /// <summary>The place of a name; null when the region is too small for it.</summary>
    /// <param name="grid">Grid of the map.</param>
    /// <param name="inside">True for cells of the region.</param>
    /// <param name="name">Name.</param>
    public static DataPoint? Place(StudyGrid grid, Func<int, int, bool> inside, string name)
    {
        int columns = grid.X.Length, rows = grid.Y.Length;
        OxySize size = TextLayout.Measure(name, ChartStyle.TextSize, FontWeights.Normal);
        int wide = Cells((0.5 * size.Width) + Margin, PlotWidth / columns), high = Cells((0.5 * size.Height) + Margin, PlotHeight / rows);
        var widest = new List<(int I, int J)>();
        int most = 0;
        for (int i = wide; i < columns - wide; i++)
        {
            for (int j = high; j < rows - high; j++)
            {
                int room = Room(i, j);
                if (room > most)
                {
                    widest.Clear();
                    most = room;
                }

                if (room >= most)
                {
                    widest.Add((i, j));
                }
            }
        }

        if (widest.Count == 0)
        {
            return null;
        }

        // Of the places with the widest margin the most central.
        double middleI = widest.Average(p => p.I), middleJ = widest.Average(p => p.J);
        (int at, int row) = widest.MinBy(p => Math.Pow(p.I - middleI, 2) + Math.Pow(p.J - middleJ, 2));
        return new DataPoint(grid.X[at], grid.Y[row]);

        // Cells that the name may move to either side and up and down; -1 where it does not fit at all.
        int Room(int i, int j)
        {
            int room = -1;
            while (i - wide - room > 0 && i + wide + room + 1 < columns && j - high - room > 0 && j + high + room + 1 < rows
                && All(i, j, wide + room + 1, high + room + 1))
            {
                room++;
            }

            return room;
        }

        bool All(int i, int j, int dx, int dy)
        {
            for (int a = i - dx; a <= i + dx; a++)
            {
                for (int b = j - dy; b <= j + dy; b++)
                {
                    if (!inside(a, b))
                    {
                        return false;
                    }
                }
            }

            return true;
        }
    }

    private static int Cells(double half, double cell) => (int)Math.Ceiling(Math.Max(0, (half - (0.5 * cell)) / cell));
}
