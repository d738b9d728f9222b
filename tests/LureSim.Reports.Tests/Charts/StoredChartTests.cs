using System.Reflection;
using LureSim.Model.Reels;
using LureSim.Reports.Cast;
using LureSim.Reports.Kit.Drawing;
using LureSim.Reports.Kit.Text;
using LureSim.Reports.Retrieve;
using LureSim.Reports.Strike;
using LureSim.Reports.Tests.Support;
using OxyPlot;
using OxyPlot.Axes;
using OxyPlot.Series;

namespace LureSim.Reports.Tests.Charts;

/// <summary>Every chart in reduced form against the one stored beside this test. LURESIM_ACCEPT=1 writes them anew.</summary>
public sealed class StoredChartTests
{
    public static TheoryData<string> Names => [.. StoredCharts.All.Select(c => c.Name)];

    [Theory]
    [MemberData(nameof(Names))]
    public void A_chart_shows_what_is_stored(string name)
    {
        string actual = ChartText.Of(StoredCharts.All.Single(c => c.Name == name).Build());
        string? difference = ChartText.Difference(Expected.Stored($"Stored/{name}.txt", actual), actual);
        Assert.True(difference is null, $"{name}, {difference}");
    }

    [Fact]
    public void Every_builder_of_charts_has_a_stored_form()
    {
        // A list of charts is no builder of its own; the next test looks into it. What makes a chart of a chart fits it to a slide.
        Type[] builders = [.. typeof(Chart).Assembly.GetTypes().Where(t => t
            .GetMethods(BindingFlags.Static | BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.DeclaredOnly)
            .Any(m => m.ReturnType == typeof(Chart) && !m.Name.StartsWith('<') && m.GetParameters().All(p => p.ParameterType != typeof(Chart))))];
        Assert.True(builders.Length >= 18, "too few builders found");
        Assert.Empty(builders.Except(StoredCharts.All.Select(c => c.Builder)).Select(t => t.Name));
    }

    [Fact]
    public void Every_chart_of_a_command_has_a_stored_form_and_none_is_left_over()
    {
        string[] stored = Expected.Names("Stored");
        Chart[] charts = [.. RetrieveCharts.All(MadeUpRetrieve.Result(), Shown.Both), .. CastCharts.All(new(MadeUpCast.Result(ReelKind.Fixed), [])), .. CastCharts.All(new(MadeUpCast.Result(ReelKind.Revolving), MadeUpCast.Brakes)), .. StrikeCharts.All(MadeUpStrike.Report(), Shown.Both)];
        Assert.Empty(charts.Select(c => c.Name).Except(stored));
        Assert.Equal(StoredCharts.All.Select(c => c.Name).Order(StringComparer.Ordinal), stored.Order(StringComparer.Ordinal));
    }

    // What the stored forms are worth: one per cent of any line, dot or bar is seen, and so is a letter.
    [Theory]
    [MemberData(nameof(Names))]
    public void A_series_moved_by_one_per_cent_or_another_title_of_an_axis_is_seen(string name)
    {
        Func<Chart> build = StoredCharts.All.Single(c => c.Name == name).Build;
        string before = ChartText.Of(build());
        Assert.Null(ChartText.Difference(before, ChartText.Of(build())));
        for (int i = build().Model.Series.Count - 1; i >= 0; i--)
        {
            Chart chart = build();
            if (Move(chart.Model.Series[i]))
            {
                Assert.NotNull(ChartText.Difference(before, ChartText.Of(chart)));
            }
        }

        Chart worded = build();
        Axis axis = worded.Model.Axes.First(a => a.Position == AxisPosition.Bottom);
        string was = axis.Title;
        axis.Title = was + "x";
        string? seen = ChartText.Difference(before, ChartText.Of(worded));
        Assert.Contains($"\"{was}\"", seen, StringComparison.Ordinal);
        Assert.Contains($"\"{was}x\"", seen, StringComparison.Ordinal);
    }

    // False where there is nothing but zeros to move.
    private static bool Move(Series series)
    {
        const double more = 1.01;
        switch (series)
        {
            case LineSeries s:
                DataPoint[] points = [.. s.Points];
                s.Points.Clear();
                s.Points.AddRange(points.Select(p => new DataPoint(p.X, more * p.Y)));
                return points.Any(p => Math.Abs(p.Y) > 1e-6);
            case ScatterSeries s:
                ScatterPoint[] dots = [.. s.Points];
                s.Points.Clear();
                s.Points.AddRange(dots.Select(p => new ScatterPoint(more * p.X, p.Y)));
                return dots.Any(p => Math.Abs(p.X) > 1e-6);
            case RectangleBarSeries s:
                bool any = s.Items.Any(b => b.X0 != b.X1);
                s.Items.ToList().ForEach(b => (b.X0, b.X1) = (more * b.X0, more * b.X1));
                return any;
            case HeatMapSeries s:
                s.Data = Times(s.Data, more);
                return true;
            case ContourSeries s:
                s.Data = Times(s.Data, more);
                return true;
            default:
                throw new NotSupportedException($"a {series.GetType().Name} cannot be moved yet");
        }
    }

    private static double[,] Times(double[,] values, double by)
    {
        var product = (double[,])values.Clone();
        for (int i = 0; i < product.Length; i++)
        {
            product[i / product.GetLength(1), i % product.GetLength(1)] *= by;
        }

        return product;
    }
}
