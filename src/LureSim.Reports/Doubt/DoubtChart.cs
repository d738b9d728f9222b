using LureSim.Reports.Kit.Charts;
using LureSim.Reports.Kit.Drawing;
using LureSim.Reports.Kit.Text;
using LureSim.Studies.Doubt;
using OxyPlot;
using OxyPlot.Axes;
using OxyPlot.Series;

namespace LureSim.Reports.Doubt;

/// <summary>Which guess moves a figure most: for each, the figure's mean with the guess in its lower and in its upper third.</summary>
public static class DoubtChart
{
    private const int MostRows = 12;
    private const double RowHeight = 62;
    private const double Rest = 300;

    /// <summary>Builds the chart of one set-up.</summary>
    /// <param name="report">Study.</param>
    /// <param name="figure">Figure to show.</param>
    /// <param name="labels">Label of each guess, in the report's order.</param>
    public static Chart Build(DoubtReport report, HeadlineFigure figure, IReadOnlyList<string> labels)
    {
        ArgumentNullException.ThrowIfNull(report);
        ArgumentNullException.ThrowIfNull(figure);
        Band band = report[figure.Key];
        string Show(double value) => Trade.Digits(figure.Scale * value);
        string subtitle = $"{band.Count} runs over all guesses: median {Show(band.P50)} {figure.Unit}, "
            + $"8 of 10 between {Show(band.P10)} and {Show(band.P90)} {figure.Unit}";
        int f = report.Bands.TakeWhile(b => b.Figure != figure.Key).Count();
        return Build(figure, subtitle, [.. labels.Select((l, g) => (l, report.Effects[g][f]))], report.ChanceRho);
    }

    /// <summary>Builds the chart.</summary>
    /// <param name="figure">Figure to show.</param>
    /// <param name="subtitle">The sentence to take home.</param>
    /// <param name="guesses">Each guess with what it does to the figure, in any order.</param>
    /// <param name="chance">Magnitude of a rank correlation below which it may be chance.</param>
    public static Chart Build(HeadlineFigure figure, string subtitle, IReadOnlyList<(string Label, GuessEffect Effect)> guesses, double chance)
    {
        ArgumentNullException.ThrowIfNull(figure);
        ArgumentNullException.ThrowIfNull(guesses);
        (string Label, GuessEffect Effect)[] rows = [.. guesses.OrderByDescending(r => r.Effect.Weight).Take(MostRows)];
        int height = (int)(Rest + (RowHeight * rows.Length));
        PlotModel model = ChartStyle.NewModel($"Which guess moves the {figure.Words} most", subtitle);
        // Long labels push the plot to the right; the title keeps to the middle of the picture.
        model.TitleHorizontalAlignment = TitleHorizontalAlignment.CenteredWithinView;
        double reach = 1.08 * figure.Scale * rows.SelectMany(r => new[] { Math.Abs(r.Effect.LowShift), Math.Abs(r.Effect.HighShift) }).DefaultIfEmpty(0.0).Max();
        reach = reach > 0.0 ? reach : 1.0;
        var panels = new Panels(model, height, [RowAxis([.. rows.Select(r => r.Label)])]);
        model.Axes.Add(ChartStyle.NewAxis(AxisPosition.Bottom, $"Shift of the mean {figure.Words}, {figure.Unit}", -reach, reach));
        for (int i = 0; i < rows.Length; i++)
        {
            bool told = rows[i].Effect.Weight > chance;
            int row = rows.Length - 1 - i;
            Bar(model, row, row + 0.38, figure.Scale * rows[i].Effect.LowShift, Shade(ChartStyle.Blue, told));
            Bar(model, row - 0.38, row, figure.Scale * rows[i].Effect.HighShift, Shade(ChartStyle.Orange, told));
        }

        panels.Header(
            0,
            "Pale: may be chance",
            new HeaderEntry("lower third of guess", ChartStyle.Blue, Swatch.Box),
            new HeaderEntry("upper third", ChartStyle.Orange, Swatch.Box));
        return new Chart("doubt_" + Stem(figure.Key), model, Height: height);
    }

    private static string Stem(string key) => key.EndsWith("_per_s", StringComparison.Ordinal) ? key[..^6] : key[..key.LastIndexOf('_')];

    // The first row stands on top, where the axis ends.
    private static LinearAxis RowAxis(string[] labels)
    {
        LinearAxis axis = ChartStyle.NewAxis(AxisPosition.Left, "", -0.6, labels.Length - 0.4);
        axis.MajorStep = 1;
        axis.LabelFormatter = v => v >= 0 && v < labels.Length ? labels[labels.Length - 1 - (int)Math.Round(v)] : "";
        axis.MajorGridlineStyle = LineStyle.None;
        return axis;
    }

    private static OxyColor Shade(OxyColor color, bool told) => told ? color : ChartStyle.Faint(color, 0.3);

    private static void Bar(PlotModel model, double from, double to, double length, OxyColor color)
    {
        var bar = new RectangleBarSeries { YAxisKey = Panels.Key(0), FillColor = color, StrokeThickness = 0 };
        bar.Items.Add(new RectangleBarItem(Math.Min(0, length), from, Math.Max(0, length), to));
        model.Series.Add(bar);
    }
}
