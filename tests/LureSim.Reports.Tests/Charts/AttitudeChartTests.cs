using LureSim.Model;
using LureSim.Model.Lures;
using LureSim.Model.Retrieve;
using LureSim.Reports.Kit.Charts;
using LureSim.Reports.Kit.Drawing;
using LureSim.Reports.Kit.Text;
using LureSim.Reports.Retrieve;
using LureSim.Reports.Tests.Support;
using OxyPlot;
using OxyPlot.Annotations;
using OxyPlot.Series;

namespace LureSim.Reports.Tests.Charts;

/// <summary>The pictures of pitch, roll and dip: which instants, which words, and that the words fit.</summary>
public sealed class AttitudeChartTests
{
    [Fact]
    public void Instants_are_the_extremes_of_the_first_twitch_after_warm_up_in_order_of_time()
    {
        // A deeper dip of the twitch before must not count.
        RetrieveResult result = MadeUpRetrieve.Result();
        result = Set(result, "nose_z_m", 1118, -0.06);
        IReadOnlyList<LureInstant> instants = LureInstant.Choose(result);
        Assert.Equal(["hardest pull", "deepest nose", "highest nose", "just before the next pull"], instants.Select(i => i.Label));

        ValueList<double> nose = result.Series["nose_z_m"], pull = result.Series["tip_tension_N"], time = result.Series["time_s"];
        int[] twitch = [.. Enumerable.Range(0, time.Count).Where(i => time[i] > 6.0 - 1e-9 && time[i] < 6.5 - 1e-9)];
        Assert.Equal(time[twitch.MaxBy(i => pull[i])], instants[0].TimeS);
        Assert.Equal(time[twitch.MinBy(i => nose[i])], instants[1].TimeS);
        Assert.Equal(twitch.Min(i => nose[i]), instants[1].NoseZM);
        Assert.Equal(time[twitch.MaxBy(i => nose[i])], instants[2].TimeS);
        Assert.Equal(time[twitch[^1]], instants[3].TimeS);
        Assert.Equal(result.Snapshots[0], instants[0].Line);
        Assert.Null(instants[1].Line);
    }

    [Fact]
    public void Instants_that_coincide_share_a_place_and_the_widest_roll_fills_up()
    {
        IReadOnlyList<LureInstant> instants = LureInstant.Choose(
            Set(MadeUpRetrieve.With(MadeUpRetrieve.Result(), "nose_z_m", _ => 0.003), "roll_deg", 1260, -61.0));
        Assert.Equal(["deepest nose, highest nose", "hardest pull", "widest roll", "just before the next pull"], instants.Select(i => i.Label));
        Assert.Equal(6.3, instants[2].TimeS, 9);
    }

    [Fact]
    public void A_steady_pull_is_shown_from_rest_to_its_end_and_speaks_of_no_twitch()
    {
        RetrieveResult result = MadeUpRetrieve.Result();
        result = result with { Task = result.Task with { StrokeM = 0.0 } };
        IReadOnlyList<LureInstant> instants = LureInstant.Choose(result);
        Assert.Equal("at rest", instants[0].Label);
        Assert.Equal(0.0, instants[0].TimeS);
        Assert.Equal("end of the run", instants[^1].Label);
        PlotModel[] models = [AttitudeSide.Build(result, Shown.Both).Model, AttitudeTime.Build(result, Shown.Both).Model];
        Assert.All(models, m =>
        {
            Assert.StartsWith("Steady pull", m.Subtitle, StringComparison.Ordinal);
            Assert.DoesNotContain(m.Annotations.OfType<PanelHeader>().SelectMany(h => h.Entries), e => e.Label == "hand pulls");
        });
    }

    [Fact]
    public void Line_at_the_tie_is_seen_square_to_the_hull()
    {
        // Straight toward the rod and 30 degrees up; the nose points 60 degrees off it.
        (double sin, double cos) = Math.SinCos(Math.PI / 6.0);
        ValueList<double> s = [1.0, 0.02, 0.0], zero = [0.0, 0.0, 0.0];
        var shot = new Snapshot(6.0, "pull", [[.. s.Select(v => -cos * v)], zero, [.. s.Select(v => sin * v)]], [zero, zero, zero], 0.0, 0.0, Math.PI + (Math.PI / 3.0));
        var body = LureBody.Of(MadeUpRetrieve.Result().Setup.Lure);
        var at = new LureInstant("pull", 6.0, new Attitude(-0.002, 0.1, 0.3), 0.0, shot);
        IReadOnlyList<DataPoint> line = AttitudeFrame.Around(body, [at]).LineEnd(at);
        Assert.Equal(body.Tie(at.Pose).X, line[0].X, 12);
        Assert.Equal(at.Pose.HeightM + body.Tie(at.Pose).Z, line[0].Y, 12);
        Assert.Equal(0.3 * body.LengthM * cos * 0.5, line[^1].X - line[0].X, 12);
        Assert.Equal(0.3 * body.LengthM * sin, line[^1].Y - line[0].Y, 12);
    }

