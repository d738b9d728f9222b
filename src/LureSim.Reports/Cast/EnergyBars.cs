using LureSim.Model.Cast;
using LureSim.Reports.Kit.Charts;
using LureSim.Reports.Kit.Drawing;
using LureSim.Reports.Kit.Text;
using OxyPlot;
using OxyPlot.Annotations;
using OxyPlot.Axes;
using OxyPlot.Series;

namespace LureSim.Reports.Cast;

/// <summary>Where the work of the hands went.</summary>
public static class EnergyBars
{
    private const int Height = 900;

    /// <summary>Builds the picture.</summary>
    /// <param name="result">Cast.</param>
    public static Chart Build(CastResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        CastEnergy e = result.Energy;
        (string Label, double J, OxyColor Color)[] rows =
        [
            ("lure: air takes", e.LureAirJ, ChartStyle.Blue),
            ("lure: left at the splash", e.LureJ, ChartStyle.Blue),
            ("line: air takes", e.LineAirJ, ChartStyle.Green),
            ("line: moved and stretched", e.LineJ, ChartStyle.Green),
            ("reel: brakes, friction, pick-up", e.BrakesJ + e.PickUpJ, ChartStyle.Orange),
            ("reel: spool still turning", e.SpoolJ, ChartStyle.Orange),
            ("rod and hands: left in motion", e.RodJ, ChartStyle.Vermilion),
            ("rod: air takes", e.RodAirJ, ChartStyle.Vermilion),
            ("rod: own damping", e.RodLossJ, ChartStyle.Vermilion),
        ];
        double most = rows.Max(r => r.J), least = Math.Min(0.0, rows.Min(r => r.J));
        PlotModel model = ChartStyle.NewModel("Where the work of the hands goes",
            $"{Trade.Fixed(e.HandsJ, 0)} J from the hands, braking taken off; {Trade.Fixed(100.0 * (e.LureJ + e.LureAirJ) / e.HandsJ, 0)} % of it flies with the lure");
        model.TitleHorizontalAlignment = TitleHorizontalAlignment.CenteredWithinView;
        var panels = new Panels(model, Height, [RowAxis([.. rows.Select(r => r.Label)])]);
        model.Axes.Add(ChartStyle.NewAxis(AxisPosition.Bottom, "Energy, J", 1.1 * least, 1.28 * most));
        for (int i = 0; i < rows.Length; i++)
        {
            int row = rows.Length - 1 - i;
            var bar = new RectangleBarSeries { YAxisKey = Panels.Key(0), FillColor = rows[i].Color, StrokeThickness = 0 };
            bar.Items.Add(new RectangleBarItem(Math.Min(0.0, rows[i].J), row - 0.35, Math.Max(0.0, rows[i].J), row + 0.35));
            model.Series.Add(bar);
            Amount(model, row, rows[i].J, e.HandsJ, most);
        }

        panels.Header(0, $"{Trade.Fixed(1e6 * Math.Abs(e.Residual), 0)} millionths open",
            new("lure", ChartStyle.Blue, Swatch.Box), new("line", ChartStyle.Green, Swatch.Box), new("reel", ChartStyle.Orange, Swatch.Box),
            new("rod and hands", ChartStyle.Vermilion, Swatch.Box));
        return new Chart("cast_energy", model, Height: Height);
    }

    private static void Amount(PlotModel model, int row, double joule, double hands, double most) => model.Annotations.Add(new TextAnnotation
    {
        YAxisKey = Panels.Key(0),
        Text = $"{Trade.Fixed(joule, 1)} J, {Trade.Fixed(100.0 * joule / hands, 0)} %",
        TextPosition = new DataPoint(Math.Max(0.0, joule) + (0.01 * most), row),
        Stroke = OxyColors.Undefined,
        FontSize = ChartStyle.TextSize,
        TextHorizontalAlignment = HorizontalAlignment.Left,
        TextVerticalAlignment = VerticalAlignment.Middle,
    });

    // The first row stands on top, where the axis ends.
    private static LinearAxis RowAxis(string[] labels)
    {
        LinearAxis axis = ChartStyle.NewAxis(AxisPosition.Left, "", -0.6, labels.Length - 0.4);
        axis.MajorStep = 1;
        axis.LabelFormatter = v => v >= 0 && v < labels.Length ? labels[labels.Length - 1 - (int)Math.Round(v)] : "";
        axis.MajorGridlineStyle = LineStyle.None;
        return axis;
    }
}
