using LureSim.Model;
using LureSim.Model.Lures;
using LureSim.Model.Retrieve;
using LureSim.Reports.Kit.Charts;
using LureSim.Reports.Kit.Drawing;
using LureSim.Reports.Kit.Text;
using OxyPlot;
using OxyPlot.Annotations;
using OxyPlot.Axes;

namespace LureSim.Reports.Retrieve;

/// <summary>Pitch, roll, heading off the line and height of the nose over a few twitches; of the planar hull, the last two.</summary>
public static class AttitudeTime
{
    private const int Twitches = 4;

    // Less than this is drawn as a flat line, not blown up.
    private const double LeastDeg = 10.0, LeastM = 0.005;

    /// <summary>Builds the picture.</summary>
    /// <param name="result">Retrieve.</param>
    /// <param name="shown">Units.</param>
    public static Chart Build(RetrieveResult result, Shown shown)
    {
        ArgumentNullException.ThrowIfNull(result);
        ArgumentNullException.ThrowIfNull(shown);
        TwitchWindow window = TwitchWindow.ChooseOrWhole(result, Twitches);
        bool moves = result.Task.Hull != HullFreedom.Planar;
        var words = AttitudeWords.Of(result, window.From, window.To);
        Row[] rows = [.. moves ? Tilt(result, words) : [], .. Walk(result, words, NoseUnit(result, window, shown))];
        int height = moves ? 1300 : 850;
        ValueList<double> time = result.Series["time_s"];
        PlotModel model = ChartStyle.NewModel(moves ? words.OverTime(shown) : $"Planar hull: it neither pitches nor rolls, {words.Dip(shown)}", Subtitle(result, window, moves));
        var panels = new Panels(model, height, [.. rows.Select(r => r.Axis(window))]);
        model.Axes.Add(ChartStyle.NewAxis(AxisPosition.Bottom, "Time, s", time[window.From], time[window.To - 1]));
        for (int i = 0; i < rows.Length; i++)
        {
            foreach ((int from, int to) in window.Pulls(result))
            {
                panels.Shade(i, time[from], time[to], ChartStyle.Pull);
            }

            panels.Level(i, rows[i].Level, ChartStyle.Grey);
            Draw(panels, i, time, rows[i], window);
            HeaderEntry[] pulls = i == 0 && window.Count > 0 ? [new("hand pulls", ChartStyle.Pull, Swatch.Box)] : [];
            panels.Header(i, rows[i].Words, [new(rows[i].LevelWords, ChartStyle.Grey), .. pulls]);
        }

        Water(panels, rows.Length - 1);
        return new Chart("attitude_time", model, Height: height);
    }

    private static Row[] Tilt(RetrieveResult result, AttitudeWords words)
    {
        ValueList<double> pitch = result.Series["pitch_deg"], roll = result.Series["roll_deg"];
        return
        [
            new($"{Trade.Capital(words.Pitches)}, nose up positive", "Pitch, deg", pitch, pitch[0], "at rest", ChartStyle.Blue, LeastDeg),
            new($"{Trade.Capital(words.Rolls)}, left side up positive", "Roll, deg", roll, roll[0], "at rest", ChartStyle.Vermilion, LeastDeg),
        ];
    }

    private static Row[] Walk(RetrieveResult result, AttitudeWords words, ShownUnit unit) =>
    [
        new("Heading off the line, nose to its left positive", "Heading, deg", result.Series["heading_off_line_deg"], 0.0, "points at the rod", ChartStyle.Green, LeastDeg),
        new(Trade.Capital(words.Under), $"Nose, {unit.Name}", [.. result.Series["nose_z_m"].Select(unit.Of)], 0.0, "water", ChartStyle.Ink, unit.Of(LeastM)),
    ];

    private static ShownUnit NoseUnit(RetrieveResult result, TwitchWindow window, Shown shown)
    {
        double widest = 0.0;
        foreach (double z in result.Series["nose_z_m"][window.From..window.To])
        {
            widest = Math.Max(widest, Math.Abs(z));
        }

        return shown.Unit(ShownQuantity.Size, widest);
    }

    private static string Subtitle(RetrieveResult result, TwitchWindow window, bool moves)
    {
        string rest = $"{AttitudeWords.Pitch(result.Series["pitch_deg"][0])}, {AttitudeWords.Roll(result.Series["roll_deg"][0])}";
        return $"{window.Words(result)}; {(moves ? "at rest" : "all the time as at rest")}: {rest}";
    }

    private static void Draw(Panels panels, int panel, ValueList<double> time, Row row, TwitchWindow window)
    {
        (double[] t, double[] v) = Unwrapped(time[window.From..window.To], row.Values[window.From..window.To]);
        panels.Line(panel, t, v, row.Color);
    }

    // An angle that passes 180 degrees comes back at -180: a gap in the curve, no stroke across the panel.
    private static (double[] T, double[] V) Unwrapped(ReadOnlySpan<double> time, ReadOnlySpan<double> values)
    {
        List<double> t = [], v = [];
        for (int i = 0; i < values.Length; i++)
        {
            if (i > 0 && Math.Abs(values[i] - values[i - 1]) > 180.0)
            {
                t.Add(time[i]);
                v.Add(double.NaN);
            }

            t.Add(time[i]);
            v.Add(values[i]);
        }

        return ([.. t], [.. v]);
    }

    private static void Water(Panels panels, int panel) => panels.Model.Annotations.Add(new RectangleAnnotation
    {
        YAxisKey = Panels.Key(panel),
        MaximumY = 0.0,
        Fill = ChartStyle.Faint(ChartStyle.Sky, 0.35),
        Layer = AnnotationLayer.BelowSeries,
    });

    private sealed record Row(string Words, string Title, ValueList<double> Values, double Level, string LevelWords, OxyColor Color, double Least)
    {
        public LinearAxis Axis(TwitchWindow w)
        {
            (double low, double high) = (Level, Level);
            foreach (double v in Values[w.From..w.To])
            {
                (low, high) = (Math.Min(low, v), Math.Max(high, v));
            }

            double room = Math.Max(0.08 * (high - low), 0.5 * (Least - (high - low)));
            LinearAxis axis = ChartStyle.NewAxis(AxisPosition.Left, Title, low - room, high + room);
            if (high - low > 100.0)
            {
                axis.MajorStep = high - low > 200.0 ? 90.0 : 45.0;
            }

            return axis;
        }
    }
}
