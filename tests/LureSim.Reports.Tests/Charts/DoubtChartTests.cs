using System.Text;
using System.Text.Json;
using LureSim.Reports.Doubt;
using LureSim.Reports.Kit.Charts;
using LureSim.Reports.Kit.Drawing;
using LureSim.Reports.Kit.Text;
using LureSim.Reports.Sweep;
using LureSim.Reports.Tests.Support;
using LureSim.Studies.Doubt;
using OxyPlot.Annotations;
using OxyPlot.Axes;

namespace LureSim.Reports.Tests.Charts;

public sealed class DoubtChartTests
{
    [Fact]
    public void A_chart_ranks_what_is_told_from_chance_and_gives_the_rest_one_row_without_order()
    {
        Chart chart = MadeUpDoubt.Chart();
        Pictures.Render(chart);
        Assert.Equal("doubt_glide_width", chart.Name);
        RectangleAnnotation[] bars = [.. chart.Model.Annotations.OfType<RectangleAnnotation>()];

        // Two bars for each of the two guesses that tell, one grey one for chance, nothing for what does nothing.
        Assert.Equal(2 + 2 + 1, bars.Length);
        Assert.Equal([Looks.LowEnd, Looks.HighEnd, Looks.LowEnd, Looks.HighEnd, Looks.Chance], bars.Select(b => b.Fill));

        // Top row: damping; its low end raises the glide by 3 cm, its high end lowers it by 2 cm.
        Assert.Equal((3.0, -2.0), (bars[0].MaximumX, bars[1].MinimumX));
        Assert.Equal("Damping of the rod matters most: -2.0 to +3.0 cm", chart.Model.Title);

        // The third does less than noise: it is counted, not named.
        Assert.Equal(
            ["the rest", "drag of the blunt tail (0.1 to 0.35)", "damping of the rod (0.05 to 0.2)"],
            chart.Model.Axes.OfType<CategoryAxis>().Single().Labels.Select(l => l.Replace('\n', ' ')));
        Assert.Contains("1 not told apart from chance (under 0.40 cm)", chart.Model.Annotations.OfType<TextAnnotation>().Select(t => t.Text));
    }

    [Fact]
    public void Where_nothing_is_told_from_chance_no_guess_is_named()
    {
        DoubtStudy study = MadeUpDoubt.Study();
        Chart chart = DoubtChart.Build(study.Report, study.Screen! with { Noise = [1.0] }, MadeUpDoubt.Glide, study.Guesses)!;
        Assert.Equal("No guess moves the glide per twitch by more than chance does", chart.Model.Title);
        Assert.Equal(["the rest"], chart.Model.Axes.OfType<CategoryAxis>().Single().Labels);
    }

    [Fact]
    public void A_ranking_of_a_sweep_names_no_guess_within_chance()
    {
        (string Label, GuessRank Rank)[] guesses = [("one", new(0.5, 0.5, -0.01, 0.01)), ("two", new(0.19, 0.19, -0.05, 0.05)), .. Enumerable.Range(0, 38).Select(i => ($"g{i}", new GuessRank(0, 0.1, 0, 0)))];
        Chart chart = RankChart.Build(MadeUpDoubt.Glide, "Mean over 3 points", guesses, 0.2);
        Assert.Equal(["the rest", "one"], chart.Model.Axes.OfType<CategoryAxis>().Single().Labels);
        Assert.EndsWith("; of 40 guesses about 2 would be told by luck", chart.Model.Subtitle, StringComparison.Ordinal);
        Assert.Contains("39 not told apart from chance (rank correlation under 0.20)", chart.Model.Annotations.OfType<TextAnnotation>().Select(t => t.Text));
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
