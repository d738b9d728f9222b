using System.Globalization;
using System.Text;
using LureSim.Model.Retrieve;
using LureSim.Reports.Kit.Charts;
using LureSim.Reports.Kit.Drawing;
using LureSim.Reports.Kit.Text;
using OxyPlot;

namespace LureSim.Reports.Retrieve.Moving;

/// <summary>
/// The walk as a moving picture: one SVG without script that plays two twitches over and over, slowed down. Readers who want less motion, and programs that
/// play none, see a still with the lure at several instants. Open by itself it stops under the pointer.
/// </summary>
public static class WalkMovie
{
    /// <summary>Name of its file.</summary>
    public const string FileName = "walk.svg";

    // Straight lines between key frames stay within these of every recorded sample.
    private const double WithinPx = 0.5, WithinDeg = 0.5;

    private const double Left = 24.0, Right = MovieSvg.Width - Left, WaterTop = 136.0, WaterHeight = 444.0, LaneLeft = 330.0, LaneTop = 640.0, LaneHeight = 112.0, LanePitch = 132.0;
    private const int Ghosts = 4, Trails = 3;

    /// <summary>The picture as UTF-8; null where there are no two twitches to show.</summary>
    /// <param name="result">Retrieve.</param>
    /// <param name="shown">Units.</param>
    public static byte[]? Svg(RetrieveResult result, Shown shown)
    {
        ArgumentNullException.ThrowIfNull(result);
        ArgumentNullException.ThrowIfNull(shown);
        return WalkLoop.Choose(result) is WalkLoop loop ? Draw(loop, shown) : null;
    }

    private static byte[] Draw(WalkLoop loop, Shown shown)
    {
        var track = new WalkTrack(loop, new OxyRect(Left, WaterTop, Right - Left, WaterHeight - 96.0));
        var lanes = new WalkLanes(loop, shown, LaneLeft, Right);
        string title = TopView.Title(loop.Result, shown);
        using var svg = new MovieSvg($"{loop.Result.Setup.Title}: {title}", Description(loop), Css(loop, track, lanes));
        Heading(svg, title, loop);
        svg.Clipped("view", Left, WaterTop, Right - Left, WaterHeight);
        svg.Rectangle(Left, WaterTop, Right - Left, WaterHeight, ChartStyle.Pale(ChartStyle.Sky, 0.35));
        Water(svg, track);
        Still(svg, track);
        Moving(svg, track);
        svg.End();
        Frame(svg);
        Legend(svg, track, shown);
        lanes.Draw(svg, LaneTop, LaneHeight, LanePitch);
        svg.Group("now");
        svg.Path([new(LaneLeft, LaneTop - 6.0), new(LaneLeft, LaneTop + LanePitch + LaneHeight + 6.0)], ChartStyle.Vermilion, 5.0);
        svg.End();
        return svg.ToBytes();
    }

    private static string Description(WalkLoop loop) => string.Create(
        CultureInfo.InvariantCulture,
        $"Seen from above, the lure turns from side to side while it comes toward the rod at the left; below, the pull at its nose and its heading over the same time. Two twitches, {loop.Slower} times slower. "
        + $"Places are those of the solver: between key frames the picture is within {WithinPx} px and {WithinDeg} deg of every sample, 5 ms apart. The line is drawn straight toward the rod tip.");

    private static void Heading(MovieSvg svg, string title, WalkLoop loop)
    {
        const double room = MovieSvg.Width - (2.0 * Left);
        string of = string.Create(CultureInfo.InvariantCulture, $"Two twitches, {loop.Slower} times slower: {loop.Result.Setup.Title}");
        svg.Text(TextFit.Wrap(title, ChartStyle.TitleSize, FontWeights.Bold, room, 1), 0.5 * MovieSvg.Width, 56.0, TextAnchor.Middle, size: ChartStyle.TitleSize, bold: true);
        svg.Text(TextFit.Wrap(of, MovieSvg.TextSize, FontWeights.Normal, room, 1), 0.5 * MovieSvg.Width, 108.0, TextAnchor.Middle);
    }