    [Fact]
    public void Words_tell_up_from_down_and_left_from_right()
    {
        Assert.Equal("pitch 12° down", AttitudeWords.Pitch(-12.4));
        Assert.Equal("pitch 0°", AttitudeWords.Pitch(-0.4));
        Assert.Equal("roll 52° left up", AttitudeWords.Roll(51.6));
        Assert.Equal("roll 140° right up", AttitudeWords.Roll(-140.0));
        Assert.Equal("nose 1.9 cm under", AttitudeWords.Nose(-0.0188, new(UnitChoice.Metric)));
        Assert.Equal("nose 0.17 in over", AttitudeWords.Nose(0.0044, new(UnitChoice.Trade)));
        Assert.Equal("nose at the water", AttitudeWords.Nose(-0.0004, Shown.Both));
        Assert.Equal("0°", AttitudeWords.Degrees(-0.2));
    }

    [Fact]
    public void Titles_carry_the_numbers_of_the_run()
    {
        Assert.Equal("The nose dips 0.74 in (1.9 cm), the hull rolls up to 52°", new AttitudeWords(-9.0, 16.0, 51.6, 0.0188, 0.2).Title(Shown.Both));
        Assert.Equal("Pitch -9° to 16°, roll up to 52°, the nose hardly dips", new AttitudeWords(-9.0, 16.0, 51.6, 0.0004, 0.2).OverTime(Shown.Both));
        Assert.Equal("The nose dips 0.74 in (1.9 cm), the hull does not roll", new AttitudeWords(3.1, 2.9, 0.4, 0.0188, 0.2).Title(Shown.Both));
        Assert.Equal("Pitch 3°, no roll, the nose dips 0.74 in (1.9 cm)", new AttitudeWords(2.9, 3.1, 0.4, 0.0188, 0.2).OverTime(Shown.Both));
        Assert.Equal("the nose is under water 20 % of the time", new AttitudeWords(-9.0, 16.0, 51.6, 0.0004, 0.2).Under);
        Assert.Equal("the nose stays out of the water", new AttitudeWords(-9.0, 16.0, 51.6, 0.0004, 0.0).Under);
        Assert.Equal("the nose stays under water", new AttitudeWords(-9.0, 16.0, 51.6, 0.0004, 1.0).Under);
    }

    [Fact]
    public void Words_of_a_stretch_are_its_extremes_and_the_dip_is_counted_from_rest()
    {
        RetrieveResult result = Set(MadeUpRetrieve.Result(), "nose_z_m", 1250, -0.06);
        var words = AttitudeWords.Of(result, 1200, 1300);
        ValueList<double> nose = result.Series["nose_z_m"], roll = result.Series["roll_deg"], pitch = result.Series["pitch_deg"];
        Assert.Equal(nose[0] - nose[1250], words.DipM);
        Assert.Equal(roll[1200..1300].ToArray().Max(Math.Abs), words.WidestRollDeg);
        Assert.Equal(pitch[1200..1300].ToArray().Min(), words.LowPitchDeg);
        Assert.Equal(pitch[1200..1300].ToArray().Max(), words.HighPitchDeg);
        Assert.Equal(nose[1200..1300].ToArray().Count(z => z < 0.0) / 100.0, words.UnderShare);
    }

    [Fact]
    public void A_planar_hull_has_no_strobe_and_no_empty_panel_but_is_called_so()
    {
        IReadOnlyList<Chart> charts = RetrieveCharts.All(MadeUpRetrieve.Planar(), Shown.Both);
        Assert.DoesNotContain("attitude_side", charts.Select(c => c.Name));
        PlotModel planar = charts.Single(c => c.Name == "attitude_time").Model;
        Assert.Equal("Planar hull: it neither pitches nor rolls, the nose dips 0.08 in (2.0 mm)", planar.Title);
        Assert.Equal(2, planar.Series.Count);
        Assert.Equal(4, AttitudeTime.Build(MadeUpRetrieve.Result(), Shown.Both).Model.Series.Count);
    }

