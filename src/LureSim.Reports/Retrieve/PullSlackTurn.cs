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
    private const int Height = 1300;
    private const double HardlyM = 5e-4;
    private const string TurnsOn = "the lure turns on by";

    // Smallest width of a panel in the picture, px; only decides whether words fit.
    private const double PanelWidth = 1350;
    private static readonly OxyColor Slack = ChartStyle.Faint(ChartStyle.Sky, 0.28);

    /// <summary>Builds the picture of three twitches after warm-up.</summary>
    /// <param name="result">Retrieve.</param>
    /// <param name="shown">Units.</param>
    public static Chart Build(RetrieveResult result, Shown shown)
    {
        ArgumentNullException.ThrowIfNull(result);
        ArgumentNullException.ThrowIfNull(shown);
        TwitchWindow window = TwitchWindow.Choose(result, 3);
        Series s = result.Series;
        ValueList<double> time = s["time_s"], tension = s["nose_tension_N"], heading = s["heading_deg"];
        Band stroke = Band.Of(s["rigid_stroke_m"], window), tip = Band.Of(s["tip_travel_m"], window), slack = Band.Of(s["slack_m"], window), pull = Band.Of(tension, window);
        ShownUnit size = shown.Unit(ShownQuantity.Size, slack.High), load = shown.Unit(ShownQuantity.Pull, pull.High);
        PlotModel model = ChartStyle.NewModel(Title(window, heading, tension), $"{window.Words(result)}; slack: under {shown.Pull(Spans.SlackBelowN)} at the nose");
        ValueList<double> rigidShown = In(size, s["rigid_stroke_m"]), tipShown = In(size, s["tip_travel_m"]), slackShown = In(size, s["slack_m"]), loadShown = In(load, tension);
        var panels = new Panels(model, Height,
        [
            Axis($"Travel, {size.Name}", window, 0.06, 0.06, rigidShown, tipShown), Axis($"Slack, {size.Name}", window, 0.05, 0.10, slackShown),
            Axis($"Pull, {load.Name}", window, 0.05, 0.18, loadShown), HeadingAxis(window, heading),
        ]);
        model.Axes.Add(ChartStyle.NewAxis(AxisPosition.Bottom, "Time, s", time[window.From], time[window.To - 1]));
        ShadePulls(panels, result, window, time);
        ShadeSlack(panels, window, time, tension);
        NameSlack(panels, window, time, loadShown, tension, heading);

        Draw(panels, 0, window, time, tipShown, ChartStyle.Vermilion);
        panels.Line(0, time[window.From..window.To], rigidShown[window.From..window.To], ChartStyle.Ink, ChartStyle.LineWidth, LineStyle.Dash);
        panels.Header(0, TipWords(stroke, tip, shown.OneFamily), new("rod tip", ChartStyle.Vermilion), new("hand", ChartStyle.Ink, Swatch.Dash), new("hand pulls", ChartStyle.Pull, Swatch.Box));
        Draw(panels, 1, window, time, slackShown, ChartStyle.Ink);
        panels.Header(1, $"Slack in the line: {shown.OneFamily.Range(ShownQuantity.Size, slack.Low, slack.High)}", new HeaderEntry("line out, less the straight way", ChartStyle.Ink));
        Draw(panels, 2, window, time, loadShown, ChartStyle.Blue);
        panels.Header(2, PullWords(tension, window, shown.OneFamily), new HeaderEntry("line slack", Slack, Swatch.Box));
        panels.Level(3, 0, ChartStyle.Grey);
        Draw(panels, 3, window, time, heading, ChartStyle.Green);
        panels.Header(3, TurnWords(result, heading, window), new HeaderEntry("nose points at the rod", ChartStyle.Grey));
        return new Chart("pull_slack_turn", model, Height: Height);
    }

    private static string Title(TwitchWindow window, ValueList<double> heading, ValueList<double> tension) => window.Count == 0
        ? "No complete twitch to look at"
        : $"{Trade.Fixed(100.0 * Spans.TurnInSlack(heading, tension, window.From, window.To), 0)} % of the turning happens while the line is slack";

    // A rod that bends lags behind the hand, swings past where a stiff one would stop, and back.
    private static string TipWords(Band stroke, Band tip, Shown shown) => stroke.High < HardlyM
        ? "The hand does not move"
        : $"Hand {shown.Size(stroke.High)}; tip springs {shown.Size(tip.High)}{(tip.Low < -HardlyM ? $", then {shown.Size(-tip.Low)} back" : "")}";

    private static string PullWords(ValueList<double> tension, TwitchWindow window, Shown shown)
    {
        int taut = 0;
        for (int i = window.From; i < window.To; i++)
        {
            taut += tension[i] >= Spans.SlackBelowN ? 1 : 0;
        }

        double share = 100.0 * taut / window.Length;
        return share < 0.5 ? "Lure's nose: no pull arrives" : $"Lure's nose: pulled {Trade.Fixed(share, 0)} % of the time, up to {shown.Pull(Band.Of(tension, window).High)}";
    }

    private static string TurnWords(RetrieveResult result, ValueList<double> heading, TwitchWindow window)
    {
        Band turn = Band.Of(heading, window);
        string range = $"heading runs over {Trade.Fixed(turn.High - turn.Low, 0)}°";
        return result.Summary.Pattern == WalkPattern.Alternating
            ? $"Lure: each pull turns it to the other side; {range}"
            : $"Lure: {range}";
    }

    private static void ShadePulls(Panels panels, RetrieveResult result, TwitchWindow window, ValueList<double> time)
    {
        foreach ((int from, int peak) in window.Pulls(result))
        {
            panels.Shade(0, time[from], time[peak], ChartStyle.Pull);
            panels.Shade(1, time[from], time[peak], ChartStyle.Pull);
            panels.Strip(2, time[from], time[peak], ChartStyle.Orange);
            panels.Strip(3, time[from], time[peak], ChartStyle.Orange);
        }
    }

    private static void ShadeSlack(Panels panels, TwitchWindow window, ValueList<double> time, ValueList<double> tension)
    {
        foreach ((int from, int to) in Spans.Where(window.From, window.To, i => tension[i] < Spans.SlackBelowN))
        {
            panels.Shade(2, time[from], time[to], Slack);
            panels.Shade(3, time[from], time[to], Slack);
        }
    }

    // Where the line is slack the tension lies on the panel's floor, so words above it cannot touch the curve.
    private static void NameSlack(Panels panels, TwitchWindow window, ValueList<double> time, ValueList<double> drawn, ValueList<double> tension, ValueList<double> heading)
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
            string words = turn < 20 ? name : $"{name}:\n{TurnsOn} {Trade.Fixed(turn, 0)}°";
            panels.Words(2, 0.5 * (time[from] + time[to]), 0.5 * Band.Of(drawn, window).High, words);
        }
    }

    private static void Draw(Panels panels, int panel, TwitchWindow w, ValueList<double> time, ValueList<double> values, OxyColor color) =>
        panels.Line(panel, time[w.From..w.To], values[w.From..w.To], color);

    private static LinearAxis Axis(string title, TwitchWindow w, double below, double above, params ReadOnlySpan<ValueList<double>> channels)
    {
        double low = 0, high = 0;
        foreach (ValueList<double> values in channels)
        {
            Band band = Band.Of(values, w);
            (low, high) = (Math.Min(low, band.Low), Math.Max(high, band.High));
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

    private static ValueList<double> In(ShownUnit unit, ValueList<double> si) => [.. si.Select(unit.Of)];

    private readonly record struct Band(double Low, double High)
    {
        public static Band Of(ValueList<double> values, TwitchWindow w)
        {
            (double low, double high) = (double.PositiveInfinity, double.NegativeInfinity);
            for (int i = w.From; i < w.To; i++)
            {
                (low, high) = (Math.Min(low, values[i]), Math.Max(high, values[i]));
            }

            return new(low, high);
        }
    }
}
