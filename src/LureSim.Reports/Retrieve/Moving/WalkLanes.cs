using LureSim.Reports.Kit.Charts;
using LureSim.Reports.Kit.Text;
using OxyPlot;

namespace LureSim.Reports.Retrieve.Moving;

/// <summary>The two curves below the moving lure, pull at the nose and heading over one loop, with the spans of slack.</summary>
/// <param name="loop">Loop.</param>
/// <param name="shown">Units.</param>
/// <param name="left">Left edge of the curves, px.</param>
/// <param name="right">Right edge, px.</param>
internal sealed class WalkLanes(WalkLoop loop, Shown shown, double left, double right)
{
    // Room that "line slack" needs, px.
    private const double Rim = 8.0, Room = 200.0;
    private readonly double[] _pull = loop.Values("nose_tension_N"), _heading = loop.Values("heading_deg");

    /// <summary>Spans in which the line is slack, shares of the loop.</summary>
    public IReadOnlyList<(double From, double To)> Slack =>
        [.. Spans.Where(0, loop.Count, i => _pull[i] < Spans.SlackBelowN).Select(s => (loop.Share(s.From), loop.Share(s.To)))];

    /// <summary>Draws both.</summary>
    /// <param name="svg">Receives them.</param>
    /// <param name="top">Upper edge of the first, px.</param>
    /// <param name="height">Height of one, px.</param>
    /// <param name="pitch">From one to the next, px.</param>
    public void Draw(MovieSvg svg, double top, double height, double pitch)
    {
        double reach = Math.Max(90.0, _heading.Max(Math.Abs));
        Lane(svg, top, height, ["Pull at the nose", $"up to {shown.OneFamily.Pull(_pull.Max())}"], _pull, 0.0, _pull.Max());
        Lane(svg, top + pitch, height, ["Nose turned", "grey: at the rod"], _heading, -reach, reach);
        if (Slack.Count > 0 && Slack.MaxBy(s => s.To - s.From) is var widest && (widest.To - widest.From) * (right - left) > Room)
        {
            svg.Text("line slack", 0.5 * (X(widest.From) + X(widest.To)), top + (0.45 * height), TextAnchor.Middle, middle: true);
        }
    }

    private void Lane(MovieSvg svg, double top, double height, string[] words, double[] values, double low, double high)
    {
        svg.Rectangle(left, top, right - left, height, OxyColors.White, ChartStyle.Grey);
        foreach ((double from, double to) in Slack)
        {
            svg.Rectangle(X(from), top, (to - from) * (right - left), height, ChartStyle.Pale(ChartStyle.Sky, 0.28));
        }

        double Y(double value) => top + height - Rim - ((value - low) / Math.Max(high - low, 1e-12) * (height - (2.0 * Rim)));
        svg.Path([new(left, Y(0.0)), new(right, Y(0.0))], ChartStyle.Grey, 2.0);
        svg.Path(values.Select((v, i) => new ScreenPoint(X(loop.Share(i)), Y(v))), Looks.Lure.Color, ChartStyle.LineWidth);
        for (int i = 0; i < words.Length; i++)
        {
            svg.Text(words[i], left - 24.0, top + (0.5 * height) + ((i - (0.5 * (words.Length - 1))) * 1.2 * MovieSvg.TextSize), TextAnchor.End, middle: true);
        }
    }

    private double X(double share) => left + (share * (right - left));
}
