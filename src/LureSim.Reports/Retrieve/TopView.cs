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
    public static Chart Build(RetrieveResult result)
    {
        TwitchWindow window = TwitchWindow.Choose(result, Twitches(result));
        var body = LureBody.Of(result.Setup.Lure);
        ValueList<double> x = result.Series["lure_x_m"], y = result.Series["lure_y_m"];
        PlotModel model = ChartStyle.NewModel(Title(result, window), Subtitle(result));
        // One scale on both axes: a turn of 90 degrees must look like one.
        model.PlotType = PlotType.Cartesian;
        ValueList<double> noseX = result.Series["nose_x_m"], noseY = result.Series["nose_y_m"];
        Frame frame = Frame.Around([x, noseX], [y, noseY], window, result.Hull.LengthM);
        var panels = new Panels(model, Height, [ChartStyle.NewAxis(AxisPosition.Left, "To angler's left, m", frame.Bottom, frame.Top)]);
        model.Axes.Add(ChartStyle.NewAxis(AxisPosition.Bottom, "From the resting rod tip, m", frame.Left, frame.Right));
        panels.Line(0, x[window.From..window.To], y[window.From..window.To], ChartStyle.Grey, 3);
        panels.Line(0, noseX[window.From..window.To], noseY[window.From..window.To], ChartStyle.Green, 3);
        for (int k = 0; k < window.Count; k++)
        {
            AddHull(model, result, body, window, k);
        }

        AddRodArrow(model, result, window, frame);
        AddScaleBar(model, frame);
        panels.Header(0, "Lure to scale",
            new("nose left", Fill(true), Swatch.Box), new("nose right", Fill(false), Swatch.Box),
            new("line tie", ChartStyle.Ink, Swatch.Dot), new("centre's path", ChartStyle.Grey), new("nose's path", ChartStyle.Green));
        return new Chart("path_top", model, Height: Height);
    }

    // At most 8 hull lengths across, so that the hull can be seen from the back row.
    private static int Twitches(RetrieveResult result)
    {
        double advance = Math.Max(Math.Abs(result.Summary.AdvancePerTwitchM), 1e-3);
        return (int)Math.Clamp(8 * result.Hull.LengthM / advance, 4, 8);
    }

    private static string Title(RetrieveResult result, TwitchWindow window) => result.Task.IsTow ? "Path from above: steady pull"
        : window.Count == 0 ? "Path from above: no complete twitch"
        : $"Path from above: twitches {window.First + 1} to {window.First + window.Count}";

    private static string Subtitle(RetrieveResult result)
    {
        RetrieveSummary s = result.Summary;
        return result.Task.IsTow
            ? $"{Trade.Fixed(s.TowSpeedMS, 2)} m/s: {(s.Pattern == WalkPattern.Tracking ? "comes straight" : "does not come straight")}, {Trade.Fixed(s.SheerDeg, 0)}° off its line"
            : $"{Trade.Capital(RetrieveFigures.Name(s.Pattern))}: swings {Trade.Fixed(s.HeadingSwingDeg, 0)}°; path {Trade.Length(s.WidthM)} wide, "
            + $"at the nose {Trade.Length(s.NoseWidthM)}";
    }

    private static OxyColor Fill(bool left) => left ? ChartStyle.Blue : ChartStyle.Orange;

    private static void AddHull(PlotModel model, RetrieveResult result, LureBody body, TwitchWindow window, int k)
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
        outline.Points.AddRange(body.FromAbove(pose).Select(p => LureBody.Place(x, y, psi, p.X, p.Y)));
        model.Annotations.Add(outline);
        Vec3 seen = body.Tie(pose);
        DataPoint tie = LureBody.Place(x, y, psi, seen.X, seen.Y);
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

        DataPoint label = LureBody.Place(x, y, psi, -0.72 * result.Hull.LengthM, 0);
        model.Annotations.Add(Words($"{window.First + k + 1}", label, HorizontalAlignment.Center));
    }

    private static void AddRodArrow(PlotModel model, RetrieveResult result, TwitchWindow window, Frame frame)
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
            Color = ChartStyle.Vermilion,
            StrokeThickness = 5,
            HeadLength = 4,
            HeadWidth = 3,
        });
        model.Annotations.Add(Words(" to the rod", start, HorizontalAlignment.Left));
    }

    private static void AddScaleBar(PlotModel model, Frame frame)
    {
        double length = frame.Right - frame.Left > 1.2 ? 0.20 : 0.10;
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
        string text = $"{Trade.Fixed(100 * length, 0)} cm = {Trade.Digits(Trade.Inches(length))} in ";
        model.Annotations.Add(Words(text, new DataPoint(right - length, y), HorizontalAlignment.Right));
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

    /// <summary>What the picture covers, m.</summary>
    private readonly record struct Frame(double Left, double Right, double Bottom, double Top)
    {
        public static Frame Around(ReadOnlySpan<ValueList<double>> xs, ReadOnlySpan<ValueList<double>> ys, TwitchWindow w, double hull)
        {
            (double left, double right) = Range(xs, w);
            (double bottom, double top) = Range(ys, w);

            // Room for the hull's ends, and below for arrow and scale bar.
            double width = right - left + hull, height = Math.Max(top - bottom + (2 * hull), 0.40 * width);
            double middle = 0.5 * (top + bottom);
            return new Frame(left - (0.5 * hull), right + (0.5 * hull), middle - (0.58 * height), middle + (0.42 * height));
        }

        private static (double Low, double High) Range(ReadOnlySpan<ValueList<double>> channels, TwitchWindow w)
        {
            (double low, double high) = (double.MaxValue, double.MinValue);
            foreach (ValueList<double> values in channels)
            {
                foreach (double v in values[w.From..w.To])
                {
                    (low, high) = (Math.Min(low, v), Math.Max(high, v));
                }
            }

            return (low, high);
        }
    }
}
