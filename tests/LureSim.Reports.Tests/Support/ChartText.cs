using System.Globalization;
using LureSim.Reports.Kit.Charts;
using LureSim.Reports.Kit.Drawing;
using LureSim.Reports.Strike;
using OxyPlot;
using OxyPlot.Annotations;
using OxyPlot.Axes;
using OxyPlot.Series;

namespace LureSim.Reports.Tests.Support;

/// <summary>A chart reduced to what a reader takes from it, numbers to four digits: reviewed in a diff, where a picture is not, and free of
/// the round-off of the machine that made it.</summary>
internal static class ChartText
{
    private const double Zero = 1e-9;
    private const double Edge = 1e99;

    public static string Of(Chart chart)
    {
        // Axes take their ends, and headers their words, when drawn.
        ChartRenderer.Svg(chart);
        PlotModel model = chart.Model;
        string[] lines =
        [
            $"{chart.Name}, {chart.Width} x {chart.Height}", $"title: {OneLine(model.Title)}", $"subtitle: {OneLine(model.Subtitle)}",
            .. model.Axes.Select(Axis), .. model.Series.Select(Series), .. Annotations(model), .. model.Legends.Select(l => $"legend: {l.LegendTitle}"),
        ];
        return string.Join('\n', lines.Select(l => l.TrimEnd())) + "\n";
    }

    /// <summary>The first line that differs, as stored and as it is now; null where none does.</summary>
    public static string? Difference(string stored, string actual)
    {
        string[] was = stored.Split('\n'), now = actual.Split('\n');
        for (int i = 0; i < Math.Max(was.Length, now.Length); i++)
        {
            string a = i < was.Length ? was[i] : "(nothing)", b = i < now.Length ? now[i] : "(nothing)";
            if (a != b)
            {
                return $"line {i + 1}\n  stored: {a}\n  now:    {b}";
            }
        }

        return null;
    }

    private static string Axis(Axis axis)
    {
        string labels = axis switch
        {
            CategoryAxis c => string.Join(" | ", c.Labels.Select(OneLine)),

            // Names of rows: what the formatter gives at whole numbers.
            LinearAxis { LabelFormatter: { } format } => string.Join(
                " | ", Enumerable.Range((int)Math.Ceiling(axis.ActualMinimum), (int)Math.Floor(axis.ActualMaximum) + 1).Select(i => format(i))),
            _ => "",
        };
        return $"axis {axis.Position} {axis.Key}: \"{axis.Title}\" {Number(axis.ActualMinimum)} to {Number(axis.ActualMaximum)}{(labels.Length > 0 ? ": " + labels : "")}";
    }

    private static string Series(Series series) => series switch
    {
        AreaSeries s => Named(s, $"area {s.ActualFill}", s.Points) + "; to " + Points(s.Points2),
        LineSeries s => Named(s, $"line {s.Color} {s.LineStyle}", s.Points),
        ScatterSeries s => Named(s, $"dots {s.MarkerType} {s.MarkerFill}", s.Points.Select(p => new DataPoint(p.X, p.Y))),
        RectangleBarSeries s => Named(s, $"bars {s.FillColor}", s.Items.SelectMany(b => new DataPoint[] { new(b.X0, b.Y0), new(b.X1, b.Y1) })),
        HeatMapSeries s => Named(s, $"shade, x {Ends(s.X0, s.X1)}, y {Ends(s.Y0, s.Y1)}", Grid(s.Data)),
        ContourSeries s => Named(
            s, $"contours at {string.Join(' ', s.ContourLevels.Select(Number))}, x {Ends(s.ColumnCoordinates[0], s.ColumnCoordinates[^1])}, "
            + $"y {Ends(s.RowCoordinates[0], s.RowCoordinates[^1])}", Grid(s.Data)),
        _ => throw new NotSupportedException($"a {series.GetType().Name} has no stored form yet"),
    };

