using System.Text;
using System.Text.Json;
using LureSim.Reports.Doubt;
using LureSim.Reports.Kit.Charts;
using LureSim.Reports.Kit.Drawing;
using LureSim.Reports.Kit.Text;
using LureSim.Reports.Tests.Support;
using LureSim.Studies.Doubt;
using OxyPlot.Series;

namespace LureSim.Reports.Tests.Charts;

public sealed class DoubtChartTests
{
    [Fact]
    public void A_chart_ranks_by_size_greys_noise_and_leaves_out_what_does_not_enter()
    {
        Chart chart = MadeUpDoubt.Chart();
        Pictures.Render(chart);
        Assert.Equal("doubt_glide_width", chart.Name);
        RectangleBarSeries[] bars = [.. chart.Model.Series.OfType<RectangleBarSeries>()];

        // Two bars and a line for each guess that tells, two bars for noise, nothing for what does nothing.
        Assert.Equal(3 + 3 + 2, bars.Length);

        // Top row: damping; its high end lowers the glide by 2 cm; beside others the whole move is 4.5 cm.
        Assert.Equal((-2.0, 2.0), (bars[1].Items[0].X0, bars[0].Items[0].Y0));
        Assert.Equal(4.5, bars[2].Items[0].X1 - bars[2].Items[0].X0, 1e-12);
        Assert.Equal(ChartStyle.Blue, bars[0].FillColor);
        Assert.Equal((ChartStyle.Grid, ChartStyle.Grid), (bars[6].FillColor, bars[7].FillColor));
    }

    [Fact]
    public void The_subtitle_says_how_many_draws_failed() => Assert.EndsWith("; 2 of 99 draws failed", MadeUpDoubt.Chart().Model.Subtitle, StringComparison.Ordinal);

    [Fact]
    public void A_figure_that_no_guess_moves_has_no_chart()
    {
        DoubtStudy study = MadeUpDoubt.Study();
        ScreenReport still = study.Screen! with { Effects = [.. study.Guesses.Select(_ => new GuessEffect[] { new(0, 0, 0, 0) })] };
        Assert.Null(DoubtChart.Build(study.Report, still, MadeUpDoubt.Glide, study.Guesses));
    }

    [Fact]
    public void The_text_says_headline_median_failures_hands_and_what_matters()
    {
        string text = DoubtText.Build(MadeUpDoubt.Study(), new(UnitChoice.Metric));
        string flat = text.ReplaceLineEndings(" ");
        Assert.Contains("Glide per twitch: 2.1 cm as it stands; median of the draws 2.0 cm, 8 of 10 between 1.0 and 3.4 cm. ", flat, StringComparison.Ordinal);
        Assert.Contains("2 of 99 draws could not finish and the bands are of the others; most often: the lure sinks. ", flat, StringComparison.Ordinal);
        Assert.Contains("If your hands are other than guessed, all else as it stands (99 runs, the same luck): glide per twitch median 2.0 cm, 8 of 10 between 1.5 and 2.6 cm.", flat, StringComparison.Ordinal);
        Assert.Contains("  glide width, cm           2.1         1.0     2.0         3.4\n", text, StringComparison.Ordinal);
        Assert.Contains("Of the runs: alternating 75 %, still 25 %.", text, StringComparison.Ordinal);
        Assert.Contains("damping of the rod (0.05 to 0.2) +3.0 and -2.0 cm; drag of the blunt tail (0.1 to 0.35) only together with others, 1.2 cm on the mean.", flat, StringComparison.Ordinal);
        Assert.Contains("The other 2 do no more than noise, 4.0 mm.", flat, StringComparison.Ordinal);
        Assert.DoesNotContain("outside", text, StringComparison.Ordinal);
        Assert.All(text.Split('\n'), line => Assert.InRange(line.Length, 0, Closing.Width));
    }

    [Fact]
    public void A_headline_outside_its_own_band_is_said_in_words() => Assert.Contains(
        "3.5 cm as it stands; median of the draws 2.0 cm, 8 of 10 between 1.0 and 3.4 cm. As it stands it lies outside the band of its own draws",
        DoubtText.Build(MadeUpDoubt.Study(given: 0.035), new(UnitChoice.Metric)).ReplaceLineEndings(" "), StringComparison.Ordinal);

    [Fact]
    public void Where_it_was_not_looked_for_the_text_says_so()
    {
        string text = DoubtText.Build(MadeUpDoubt.Study() with { Screen = null, Hands = null }, Shown.Both).ReplaceLineEndings(" ");
        Assert.Contains("Which guess matters was not looked for: it takes 120 more such searches, made from --doubt 100 on", text, StringComparison.Ordinal);
        Assert.DoesNotContain("hands", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Json_holds_the_same()
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream))
        {
            json.WriteStartObject();
            DoubtJson.Write(json, MadeUpDoubt.Study());
            json.WriteEndObject();
        }

        JsonElement doubt = JsonDocument.Parse(Encoding.UTF8.GetString(stream.ToArray())).RootElement.GetProperty("doubt");
        Assert.Equal((99, 2, "the lure sinks"), (doubt.GetProperty("runs").GetInt32(), doubt.GetProperty("failed").GetInt32(), doubt.GetProperty("failed_reason").GetString()));
        JsonElement band = doubt.GetProperty("bands").GetProperty("glide_width_m");
        Assert.Equal([0.021, 0.01, 0.02, 0.034], new[] { "given", "p10", "p50", "p90" }.Select(n => band.GetProperty(n).GetDouble()));
        Assert.Equal(0.026, doubt.GetProperty("hands").GetProperty("bands").GetProperty("glide_width_m").GetProperty("p90").GetDouble());
        JsonElement figure = doubt.GetProperty("guesses").GetProperty("glide_width_m");
        Assert.Equal(0.004, figure.GetProperty("noise").GetDouble());
        JsonElement[] ranked = [.. figure.GetProperty("ranked").EnumerateArray()];
        Assert.Equal(["rod.damping", "lure.form_drag", "line.modulus"], ranked.Select(r => r.GetProperty("key").GetString()));
        Assert.Equal([false, true, false], ranked.Select(r => r.GetProperty("only_together").GetBoolean()));
        Assert.Equal([false, false, true], ranked.Select(r => r.GetProperty("noise").GetBoolean()));
    }
}
