using LureSim.Reports.Kit.Drawing;
using OxyPlot;
using OxyPlot.Axes;
using OxyPlot.Series;

namespace LureSim.Reports.Kit.Charts;

/// <summary>
/// A picture as a slide, 16 to 9, to be read from the back of a room: the letters keep their size in pixels and the picture shrinks around them, so that the
/// smallest letters are a thirtieth of its height. Changes the chart's model.
/// </summary>
public static class SlideFit
{
    /// <summary>Size of a slide, px of the chart: 16 to 9, and not higher than thirty of the smallest letters.</summary>
    public const int Width = 1376, Height = 774;

    /// <summary>Width of a slide as a pixel picture, px.</summary>
    public const int PixelWidth = 1920;

    // More panels than this are too low to be read.
    private const int MostPanels = 3;
    private const double Margin = 80.0;

    /// <summary>The chart as a slide.</summary>
    /// <param name="chart">Finished chart; its model is laid out anew.</param>
    public static Chart Of(Chart chart)
    {
        ArgumentNullException.ThrowIfNull(chart);
        PlotModel model = chart.Model;
        model.Title = TextFit.Wrap(model.Title, ChartStyle.TitleSize, FontWeights.Bold, Width - Margin, 2);
        model.Subtitle = TextFit.Wrap(model.Subtitle, ChartStyle.TextSize, FontWeights.Normal, Width - Margin, 2);
        Panels.Refit(model, Width, Height);
        foreach (LinearAxis axis in Upright(model))
        {
            Shorten(axis);
        }

        return chart with { Width = Width, Height = Height };
    }

    /// <summary>The chart as a slide, or as two with half of its panels each where it has too many.</summary>
    /// <param name="build">Builds the chart; called once for each slide.</param>
    public static IReadOnlyList<Chart> InParts(Func<Chart> build)
    {
        ArgumentNullException.ThrowIfNull(build);
        Chart chart = build();
        string[] keys = [.. Upright(chart.Model).Select(a => a.Key)];
        if (keys.Length <= MostPanels)
        {
            return [Of(chart)];
        }

        int half = (keys.Length + 1) / 2;
        return [Of(Part(chart, keys[half..]) with { Name = $"{chart.Name}_1" }), Of(Part(build(), keys[..half]) with { Name = $"{chart.Name}_2" })];
    }

    private static Chart Part(Chart chart, string[] without)
    {
        PlotModel model = chart.Model;
        Remove(model.Series, s => s is XYAxisSeries series && without.Contains(series.YAxisKey));
        Remove(model.Annotations, a => without.Contains(a.YAxisKey));
        Remove(model.Axes, a => without.Contains(a.Key));
        return chart;
    }

    private static void Remove<T>(ElementCollection<T> from, Func<T, bool> which)
        where T : Element
    {
        foreach (T element in from.Where(which).ToArray())
        {
            from.Remove(element);
        }
    }

    private static IEnumerable<LinearAxis> Upright(PlotModel model) => model.Axes.OfType<LinearAxis>().Where(a => a.Position == AxisPosition.Left);

    // Beside a low panel there is room for the unit alone; what is drawn stands over it.
    private static void Shorten(LinearAxis axis)
    {
        double room = (axis.EndPosition - axis.StartPosition) * Height;
        int comma = axis.Title?.LastIndexOf(", ", StringComparison.Ordinal) ?? -1;
        if (comma > 0 && TextLayout.Measure(axis.Title, ChartStyle.TextSize, FontWeights.Normal).Width > 0.7 * room)
        {
            axis.Title = axis.Title![(comma + 2)..];
        }
    }
}
