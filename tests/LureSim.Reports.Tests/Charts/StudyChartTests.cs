using LureSim.Reports.Kit.Charts;
using LureSim.Reports.Kit.Drawing;
using LureSim.Reports.Tests.Support;
using OxyPlot.Series;

namespace LureSim.Reports.Tests.Charts;

public sealed class StudyChartTests
{
    private static readonly double[] X = [0.6, 1.0, 1.4, 1.8, 2.2, 2.6, 3.0];

    private static readonly StudyClass[] Classes =
    [
        new("alternating", ChartStyle.Green), new("one-sided", ChartStyle.Orange), new("tracking", ChartStyle.Sky),
    ];

    private static StudyLine Line(string label, double scale) => new(
        label, X, Map(x => scale * x * Math.Exp(-x)), Map(x => 0.8 * scale * x * Math.Exp(-x)), Map(x => 1.25 * scale * x * Math.Exp(-x)));

    private static double[] Map(Func<double, double> f) => Array.ConvertAll(X, x => f(x));

    private static StudyGrid Grid(Func<double, double, double> f)
    {
        double[] x = [.. Enumerable.Range(0, 18).Select(i => 0.6 + (0.2 * i))], y = [.. Enumerable.Range(0, 12).Select(i => 5.0 + (2 * i))];
        var values = new double[x.Length, y.Length];
        for (int i = 0; i < x.Length; i++)
        {
            for (int j = 0; j < y.Length; j++)
            {
                values[i, j] = f(x[i], y[j]);
            }
        }

        return new StudyGrid(x, y, values);
    }

    [Fact]
    public void Lines_with_bands_and_classes_render()
    {
        Chart chart = StudyLines.Build("study_lines", "Which rhythms walk", "Walks from 0.9 to 2.4 twitches a second", "Rhythm, twitches per second",
            [
                new("Glide", "Glide per twitch, cm", [Line("braid", 30), Line("nylon", 22)]),
                new("Wrist", "Torque, N m", [new("torque", X, Map(x => 0.4 * x * x))]),
            ],
            [new("one-sided", 0.6, 0.9), new("alternating", 0.9, 2.4), new("tracking", 2.4, 3.0)], Classes);
        Pictures.Render(chart);
        Assert.Equal(2, chart.Model.Series.OfType<AreaSeries>().Count());
    }

    [Fact]
    public void Lines_with_error_bars_and_gaps_render()
    {
        double[] y = Map(x => x), low = Map(x => x - 0.2), high = Map(x => x + 0.3);
        y[2] = double.NaN;
        Chart chart = StudyLines.Build("study_bars", "Distance against rod length", "Bars: 10 to 90 % of casts", "Rod length, ft",
            [new("Distance", "m", [new("cast", X, y, low, high)], FromZero: false, Doubt: DoubtStyle.Bars)]);
        Pictures.Render(chart);
        Assert.Empty(chart.Model.Series.OfType<AreaSeries>());
    }

    [Fact]
    public void A_map_of_classes_renders_and_leaves_empty_cells_white()
    {
        StudyGrid cells = Grid((x, y) => x * y < 12 ? -1 : x * y > 60 ? 2 : y > 20 ? 1 : 0);
        Chart chart = StudyMap.Classes("study_map", "Rhythm and stroke", "Alternating below the edge", "Rhythm, twitches per second",
            "Stroke, cm", cells, Classes);
        Pictures.Render(chart);
        int filled = cells.Values.Cast<double>().Count(v => v >= 0);
        Assert.Equal(filled, chart.Model.Annotations.OfType<OxyPlot.Annotations.RectangleAnnotation>().Count());
    }

    [Fact]
    public void A_shaded_map_renders() => Pictures.Render(StudyMap.Shade(
        "study_shade", "Ballast and rhythm", "Darker is wider", "Rhythm, twitches per second", "Ballast from the middle, mm",
        Grid((x, y) => x < 1 && y > 20 ? double.NaN : y * Math.Exp(-x)), "Glide per twitch, cm"));

    [Fact]
    public void A_contour_is_numbered_on_its_line_away_from_the_edge()
    {
        StudyGrid grid = Grid((x, y) => x);
        OxyPlot.DataPoint at = ContourLabels.Place(grid, 1.25)!.Value;
        Assert.Equal(1.25, at.X, 12);
        Assert.InRange(at.Y, grid.Y[3], grid.Y[^4]);
        Assert.Null(ContourLabels.Place(grid, 99));
        Assert.Null(ContourLabels.Place(Grid((_, _) => double.NaN), 1));
    }
}
