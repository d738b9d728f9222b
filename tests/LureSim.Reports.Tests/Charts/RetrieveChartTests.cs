using LureSim.Model.Retrieve;
using LureSim.Reports.Charts.Retrieve;
using LureSim.Reports.Drawing;
using LureSim.Reports.Tests.Support;
using OxyPlot.Annotations;
using OxyPlot.Axes;

namespace LureSim.Reports.Tests.Charts;

public sealed class RetrieveChartTests
{
    [Fact]
    public void Every_picture_of_a_run_renders_in_both_formats()
    {
        string? dump = Environment.GetEnvironmentVariable("LURESIM_PICTURES");
        foreach (Chart chart in RetrieveCharts.All(MadeUpRetrieve.Result()))
        {
            byte[] svg = ChartRenderer.Svg(chart), png = ChartRenderer.Png(chart);
            Assert.True(svg.Length > 5000 && png.Length > 5000, chart.Name);
            if (dump is not null)
            {
                File.WriteAllBytes(Path.Combine(dump, chart.Name + ".svg"), svg);
                File.WriteAllBytes(Path.Combine(dump, chart.Name + ".png"), png);
            }
        }
    }
}