    [Fact]
    public void A_heading_that_passes_180_degrees_leaves_a_gap()
    {
        RetrieveResult result = MadeUpRetrieve.With(MadeUpRetrieve.Result(), "heading_off_line_deg", v => Math.IEEERemainder(v + 180.0, 360.0));
        LineSeries heading = AttitudeTime.Build(result, Shown.Both).Model.Series.OfType<LineSeries>().ElementAt(2);
        Assert.Contains(heading.Points, p => double.IsNaN(p.Y));
        Assert.All(heading.Points.Zip(heading.Points.Skip(1)).Where(p => double.IsFinite(p.First.Y) && double.IsFinite(p.Second.Y)),
            p => Assert.InRange(Math.Abs(p.Second.Y - p.First.Y), 0.0, 180.0));
    }

    [Theory]
    [InlineData("as made up")]
    [InlineData("three instants in one")]
    [InlineData("wild")]
    public void Words_of_the_strobe_neither_overlap_nor_leave_the_board(string run)
    {
        RetrieveResult made = MadeUpRetrieve.Result();
        Chart chart = AttitudeSide.Build(run switch
        {
            "as made up" => made,
            "three instants in one" => Rising(Rising(made, "nose_z_m"), "tip_tension_N"),
            _ => MadeUpRetrieve.With(MadeUpRetrieve.With(MadeUpRetrieve.With(made, "pitch_deg", v => -5.0 * v), "roll_deg", v => 3.4 * v), "nose_z_m", z => z - 0.25),
        }, Shown.Both);
        ChartRenderer.Svg(chart);
        OxyPlot.Axes.Axis across = chart.Model.Axes.Single(a => a.Position == OxyPlot.Axes.AxisPosition.Bottom), up = chart.Model.Axes.Single(a => a.Position == OxyPlot.Axes.AxisPosition.Left);
        Assert.Equal(across.Scale, -up.Scale, 6);
        Assert.InRange(across.Scale, 0.98, 1.02);
        OxyRect[] words = [.. chart.Model.Annotations.OfType<TextAnnotation>().Select(t => Rectangle(t, across, up))];
        Assert.Equal((4 * 3) + 2, words.Length);
        var board = new OxyRect(new ScreenPoint(across.ScreenMin.X, up.ScreenMax.Y), new ScreenPoint(across.ScreenMax.X, up.ScreenMin.Y));
        Assert.All(words, w => Assert.True(board.Contains(w.Left, w.Top) && board.Contains(w.Right, w.Bottom), $"{w} leaves {board}"));
        for (int i = 0; i < words.Length; i++)
        {
            Assert.DoesNotContain(words.Skip(i + 1), w => w.Left < words[i].Right && words[i].Left < w.Right && w.Top < words[i].Bottom && words[i].Top < w.Bottom);
        }
    }

    [Fact]
    public void Titles_fit_the_picture()
    {
        RetrieveResult made = MadeUpRetrieve.Result(60.0);
        RetrieveResult wild = MadeUpRetrieve.With(MadeUpRetrieve.With(MadeUpRetrieve.With(made, "pitch_deg", v => -5.0 * v), "roll_deg", v => 3.4 * v), "nose_z_m", z => 8.0 * z) with { WarmUpTwitches = 110 };
        Chart[] charts = [AttitudeSide.Build(wild, Shown.Both), AttitudeTime.Build(wild, Shown.Both), AttitudeTime.Build(MadeUpRetrieve.Planar(60.0), Shown.Both), AttitudeSide.Build(wild with { Twitches = [] }, Shown.Both)];
        Assert.All(charts, c =>
        {
            Assert.InRange(TextLayout.Measure(c.Model.Title, ChartStyle.TitleSize, FontWeights.Bold).Width, 300.0, c.Width - 40.0);
            Assert.InRange(TextLayout.Measure(c.Model.Subtitle, ChartStyle.TextSize, FontWeights.Normal).Width, 300.0, c.Width - 40.0);
        });
    }

    private static OxyRect Rectangle(TextAnnotation text, OxyPlot.Axes.Axis across, OxyPlot.Axes.Axis up)
    {
        OxySize size = TextLayout.Measure(text.Text, text.FontSize, text.FontWeight);
        double x = across.Transform(text.TextPosition.X) - (TextLayout.LeftShare(text.TextHorizontalAlignment) * size.Width);
        return new OxyRect(x, up.Transform(text.TextPosition.Y), size.Width, size.Height);
    }

    private static RetrieveResult Rising(RetrieveResult result, string channel)
    {
        int i = 0;
        return MadeUpRetrieve.With(result, channel, _ => 1e-5 * i++);
    }

    private static RetrieveResult Set(RetrieveResult result, string channel, int at, double value)
    {
        int i = 0;
        return MadeUpRetrieve.With(result, channel, v => i++ == at ? value : v);
    }
}