    // What moves through the view: ripples that repeat with the loop, and the way that the nose has come.
    private static void Water(MovieSvg svg, WalkTrack track)
    {
        svg.Group("water");
        int parts = Math.Max(1, (int)Math.Round(Math.Abs(track.Way.X) / 130.0));
        double step = track.Way.X / parts;
        int most = (int)Math.Min(60.0, Math.Ceiling((MovieSvg.Width + Math.Abs(track.Way.X)) / Math.Max(Math.Abs(step), 40.0)));
        for (int i = 0; i <= most && Math.Abs(step) > 1.0; i++)
        {
            double x = Left - track.Way.X + (i * step), y = WaterTop + 40.0 + ((i % parts * 157) % (int)(WaterHeight - 80.0));
            svg.Path([new(x, y), new(x + 18.0, y - 5.0), new(x + 36.0, y), new(x + 54.0, y - 5.0)], OxyColors.White, 4.0);
        }

        for (int k = 1; k <= Trails; k++)
        {
            svg.Path(track.Nose.Select(p => p + (track.Way * k)), ChartStyle.Ink, 3.0);
        }

        svg.Path(track.Nose, ChartStyle.Ink, 3.0, ("class", "trail"), ("pathLength", "1"));
        svg.End();
    }

    // Shown instead of motion: the lure at even parts of the loop, in the water as it lies at the start.
    private static void Still(MovieSvg svg, WalkTrack track)
    {
        svg.Group("still");
        for (int k = 0; k < Ghosts; k++)
        {
            int i = k * (track.Share.Length - 1) / Ghosts;
            ScreenPoint at = track.Centre[i] - (track.Way * track.Share[i]);
            svg.Group(null, ("transform", Place(at, track.TurnDeg[i])), ("opacity", k == 0 ? "1" : "0.55"));
            svg.Outline(track.Hull, Looks.Lure.Color);
            svg.End();
        }

        svg.End();
    }

    private static void Moving(MovieSvg svg, WalkTrack track)
    {
        ScreenPoint[] line = [new(0.0, 0.0), new(-2.0 * MovieSvg.Width, 0.0)];
        svg.Group("line");
        svg.Group("slack");
        svg.Path(line, Looks.Line.Color, 3.0, ("stroke-dasharray", "14 9"));
        svg.End();
        svg.Group("tight");
        svg.Path(line, Looks.Line.Color, 9.0);
        svg.End();
        svg.End();
        svg.Group("hull");
        svg.Outline(track.Hull, Looks.Lure.Color);
        svg.End();
        svg.Group("line");
        svg.Dot(new(0.0, 0.0), 8.0, ChartStyle.Ink);
        svg.End();
    }

    private static void Frame(MovieSvg svg)
    {
        double y = WaterTop + WaterHeight - 34.0;
        svg.Path([new(Left + 84.0, y), new(Left + 34.0, y)], Looks.Rod.Color, 6.0);
        svg.Path([new(Left + 50.0, y - 14.0), new(Left + 30.0, y), new(Left + 50.0, y + 14.0)], Looks.Rod.Color, 6.0);
        svg.Text("to the rod", Left + 100.0, y, middle: true);
    }

    private static void Legend(MovieSvg svg, WalkTrack track, Shown shown)
    {
        double y = WaterTop + WaterHeight - 34.0;
        (double m, string words) = shown.Choice == UnitChoice.Trade ? (4.0 * UnitTable.InchM, "4 in") : (0.1, "10 cm");
        double bar = m * track.ScalePxM;
        svg.Path([new(Right - 24.0 - bar, y), new(Right - 24.0, y)], ChartStyle.Ink, 7.0);
        svg.Text(words, Right - 40.0 - bar, y, TextAnchor.End, middle: true);
        const double tight = 330.0, slack = 590.0, nose = 860.0;
        svg.Group("only");
        svg.Path([new(tight, y), new(tight + 56.0, y)], Looks.Line.Color, 9.0);
        svg.Text("line tight", tight + 70.0, y, middle: true);
        svg.Path([new(slack, y), new(slack + 56.0, y)], Looks.Line.Color, 3.0, ("stroke-dasharray", "14 9"));
        svg.Text("line slack", slack + 70.0, y, middle: true);
        svg.End();
        svg.Path([new(nose, y), new(nose + 56.0, y)], ChartStyle.Ink, 3.0);
        svg.Text("way of the nose", nose + 70.0, y, middle: true);
    }

