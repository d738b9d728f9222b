using LureSim.Reports.Kit.Charts;
using LureSim.Reports.Kit.Drawing;
using LureSim.Reports.Kit.Text;
using LureSim.Studies.Cast;
using OxyPlot;
using OxyPlot.Axes;
using OxyPlot.Series;

namespace LureSim.Reports.Cast;

/// <summary>Mean distance over rod power, a line for each mass of the lure; rods that bend too far are hollow.</summary>
public static class PowerTableChart
{
    /// <summary>Builds the picture.</summary>
    /// <param name="table">Lures by rod power.</param>
    public static Chart Build(PowerTable table)
    {
        ArgumentNullException.ThrowIfNull(table);
        double top = table.Cells.SelectMany(r => r).Select(c => c.DistanceMeanM).Where(double.IsFinite).DefaultIfEmpty(1.0).Max();
        PlotModel model = ChartStyle.NewModel("Distance by rod power: the tops are flat", table.Title);
        var panels = new Panels(model, 1000, [ChartStyle.NewAxis(AxisPosition.Left, "Mean of many casts, m", 0.0, 1.12 * top)]);
        model.Axes.Add(Classes());
        for (int i = 0; i < table.LureKg.Count; i++)
        {
            Line(panels, table.Cells[i], ChartStyle.Lines[i % ChartStyle.Lines.Count]);
        }

        panels.Header(0, "Lure with hooks",
            [.. table.LureKg.Select((kg, i) => new HeaderEntry($"{Trade.Fixed(1e3 * kg, 0)} g", ChartStyle.Lines[i % ChartStyle.Lines.Count])), new("bends too far", ChartStyle.Grey, Swatch.Dot)]);
        return new Chart("cast_power", model, Height: 1000);
    }

    private static void Line(Panels panels, IReadOnlyList<PowerCell> cells, OxyColor color)
    {
        int[] known = [.. Enumerable.Range(0, cells.Count).Where(i => double.IsFinite(cells[i].DistanceMeanM))];
        panels.Line(0, [.. known.Select(i => (double)i)], [.. known.Select(i => cells[i].DistanceMeanM)], color, 3);
        Dots(panels, known.Where(i => !cells[i].BendsTooFar), cells, color);
        Dots(panels, known.Where(i => cells[i].BendsTooFar), cells, ChartStyle.Grey);
    }

    private static void Dots(Panels panels, IEnumerable<int> which, IReadOnlyList<PowerCell> cells, OxyColor color)
    {
        var dots = new ScatterSeries { YAxisKey = Panels.Key(0), MarkerType = MarkerType.Circle, MarkerSize = 9, MarkerFill = color };
        dots.Points.AddRange(which.Select(i => new ScatterPoint(i, cells[i].DistanceMeanM)));
        panels.Model.Series.Add(dots);
    }

    private static LinearAxis Classes()
    {
        LinearAxis axis = ChartStyle.NewAxis(AxisPosition.Bottom, "Power of the rod (class loads are guesses)", -0.4, RodClass.All.Count - 0.6);
        axis.MajorStep = 1;
        axis.LabelFormatter = v => v >= 0 && v < RodClass.All.Count && Math.Abs(v - Math.Round(v)) < 1e-9 ? RodClass.All[(int)Math.Round(v)].Name : "";
        return axis;
    }
}
