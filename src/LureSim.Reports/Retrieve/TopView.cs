using System.Globalization;
using LureSim.Model;
using LureSim.Model.Lures;
using LureSim.Model.Retrieve;
using LureSim.Numerics;
using LureSim.Reports.Kit.Charts;
using LureSim.Reports.Kit.Drawing;
using LureSim.Reports.Kit.Text;
using OxyPlot;
using OxyPlot.Annotations;
using OxyPlot.Axes;

namespace LureSim.Reports.Retrieve;

/// <summary>The path from above with the hull to scale where each twitch has turned it farthest.</summary>
public static class TopView
{
    private const int Height = 900;

    /// <summary>Builds the picture of a few twitches after warm-up.</summary>
    /// <param name="result">Retrieve.</param>
    /// <param name="shown">Units.</param>
    public static Chart Build(RetrieveResult result, Shown shown)
    {
        ArgumentNullException.ThrowIfNull(result);
        ArgumentNullException.ThrowIfNull(shown);
        TwitchWindow window = TwitchWindow.Choose(result, Twitches(result));
        var body = LureBody.Of(result.Setup.Lure);
        ValueList<double> x = result.Series["lure_x_m"], y = result.Series["lure_y_m"];
        PlotModel model = ChartStyle.NewModel(Title(result, shown), Subtitle(result, window, shown.OneFamily));
        // One scale on both axes: a turn of 90 degrees must look like one.
        model.PlotType = PlotType.Cartesian;
        ValueList<double> noseX = result.Series["nose_x_m"], noseY = result.Series["nose_y_m"];
        var chart = new TopPlace(shown.Unit(ShownQuantity.Size, 1.0), x[window.From..window.To]);
        TopFrame frame = TopFrame.Around([chart.X(x), chart.X(noseX)], [chart.Y(y), chart.Y(noseY)], window, chart.Unit.Of(result.Hull.LengthM));
        var panels = new Panels(model, Height, [ChartStyle.NewAxis(AxisPosition.Left, $"To angler's left, {chart.Unit.Name}", frame.Bottom, frame.Top)]);
        model.Axes.Add(ChartStyle.NewAxis(AxisPosition.Bottom, $"Along the cast, {chart.Unit.Name}", frame.Left, frame.Right));
        panels.Line(0, chart.X(x)[window.From..window.To], chart.Y(y)[window.From..window.To], ChartStyle.Grey, 3);
        panels.Line(0, chart.X(noseX)[window.From..window.To], chart.Y(noseY)[window.From..window.To], ChartStyle.Ink, 3);
        for (int k = 0; k < window.Count; k++)
        {
            AddHull(model, result, body, window, k, chart);
        }

        AddRodArrow(model, result, window, frame);
        AddScaleBar(model, frame, chart.Unit);
        panels.Header(0, "Lure to scale",
            new("nose left", Fill(true), Swatch.Box), new("nose right", Fill(false), Swatch.Box),
            new("line tie", ChartStyle.Ink, Swatch.Dot), new("centre's path", ChartStyle.Grey), new("nose's path", ChartStyle.Ink));
        return new Chart("path_top", model, Height: Height);
    }

    // At most 8 hull lengths across, so that the hull can be seen from the back row.
    private static int Twitches(RetrieveResult result)
    {
        double advance = Math.Max(Math.Abs(result.Summary.AdvancePerTwitchM), 1e-3);
        return (int)Math.Clamp(8 * result.Hull.LengthM / advance, 4, 8);
    }

    /// <summary>How it answers, and how wide it walks.</summary>
    /// <param name="result">Retrieve.</param>
    /// <param name="shown">Units.</param>
    internal static string Title(RetrieveResult result, Shown shown)
    {
        RetrieveSummary s = result.Summary;
        return result.Task.IsTow
            ? $"{(s.Pattern == WalkPattern.Tracking ? "Comes straight" : "Does not come straight")}: {Trade.Fixed(s.SheerDeg, 0)}° off its line"
            : $"{Trade.Capital(RetrieveFigures.Name(s.Pattern))}: path {shown.Size(s.WidthM)} wide, at the nose {shown.Size(s.NoseWidthM)}";
    }

    private static string Subtitle(RetrieveResult result, TwitchWindow window, Shown shown)
    {
        string seen = $"From above: {window.Words(result).ToLowerInvariant()}";
        string place = $"starting {shown.Distance(result.Series["lure_x_m"][window.From])} from the resting rod tip";
        return result.Task.IsTow
            ? $"{seen} at {shown.Speed(result.Summary.TowSpeedMS)}, {place}"
            : $"{seen}, {place}; a twitch swings it {Trade.Fixed(result.Summary.HeadingSwingDeg, 0)}°";
    }

    private static OxyColor Fill(bool left) => left ? ChartStyle.Blue : ChartStyle.Orange;