    private static string Named(XYAxisSeries series, string kind, IEnumerable<DataPoint> points) =>
        $"{series.YAxisKey} {kind}{(series.Title is { } title ? $" \"{title}\"" : "")}: {Points(points)}";

    // x = index of the column, y = value.
    private static IEnumerable<DataPoint> Grid(double[,] values)
    {
        for (int i = 0; i < values.GetLength(0); i++)
        {
            for (int j = 0; j < values.GetLength(1); j++)
            {
                yield return new(i, values[i, j]);
            }
        }
    }

    private static string Points(IEnumerable<DataPoint> points)
    {
        DataPoint[] all = [.. points], shown = [.. all.Where(p => double.IsFinite(p.X) && double.IsFinite(p.Y))];
        string gaps = shown.Length < all.Length ? $" and {all.Length - shown.Length} left out" : "";
        return shown.Length == 0 ? $"0 points{gaps}"
            : all.Length == 1 ? $"1 point ({Place(shown[0])})"
            : $"{shown.Length} points{gaps}, ({Place(shown[0])}) to ({Place(shown[^1])}), x {Span(shown.Select(p => p.X))}, y {Span(shown.Select(p => p.Y))}";
    }

    // Shapes that follow each other in one colour are told together: a map is hundreds of cells.
    private static IEnumerable<string> Annotations(PlotModel model)
    {
        var shapes = new List<DataPoint>();
        string last = "";
        int count = 0;
        foreach (Annotation annotation in model.Annotations)
        {
            (string kind, IEnumerable<DataPoint> corners) = Shape(annotation);
            if (count > 0 && kind != last)
            {
                yield return Told();
            }

            if (kind.Length == 0)
            {
                yield return Words(annotation);
                continue;
            }

            last = kind;
            count++;
            shapes.AddRange(corners);
        }

        if (count > 0)
        {
            yield return Told();
        }

        string Told()
        {
            string line = $"{last}, {count}: {Points(shapes)}";
            (count, last) = (0, "");
            shapes.Clear();
            return line;
        }
    }

    private static (string Kind, IEnumerable<DataPoint> Corners) Shape(Annotation annotation) => annotation switch
    {
        RectangleAnnotation a => ($"{a.YAxisKey} boxes {a.Fill}", [new(Kept(a.MinimumX), Kept(a.MinimumY)), new(Kept(a.MaximumX), Kept(a.MaximumY))]),
        PointAnnotation a => ($"{a.YAxisKey} marks {a.Fill}", [new(a.X, a.Y)]),
        PolygonAnnotation a => ($"{a.YAxisKey} outlines {a.Fill}", a.Points),
        PolylineAnnotation a => ($"{a.YAxisKey} strokes {a.Color}", a.Points),
        ArrowAnnotation a when string.IsNullOrEmpty(a.Text) => ($"{a.YAxisKey} arrows {a.Color}", [a.StartPoint, a.EndPoint]),
        _ => ("", []),
    };

    private static string Words(Annotation annotation) => annotation switch
    {
        PanelHeader a => $"{a.YAxisKey} header: \"{a.Shown}\" {string.Join(", ", a.Entries.Select(e => $"{e.Kind}{Dashes(e.Style)} {e.Color} \"{e.Label}\""))}",
        TextAnnotation a => $"{a.YAxisKey} words at ({Place(a.TextPosition)}): {OneLine(a.Text)}",
        ArrowAnnotation a => $"{a.YAxisKey} arrow ({Place(a.StartPoint)}) to ({Place(a.EndPoint)}): {OneLine(a.Text)}",
        LineAnnotation { Type: LineAnnotationType.Horizontal } a => $"{a.YAxisKey} level {a.Color}: {Number(a.Y)} {OneLine(a.Text)}",
        LineAnnotation { Type: LineAnnotationType.Vertical } a => $"{a.YAxisKey} plumb line {a.Color}: {Number(a.X)} {OneLine(a.Text)}",
        RodScene a => string.Join('\n', a.Moments.Select(m => $"{a.YAxisKey} {m.Name}: rod {Points(Pairs(m.RodX, m.RodZ))}; line {Points(Pairs(m.LineX, m.LineZ))}").Append($"{a.YAxisKey} words: {a.HookWords}")),
        MomentDots a => $"{a.YAxisKey} moments at {string.Join("; ", a.Points.Select(p => $"({Place(p.At)}) {p.Words}".TrimEnd()))}",
        EndNames a => $"{a.YAxisKey} names of ends: {string.Join("; ", a.Names.Select(n => $"{n.Name} {n.Color} ({Place(n.End)})"))}",
        _ => throw new NotSupportedException($"a {annotation.GetType().Name} has no stored form yet"),
    };

    private static IEnumerable<DataPoint> Pairs(IEnumerable<double> x, IEnumerable<double> y) => x.Zip(y, (a, b) => new DataPoint(a, b));

    private static string Dashes(LineStyle style) => style == LineStyle.Solid ? "" : " " + style;

    // A box without an end reaches the edge of the picture; a huge number keeps it among the corners.
    private static double Kept(double end) => Math.Clamp(end, -Edge, Edge);

    private static string OneLine(string? text) => (text ?? "").ReplaceLineEndings(" / ");

    private static string Place(DataPoint p) => $"{Number(p.X)}, {Number(p.Y)}";

    private static string Ends(double from, double to) => $"{Number(from)} to {Number(to)}";

    private static string Span(IEnumerable<double> values) => Ends(values.Min(), values.Max());

    // Round-off about zero has no digits worth storing, and a made-up 0.12345 must not hang between two roundings.
    private static string Number(double value) => Math.Abs(value) < Zero ? "0"
        : Math.Abs(value) >= Edge ? (value < 0 ? "-edge" : "edge")
        : (value * (1 + Zero)).ToString("G4", CultureInfo.InvariantCulture);
}
