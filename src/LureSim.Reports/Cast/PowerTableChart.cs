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
    /// <param name="shown">Units; none = either family.</param>
    public static Chart Build(PowerTable table, Shown? shown = null)
    {
        ArgumentNullException.ThrowIfNull(table);
        shown ??= Shown.Both;
        double[] known = [.. table.Cells.SelectMany(r => r).Select(c => c.DistanceMeanM).Where(double.IsFinite).DefaultIfEmpty(1.0)];
        double range = Math.Max(known.Max() - known.Min(), 0.1 * known.Max());
        ShownUnit unit = shown.Unit(ShownQuantity.Distance, known.Max());
        PlotModel model = ChartStyle.NewModel(Title(table, shown), $"{table.Title}; loads of the classes are guesses");
        // Not from zero: what is asked is where each line is highest.
        var panels = new Panels(model, ChartStyle.Height,
            [ChartStyle.NewAxis(AxisPosition.Left, $"Mean of many casts, {unit.Name}", unit.Of(known.Min() - (0.12 * range)), unit.Of(known.Max() + (0.12 * range)))]);
        model.Axes.Add(Classes());
        for (int i = 0; i < table.LureKg.Count; i++)
        {
            Line(panels, table.Cells[i], Looks.Series(i), unit);
        }

        panels.Header(0, "Lure with hooks",
            [.. table.LureKg.Select((kg, i) => new HeaderEntry(shown.OneFamily.Mass(kg), Looks.Series(i), marked: true)), new("rod bends too far", ChartStyle.Grey, Swatch.Ring)]);
        return new Chart("cast_power", model);
    }

    // The lightest and the heaviest lure that have a best rod.
    private static string Title(PowerTable table, Shown shown)
    {
        int[] rows = [.. Enumerable.Range(0, table.LureKg.Count).Where(i => table.Best(i) is not null)];
        if (rows.Length == 0)
        {
            return "No rod casts these lures without bending too far";
        }

        string Of(int row) => $"{shown.Mass(table.LureKg[row])} flies farthest off a {RodClass.All[table.Best(row)!.Value].Name} rod";
        string more = rows.Length > 1 ? $", {Of(rows[^1])}" : "";
        return $"{Of(rows[0])}{more}; {NextClass(table, rows, shown)}";
    }

    private static string NextClass(PowerTable table, int[] rows, Shown shown)
    {
        double lost = rows.SelectMany(r => new[] { -1, 1 }.Select(d => Lost(table.Cells[r], table.Best(r)!.Value, d))).Where(double.IsFinite).DefaultIfEmpty(0.0).Max();
        return $"the next class costs at most {shown.Distance(Math.Max(0.0, lost))}";
    }

    private static double Lost(IReadOnlyList<PowerCell> cells, int best, int step) =>
        best + step >= 0 && best + step < cells.Count ? cells[best].DistanceMeanM - cells[best + step].DistanceMeanM : double.NaN;

    private static void Line(Panels panels, IReadOnlyList<PowerCell> cells, Look look, ShownUnit unit)
    {
        double[] at = [.. Enumerable.Range(0, cells.Count).Where(i => double.IsFinite(cells[i].DistanceMeanM)).Select(i => (double)i)];
        double[] distance = [.. at.Select(i => unit.Of(cells[(int)i].DistanceMeanM))];
        panels.Line(0, at, distance, look, 3.5);
        panels.Dots(0, at, distance, look, 9);
        double[] soft = [.. at.Where(i => cells[(int)i].BendsTooFar)];
        panels.Model.Series.Add(Rings(soft, [.. soft.Select(i => unit.Of(cells[(int)i].DistanceMeanM))]));
    }

    private static ScatterSeries Rings(double[] x, double[] y)
    {
        var rings = new ScatterSeries
        {
            YAxisKey = Panels.Key(0),
            MarkerType = MarkerType.Circle,
            MarkerSize = 11,
            MarkerFill = OxyColors.White,
            MarkerStroke = ChartStyle.Grey,
            MarkerStrokeThickness = 3,
        };
        rings.Points.AddRange(x.Zip(y, (a, b) => new ScatterPoint(a, b)));
        return rings;
    }

    private static LinearAxis Classes()
    {
        LinearAxis axis = ChartStyle.NewAxis(AxisPosition.Bottom, "Power of the rod", -0.4, RodClass.All.Count - 0.6);
        axis.MajorStep = 1;
        axis.LabelFormatter = v => v >= 0 && v < RodClass.All.Count && Math.Abs(v - Math.Round(v)) < 1e-9 ? RodClass.All[(int)Math.Round(v)].Name : "";
        return axis;
    }
}