    private static void AddHull(PlotModel model, RetrieveResult result, LureBody body, TwitchWindow window, int k, TopPlace chart)
    {
        (int from, int to) = window.Twitch(result, k);
        ReadOnlySpan<double> heading = result.Series["heading_deg"];
        int far = from;
        for (int i = from; i < to; i++)
        {
            far = Math.Abs(heading[i] - heading[from]) > Math.Abs(heading[far] - heading[from]) ? i : far;
        }

        double x = result.Series["lure_x_m"][far], y = result.Series["lure_y_m"][far];
        double psi = (heading[far] + 180) * Math.PI / 180;
        bool left = Math.Sin(psi) >= 0;
        var outline = new PolygonAnnotation
        {
            YAxisKey = Panels.Key(0),
            Fill = ChartStyle.Faint(Fill(left), 0.75),
            Stroke = ChartStyle.Ink,
            StrokeThickness = 2,
            LineStyle = LineStyle.Solid,
            LineJoin = LineJoin.Round,
            Layer = AnnotationLayer.AboveSeries,
        };
        var pose = new Attitude(0.0, result.Series["pitch_deg"][far] * Math.PI / 180, result.Series["roll_deg"][far] * Math.PI / 180);
        outline.Points.AddRange(body.FromAbove(pose).Select(p => chart.At(LureBody.Place(x, y, psi, p.X, p.Y))));
        model.Annotations.Add(outline);
        Vec3 seen = body.Tie(pose);
        DataPoint tie = chart.At(LureBody.Place(x, y, psi, seen.X, seen.Y));
        model.Annotations.Add(new PointAnnotation
        {
            YAxisKey = Panels.Key(0),
            X = tie.X,
            Y = tie.Y,
            Size = 7,
            Fill = ChartStyle.Ink,
            Shape = MarkerType.Circle,
        });
        if (result.Task.IsTow)
        {
            return;
        }

        DataPoint label = chart.At(LureBody.Place(x, y, psi, -0.72 * result.Hull.LengthM, 0));
        model.Annotations.Add(Words($"{window.First + k + 1}", label, HorizontalAlignment.Center));
    }

    private static void AddRodArrow(PlotModel model, RetrieveResult result, TwitchWindow window, TopFrame frame)
    {
        int mid = (window.From + window.To) / 2;
        double dx = result.Series["tip_x_m"][mid] - result.Series["lure_x_m"][mid];
        double dy = result.Series["tip_y_m"][mid] - result.Series["lure_y_m"][mid];
        double length = 0.12 * (frame.Right - frame.Left) / Math.Sqrt((dx * dx) + (dy * dy));
        var start = new DataPoint(frame.Left + (0.14 * (frame.Right - frame.Left)), frame.Bottom + (0.10 * (frame.Top - frame.Bottom)));
        model.Annotations.Add(new ArrowAnnotation
        {
            YAxisKey = Panels.Key(0),
            StartPoint = start,
            EndPoint = new DataPoint(start.X + (length * dx), start.Y + (length * dy)),
            Color = Looks.Rod.Color,
            StrokeThickness = 5,
            HeadLength = 4,
            HeadWidth = 3,
        });
        model.Annotations.Add(Words(" to the rod", start, HorizontalAlignment.Left));
    }

    private static void AddScaleBar(PlotModel model, TopFrame frame, ShownUnit unit)
    {
        // 1, 2 or 5 times a power of ten, about a sixth of the picture or less.
        double length = RoundBelow((frame.Right - frame.Left) / 6.0);
        double y = frame.Bottom + (0.10 * (frame.Top - frame.Bottom));
        double right = frame.Right - (0.03 * (frame.Right - frame.Left));
        var bar = new PolylineAnnotation
        {
            YAxisKey = Panels.Key(0),
            Color = ChartStyle.Ink,
            StrokeThickness = 7,
            LineStyle = LineStyle.Solid,
        };
        bar.Points.Add(new DataPoint(right - length, y));
        bar.Points.Add(new DataPoint(right, y));
        model.Annotations.Add(bar);
        string text = string.Create(CultureInfo.InvariantCulture, $"{length:0.###} {unit.Name} ");
        model.Annotations.Add(Words(text, new DataPoint(right - length, y), HorizontalAlignment.Right));
    }

    private static double RoundBelow(double most)
    {
        double ten = Math.Pow(10.0, Math.Floor(Math.Log10(most)));
        return most >= 5.0 * ten ? 5.0 * ten : most >= 2.0 * ten ? 2.0 * ten : ten;
    }

    private static TextAnnotation Words(string text, DataPoint at, HorizontalAlignment horizontal) => new()
    {
        YAxisKey = Panels.Key(0),
        Text = text,
        TextPosition = at,
        Stroke = OxyColors.Undefined,
        FontSize = ChartStyle.TextSize,
        TextHorizontalAlignment = horizontal,
        TextVerticalAlignment = VerticalAlignment.Middle,
        Padding = new OxyThickness(2),
        Background = OxyColors.White,
    };
}
