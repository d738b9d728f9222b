using LureSim.Model;
using LureSim.Model.Retrieve;
using LureSim.Reports.Kit.Charts;
using LureSim.Reports.Kit.Drawing;
using LureSim.Reports.Kit.Text;
using OxyPlot;
using OxyPlot.Axes;

namespace LureSim.Reports.Retrieve;

/// <summary>Pull, slack and turn on one time axis: what the hand does, what reaches the nose, how the lure answers.</summary>
public static class PullSlackTurn
{
    private const int Height = 1100;
    private const string TurnsOn = "the lure turns on by";

    // Smallest width of a panel in the picture, px; only decides whether words fit.
    private const double PanelWidth = 1350;
    private static readonly OxyColor Slack = ChartStyle.Faint(ChartStyle.Sky, 0.28);

    /// <summary>Builds the picture of three twitches after warm-up.</summary>
    /// <param name="result">Retrieve.</param>
    public static Chart Build(RetrieveResult result)
    {
        TwitchWindow window = TwitchWindow.Choose(result, 3);
        Series s = result.Series;
        ValueList<double> time = s["time_s"], tension = s["nose_tension_N"], heading = s["heading_deg"];
        ValueList<double> rigid = Centimetres(s["rigid_stroke_m"]), tip = Centimetres(s["tip_travel_m"]), slack = Centimetres(s["slack_m"]);
        double share = Spans.TurnInSlack(heading, tension, window.From, window.To);
        PlotModel model = ChartStyle.NewModel(
            Title(window), $"{Trade.Fixed(100 * share, 0)} % of the turning happens while the line is slack (under 0.02 N at the nose)");
        var panels = new Panels(model, Height,
        [
            Axis("Tip, slack, cm", window, 0.06, 0.06, rigid, tip, slack),
            Axis("Nose pull, N", window, 0.05, 0.18, tension),
            HeadingAxis(window, heading),
        ]);
        model.Axes.Add(ChartStyle.NewAxis(AxisPosition.Bottom, "Time, s", time[window.From], time[window.To - 1]));
        ShadePulls(panels, result, window, time);
        ShadeSlack(panels, window, time, tension);
        NameSlack(panels, window, time, tension, heading);

        Draw(panels, 0, window, time, (rigid, ChartStyle.Vermilion), (slack, ChartStyle.Green), (tip, ChartStyle.Blue));
        panels.Header(0, "Hand and rod tip", new("hand's stroke", ChartStyle.Vermilion), new("tip under load", ChartStyle.Blue),
            new("slack in the line", ChartStyle.Green), new("hand pulls", ChartStyle.Pull, Swatch.Box));
        Draw(panels, 1, window, time, (tension, ChartStyle.Vermilion));
        panels.Header(1, PullWords(tension, window), new HeaderEntry("line slack", Slack, Swatch.Box));
        panels.Level(2, 0, ChartStyle.Grey);
        Draw(panels, 2, window, time, (heading, ChartStyle.Blue));
        panels.Header(2, TurnWords(result, heading, window), new HeaderEntry("nose points at the rod", ChartStyle.Grey));
        return new Chart("pull_slack_turn", model, Height: Height);
    }

    private static string Title(TwitchWindow window) => window.Count == 0
        ? "Pull, slack and turn: no complete twitch"
        : $"Pull, slack and turn: {window.Count} twitches";

    private static string PullWords(ValueList<double> tension, TwitchWindow window)
    {
        int taut = 0;
        double peak = 0;
        for (int i = window.From; i < window.To; i++)
        {
            taut += tension[i] >= Spans.SlackBelowN ? 1 : 0;
            peak = Math.Max(peak, tension[i]);
        }

        double share = 100.0 * taut / window.Length;
        return share < 0.5 ? "Lure's nose: no pull arrives" : $"Lure's nose: pulled {Trade.Fixed(share, 0)} % of the time, up to {Trade.Fixed(peak, 2)} N ({Trade.Digits(Trade.OunceForce(peak))} oz-force)";
    }