    private static string Css(WalkLoop loop, WalkTrack track, WalkLanes lanes)
    {
        double[] share = track.Share;
        double[] hullX = [.. track.Centre.Select(p => p.X)], hullY = [.. track.Centre.Select(p => p.Y)], tieX = [.. track.Tie.Select(p => p.X)], tieY = [.. track.Tie.Select(p => p.Y)];
        double[] behind = Behind(track.Nose);
        var css = new StringBuilder("\n.line,.hull,.now,.only{visibility:hidden}\n@media (prefers-reduced-motion:no-preference){\n.line,.hull,.now,.only{visibility:visible}.still{visibility:hidden}\n");
        css.Append(CultureInfo.InvariantCulture, $".water,.hull,.line,.trail,.now,.tight,.slack{{animation:{loop.Slower * loop.DurationS:0.###}s linear infinite}}.tight,.slack{{animation-timing-function:step-end}}\n");
        css.Append(".trail{stroke-dasharray:1 2}.water{animation-name:water}.hull{animation-name:hull}.line{animation-name:line}.trail{animation-name:trail}.now{animation-name:now}.tight{animation-name:tight}.slack{animation-name:slack}\n");
        css.Append("svg:hover *{animation-play-state:paused}\n}\n");
        css.Append(CultureInfo.InvariantCulture, $"@keyframes water{{to{{transform:translate({Px(track.Way.X)},{Px(track.Way.Y)})}}}}\n@keyframes now{{to{{transform:translate({Px(Right - LaneLeft)},0)}}}}\n");
        css.Append(Keyframes.Rule("hull", share, Keyframes.Keep(share, (hullX, WithinPx), (hullY, WithinPx), (track.TurnDeg, WithinDeg)), i => "transform:" + CssPlace(track.Centre[i], track.TurnDeg[i])));
        css.Append(Keyframes.Rule("line", share, Keyframes.Keep(share, (tieX, WithinPx), (tieY, WithinPx), (track.LineDeg, WithinDeg)), i => "transform:" + CssPlace(track.Tie[i], track.LineDeg[i])));
        css.Append(Keyframes.Rule("trail", share, Keyframes.Keep(share, (behind, 0.002)), i => string.Create(CultureInfo.InvariantCulture, $"stroke-dashoffset:{1.0 - behind[i]:0.###}")));
        Switch(css, "slack", lanes.Slack, inside: 1);
        Switch(css, "tight", lanes.Slack, inside: 0);
        return css.ToString();
    }

    // Shown in the spans, or outside of them.
    private static void Switch(StringBuilder css, string name, IReadOnlyList<(double From, double To)> spans, int inside)
    {
        bool slackAtStart = spans.Count > 0 && spans[0].From <= 0.0;
        css.Append(CultureInfo.InvariantCulture, $"@keyframes {name}{{0%{{opacity:{(slackAtStart ? inside : 1 - inside)}}}");
        foreach ((double from, double to) in spans)
        {
            if (from > 0.0)
            {
                css.Append(CultureInfo.InvariantCulture, $"{100.0 * from:0.###}%{{opacity:{inside}}}");
            }

            if (to < 1.0)
            {
                css.Append(CultureInfo.InvariantCulture, $"{100.0 * to:0.###}%{{opacity:{1 - inside}}}");
            }
        }

        css.Append("}\n");
    }

    // Share of the way of the loop that lies behind, at each sample.
    private static double[] Behind(ScreenPoint[] way)
    {
        var behind = new double[way.Length];
        for (int i = 1; i < way.Length; i++)
        {
            behind[i] = behind[i - 1] + way[i].DistanceTo(way[i - 1]);
        }

        double all = Math.Max(behind[^1], 1e-9);
        return Array.ConvertAll(behind, b => b / all);
    }

    private static string Px(double value) => MovieSvg.Number(value) + "px";

    private static string CssPlace(ScreenPoint at, double deg) => $"translate({Px(at.X)},{Px(at.Y)}) rotate({MovieSvg.Number(deg)}deg)";

    private static string Place(ScreenPoint at, double deg) => $"translate({MovieSvg.Number(at.X)},{MovieSvg.Number(at.Y)}) rotate({MovieSvg.Number(deg)})";
}
