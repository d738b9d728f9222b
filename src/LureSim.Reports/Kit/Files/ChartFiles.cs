using LureSim.Reports.Kit.Drawing;

namespace LureSim.Reports.Kit.Files;

/// <summary>Pictures as files.</summary>
public static class ChartFiles
{
    /// <summary>Stages every chart in the wanted formats.</summary>
    /// <param name="folder">Receives the files.</param>
    /// <param name="charts">What to draw.</param>
    /// <param name="format">SVG, PNG or both.</param>
    public static void Add(OutputFolder folder, IReadOnlyList<Chart> charts, PlotFormat format)
    {
        foreach (Chart chart in charts)
        {
            if (format is PlotFormat.Svg or PlotFormat.Both)
            {
                folder.Add(chart.Name + ".svg", ChartRenderer.Svg(chart));
            }

            if (format is PlotFormat.Png or PlotFormat.Both)
            {
                folder.Add(chart.Name + ".png", ChartRenderer.Png(chart));
            }
        }
    }
}
