using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using LureSim.Model.Retrieve;
using LureSim.Reports.Kit.Text;
using LureSim.Reports.Retrieve.Moving;
using LureSim.Reports.Tests.Support;

namespace LureSim.Reports.Tests.Charts;

/// <summary>The moving picture: its key frames against the run, its loop, its still, and text of the user in it.</summary>
public sealed partial class WalkMovieTests
{
    // One digit behind the point, px and deg.
    private const double Rounding = 0.051;

    [Fact]
    public void Straight_lines_between_key_frames_stay_within_half_a_pixel_and_half_a_degree_of_the_run()
    {
        RetrieveResult result = MadeUpRetrieve.Result();
        WalkLoop loop = WalkLoop.Choose(result)!;
        var track = new WalkTrack(loop, new OxyPlot.OxyRect(24.0, 136.0, 1552.0, 348.0));
        (double At, double X, double Y, double Deg)[] frames = Frames(Svg(result), "hull");
        Assert.True(frames.Length < loop.Count, "nothing was left out");
        for (int i = 0; i < loop.Count; i++)
        {
            double at = 100.0 * track.Share[i];
            int next = Math.Clamp(Array.FindIndex(frames, f => f.At >= at - 1e-3), 1, frames.Length - 1);
            (var a, var b) = (frames[next - 1], frames[next]);
            double part = (at - a.At) / (b.At - a.At);
            Assert.Equal(track.Centre[i].X, a.X + (part * (b.X - a.X)), 0.5 + Rounding);
            Assert.Equal(track.Centre[i].Y, a.Y + (part * (b.Y - a.Y)), 0.5 + Rounding);
            Assert.Equal(track.TurnDeg[i], a.Deg + (part * (b.Deg - a.Deg)), 0.5 + Rounding);
        }
    }

    [Fact]
    public void The_loop_is_two_whole_twitches_after_warm_up_that_meet_end_to_start()
    {
        RetrieveResult result = MadeUpRetrieve.Result();
        WalkLoop loop = WalkLoop.Choose(result)!;
        Assert.Equal(2.0 / result.Task.CadencePerS, loop.DurationS, 1e-9);
        Assert.True(loop.First >= result.WarmUpTwitches);
        double[] heading = loop.Values("heading_deg");
        Assert.Equal(heading[0], heading[^1], 3.0);
        Assert.Contains($"animation:{(loop.Slower * loop.DurationS).ToString(CultureInfo.InvariantCulture)}s linear infinite", Svg(result), StringComparison.Ordinal);
    }

    // At the end of a loop the water has come as far as the lure has gone: the next loop joins on.
    [Fact]
    public void The_water_moves_by_the_way_of_the_lure()
    {
        RetrieveResult result = MadeUpRetrieve.Result();
        WalkLoop loop = WalkLoop.Choose(result)!;
        var track = new WalkTrack(loop, new OxyPlot.OxyRect(24.0, 136.0, 1552.0, 348.0));
        double[] x = loop.Values("lure_x_m");
        Assert.Equal(track.ScalePxM * (x[0] - x[^1]), track.Way.X, 1e-6);
        Assert.Equal(track.Centre[0].X, track.Centre[^1].X, 1e-6);
        Assert.Equal(track.Centre[0].Y, track.Centre[^1].Y, 1e-6);
    }

    [Fact]
    public void Motion_is_for_readers_who_do_not_mind_it_and_there_is_no_script()
    {
        string svg = Svg(MadeUpRetrieve.Result());
        string css = XDocument.Parse(svg).Root!.Descendants().Single(e => e.Name.LocalName == "style").Value;
        int query = css.IndexOf("@media (prefers-reduced-motion:no-preference)", StringComparison.Ordinal);
        Assert.InRange(query, 0, css.IndexOf("animation", StringComparison.Ordinal));
        Assert.DoesNotContain("<script", svg, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("href", svg, StringComparison.OrdinalIgnoreCase);
        Assert.InRange(Encoding.UTF8.GetByteCount(svg), 10_000, 150_000);
    }

    [Fact]
    public void No_word_is_smaller_than_a_thirtieth_of_the_height_cut_off_or_covered()
    {
        foreach (UnitChoice choice in Enum.GetValues<UnitChoice>())
        {
            RetrieveResult result = MadeUpRetrieve.Result();
            result = result with { Setup = result.Setup with { Title = HardCharts.Title } };
            (IReadOnlyList<PlacedText> texts, IReadOnlyList<string> cutOff) = SvgTexts.Read(WalkMovie.Svg(result, new(choice))!);
            Assert.Empty(cutOff);
            Assert.True(texts.Count >= 8);
            Assert.All(texts, t => Assert.True(t.Size >= 30.0, t.ToString()));
            Assert.All(texts, t => Assert.DoesNotContain(texts, other => other != t && other.Overlaps(t)));
        }
    }

    [Fact]
    public void Text_of_the_user_is_text()
    {
        const string hostile = "</title><script>alert(1)</script>\u202E\u0001 & \"quoted\"";
        RetrieveResult result = MadeUpRetrieve.Result();
        XDocument svg = XDocument.Parse(Svg(result with { Setup = result.Setup with { Title = hostile } }));
        Assert.DoesNotContain(svg.Descendants(), e => e.Name.LocalName == "script");
        Assert.Contains("<script>", svg.Root!.Elements().First().Value, StringComparison.Ordinal);
        Assert.DoesNotContain('\u202E', svg.ToString());
    }

    [Fact]
    public void A_steady_pull_and_a_run_without_twitches_have_none()
    {
        RetrieveResult result = MadeUpRetrieve.Result();
        Assert.Null(WalkMovie.Svg(result with { Twitches = [] }, Shown.Both));
        Assert.Null(WalkMovie.Svg(result with { Task = result.Task with { StrokeM = 0.0 } }, Shown.Both));
    }

    private static string Svg(RetrieveResult result) => Encoding.UTF8.GetString(WalkMovie.Svg(result, Shown.Both)!);

    private static (double At, double X, double Y, double Deg)[] Frames(string svg, string name)
    {
        string rule = svg[svg.IndexOf($"@keyframes {name}{{", StringComparison.Ordinal)..];
        rule = rule[..rule.IndexOf('\n', StringComparison.Ordinal)];
        double Number(Match m, int group) => double.Parse(m.Groups[group].Value, CultureInfo.InvariantCulture);
        return [.. Frame().Matches(rule).Select(m => (Number(m, 1), Number(m, 2), Number(m, 3), Number(m, 4)))];
    }

    [GeneratedRegex(@"([\d.]+)%\{transform:translate\(([-\d.]+)px,([-\d.]+)px\) rotate\(([-\d.]+)deg\)")]
    private static partial Regex Frame();
}
