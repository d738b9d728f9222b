using LureSim.Reports.Kit.Charts;
using OxyPlot;
using OxyPlot.Series;

namespace LureSim.Reports.Design;

/// <summary>The border of a map where its number is 0: the contour again, in a colour of its own, or steps along the cells where an axis is counted.</summary>
internal static class MapBorder
{
    private const double Width = 6.0;

    /// <summary>The border.</summary>
    /// <param name="grid">Values.</param>
    /// <param name="isCounted">Whether an axis goes in whole steps.</param>
    public static XYAxisSeries Of(StudyGrid grid, bool isCounted)
    {
        ArgumentNullException.ThrowIfNull(grid);
        return isCounted ? Steps(grid) : new ContourSeries
        {
            ColumnCoordinates = grid.X,
            RowCoordinates = grid.Y,
            Data = grid.Values,
            ContourLevels = [0.0],
            YAxisKey = Panels.Key(0),
            Color = ChartStyle.Vermilion,
            StrokeThickness = Width,
            LineStyle = LineStyle.Solid,
            FontSize = 0,
            LabelBackground = OxyColors.Undefined,
        };
    }

    // Between two neighbours of which one lies below 0.
    private static LineSeries Steps(StudyGrid grid)
    {
        var line = new LineSeries { YAxisKey = Panels.Key(0), Color = ChartStyle.Vermilion, StrokeThickness = Width, LineStyle = LineStyle.Solid };
        double dx = 0.5 * (grid.X[1] - grid.X[0]), dy = 0.5 * (grid.Y[1] - grid.Y[0]);
        for (int i = 0; i < grid.X.Length; i++)
        {
            for (int j = 0; j < grid.Y.Length; j++)
            {
                (double x, double y) = (grid.X[i], grid.Y[j]);
                if (i + 1 < grid.X.Length && Parts(grid.Values[i, j], grid.Values[i + 1, j]))
                {
                    Add(x + dx, y - dy, x + dx, y + dy);
                }

                if (j + 1 < grid.Y.Length && Parts(grid.Values[i, j], grid.Values[i, j + 1]))
                {
                    Add(x - dx, y + dy, x + dx, y + dy);
                }
            }
        }

        return line;

        void Add(double x0, double y0, double x1, double y1) => line.Points.AddRange([new(x0, y0), new(x1, y1), DataPoint.Undefined]);
    }

    private static bool Parts(double a, double b) => double.IsFinite(a) && double.IsFinite(b) && a < 0.0 != b < 0.0;
}