    private static string TurnWords(RetrieveResult result, ValueList<double> heading, TwitchWindow window)
    {
        double low = double.PositiveInfinity, high = double.NegativeInfinity;
        for (int i = window.From; i < window.To; i++)
        {
            low = Math.Min(low, heading[i]);
            high = Math.Max(high, heading[i]);
        }

        string range = $"heading runs over {Trade.Fixed(high - low, 0)}°";
        return result.Summary.Pattern == WalkPattern.Alternating
            ? $"Lure: each pull turns it to the other side; {range}"
            : $"Lure: {range}";
    }

    private static void ShadePulls(Panels panels, RetrieveResult result, TwitchWindow window, ValueList<double> time)
    {
        foreach ((int from, int peak) in window.Pulls(result))
        {
            panels.Shade(0, time[from], time[peak], ChartStyle.Pull);
            panels.Strip(1, time[from], time[peak], ChartStyle.Orange);
            panels.Strip(2, time[from], time[peak], ChartStyle.Orange);
        }
    }

    private static void ShadeSlack(Panels panels, TwitchWindow window, ValueList<double> time, ValueList<double> tension)
    {
        foreach ((int from, int to) in Spans.Where(window.From, window.To, i => tension[i] < Spans.SlackBelowN))
        {
            panels.Shade(1, time[from], time[to], Slack);
            panels.Shade(2, time[from], time[to], Slack);
        }
    }

    // Where the line is slack the tension lies on the panel's floor, so words above it cannot touch the curve.
    private static void NameSlack(Panels panels, TwitchWindow window, ValueList<double> time, ValueList<double> tension, ValueList<double> heading)
    {
        const string name = "line slack";
        double wide = (time[window.To - 1] - time[window.From]) * TextLayout.Measure(TurnsOn + " 180° ", ChartStyle.TextSize, 400).Width / PanelWidth;
        foreach ((int from, int to) in Spans.Where(window.From, window.To, i => tension[i] < Spans.SlackBelowN))
        {
            if (time[to] - time[from] < wide)
            {
                continue;
            }

            double turn = Math.Abs(heading[to] - heading[from]);
            double top = 0;
            for (int i = window.From; i < window.To; i++)
            {
                top = Math.Max(top, tension[i]);
            }

            string words = turn < 20 ? name : $"{name}:\n{TurnsOn} {Trade.Fixed(turn, 0)}°";
            panels.Words(1, 0.5 * (time[from] + time[to]), 0.5 * top, words);
        }
    }

    private static void Draw(
        Panels panels, int panel, TwitchWindow w, ValueList<double> time, params ReadOnlySpan<(ValueList<double> Values, OxyColor Color)> lines)
    {
        foreach ((ValueList<double> values, OxyColor color) in lines)
        {
            panels.Line(panel, time[w.From..w.To], values[w.From..w.To], color);
        }
    }

    private static LinearAxis Axis(string title, TwitchWindow w, double below, double above, params ReadOnlySpan<ValueList<double>> channels)
    {
        double low = 0, high = 0;
        foreach (ValueList<double> values in channels)
        {
            for (int i = w.From; i < w.To; i++)
            {
                low = Math.Min(low, values[i]);
                high = Math.Max(high, values[i]);
            }
        }

        double range = Math.Max(high - low, 1e-3);
        return ChartStyle.NewAxis(AxisPosition.Left, title, low - (below * range), high + (above * range));
    }

    private static LinearAxis HeadingAxis(TwitchWindow w, ValueList<double> heading)
    {
        LinearAxis axis = Axis("Heading, deg", w, 0.08, 0.18, heading);
        double range = axis.Maximum - axis.Minimum;
        axis.MajorStep = range < 150 ? 30 : range < 500 ? 90 : 360;
        return axis;
    }

    private static ValueList<double> Centimetres(ValueList<double> metres) => [.. metres.Select(m => 100 * m)];
}
