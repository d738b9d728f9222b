using LureSim.Reports.Kit.Charts;
using LureSim.Studies.Doubt;
using OxyPlot;
using OxyPlot.Axes;
using OxyPlot.Series;

namespace LureSim.Reports.Doubt;

/// <summary>A row of a chart of guesses.</summary>
/// <param name="Label">What the guess is, with its range.</param>
/// <param name="Low">Shift of the figure at the low end, in the figure's own unit; NaN for none.</param>
/// <param name="High">The same at the high end.</param>
/// <param name="Together">Length of the line for the guess beside the others, NaN for none.</param>
/// <param name="LowColor">Colour of the bar of the low end.</param>
/// <param name="HighColor">Colour of the bar of the high end.</param>
internal sealed record GuessBar(string Label, double Low, double High, double Together, OxyColor LowColor, OxyColor HighColor);

/// <summary>Bars of what guesses do to a figure, the first row on top.</summary>
internal static class GuessBars
{
    /// <summary>Most rows of a chart.</summary>
    public const int MostRows = 12;

    private const double RowHeight = 62, Rest = 300;

    /// <summary>Height of the picture, px.</summary>
    /// <param name="rows">Number of rows.</param>
    public static int Height(int rows) => (int)(Rest + (RowHeight * rows));

    /// <summary>Name of the picture of a figure.</summary>
    /// <param name="figure">Figure that is moved.</param>
    public static string Name(HeadlineFigure figure) => "doubt_" + Stem(figure.Key);

    /// <summary>Draws them.</summary>
    /// <param name="figure">Figure that is moved.</param>
    /// <param name="title">What is shown.</param>
    /// <param name="subtitle">The sentence to take home.</param>
    /// <param name="axis">What the axis counts, without unit.</param>
    /// <param name="rows">Rows, at most <see cref="MostRows"/>.</param>
    /// <param name="header">What the picture's header says.</param>
    /// <param name="entries">Legend.</param>
    public static PlotModel Build(
        HeadlineFigure figure, string title, string subtitle, string axis, IReadOnlyList<GuessBar> rows, string header, params HeaderEntry[] entries)
    {
        PlotModel model = ChartStyle.NewModel(title, subtitle);
        // Long labels push the plot to the right; the title keeps to the middle of the picture.
        model.TitleHorizontalAlignment = TitleHorizontalAlignment.CenteredWithinView;
        double reach = 1.08 * figure.Scale * rows
            .SelectMany(r => new[] { Math.Abs(r.Low), Math.Abs(r.High), 0.5 * r.Together }).Where(double.IsFinite).DefaultIfEmpty(0.0).Max();
        reach = reach > 0.0 ? reach : 1.0;
        var panels = new Panels(model, Height(rows.Count), [RowAxis([.. rows.Select(r => r.Label)])]);
        model.Axes.Add(ChartStyle.NewAxis(AxisPosition.Bottom, $"{axis}, {figure.Unit}", -reach, reach));
        for (int i = 0; i < rows.Count; i++)
        {
            GuessBar bar = rows[i];
            int row = rows.Count - 1 - i;
            Box(model, row, row + 0.38, 0.0, figure.Scale * bar.Low, bar.LowColor);
            Box(model, row - 0.38, row, 0.0, figure.Scale * bar.High, bar.HighColor);
            Box(model, row - 0.035, row + 0.035, -0.5 * figure.Scale * bar.Together, 0.5 * figure.Scale * bar.Together, ChartStyle.Ink);
        }

        panels.Header(0, header, entries);
        return model;
    }

    private static string Stem(string key)
    {
        string? rate = Array.Find(["_per_s", "_m_s"], unit => key.EndsWith(unit, StringComparison.Ordinal));
        return rate is null ? key[..key.LastIndexOf('_')] : key[..^rate.Length];
    }

    private static LinearAxis RowAxis(string[] labels)
    {
        LinearAxis axis = ChartStyle.NewAxis(AxisPosition.Left, "", -0.6, labels.Length - 0.4);
        axis.MajorStep = 1;
        axis.LabelFormatter = v => v >= 0 && v < labels.Length ? labels[labels.Length - 1 - (int)Math.Round(v)] : "";
        axis.MajorGridlineStyle = LineStyle.None;
        return axis;
    }

    private static void Box(PlotModel model, double from, double to, double left, double right, OxyColor color)
    {
        if (!double.IsFinite(left + right))
        {
            return;
        }

        var bar = new RectangleBarSeries { YAxisKey = Panels.Key(0), FillColor = color, StrokeThickness = 0 };
        bar.Items.Add(new RectangleBarItem(Math.Min(left, right), from, Math.Max(left, right), to));
        model.Series.Add(bar);
    }
}
