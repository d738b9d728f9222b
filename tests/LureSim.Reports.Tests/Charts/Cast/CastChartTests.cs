using LureSim.Model.Assembly;
using LureSim.Model.Cast;
using LureSim.Model.Hands;
using LureSim.Model.Lines;
using LureSim.Model.Lures;
using LureSim.Model.Media;
using LureSim.Model.Reels;
using LureSim.Model.Rods;
using LureSim.Reports.Cast;
using LureSim.Reports.Kit.Drawing;
using LureSim.Reports.Kit.Json;
using LureSim.Reports.Kit.Text;
using LureSim.Reports.Retrieve;
using LureSim.Reports.Tests.Support;
using LureSim.Studies.Cast;
using OxyPlot.Annotations;

namespace LureSim.Reports.Tests.Charts.Cast;

/// <summary>The pictures of casts, drawn from casts of both kinds of reel.</summary>
public sealed class CastChartTests
{
    [Theory]
    [InlineData(ReelKind.Fixed)]
    [InlineData(ReelKind.Revolving)]
    public void Every_picture_of_a_cast_is_drawn(ReelKind reel)
    {
        CastReport report = new(Cast(reel), reel == ReelKind.Fixed ? [] : MadeUpCast.Brakes);
        IReadOnlyList<Chart> charts = CastCharts.All(report);
        string[] brake = reel == ReelKind.Fixed ? [] : ["cast_brake"];
        Assert.Equal(["cast_swing", "cast_path", "cast_speeds", "cast_release", "cast_energy", .. brake], charts.Select(c => c.Name));
        Assert.All(charts, c => Pictures.Render(c with { Name = $"{c.Name}_{reel}" }));
    }

    // 100 J: 20 left in the lure and 25 taken from it by the air, 45 % that fly with it.
    [Fact]
    public void The_work_of_the_hands_is_shared_out_in_words()
    {
        CastResult cast = Cast(ReelKind.Fixed) with { Energy = new CastEnergy(100, 30, 2, 3, 20, 25, 4, 5, 0, 6, 5) };
        Chart chart = EnergyBars.Build(cast, new Shown(UnitChoice.Metric));
        Assert.Contains("The hands put 100 J into this cast", chart.Model.Subtitle, StringComparison.Ordinal);
        Assert.Equal("45 % of the work of the hands flies with the lure; the rod and hands keep 35 %", chart.Model.Title.Replace('\n', ' '));

        // Nine bars; brakes and pick-up of the reel share one, 11 J.
        Assert.Equal(
            ["25 %, 25 J", "20 %, 20 J", "5 %, 5.0 J", "4 %, 4.0 J", "11 %, 11 J", "0 %, 0 J", "30 %, 30 J", "3 %, 3.0 J", "2 %, 2.0 J"],
            chart.Model.Annotations.OfType<TextAnnotation>().Select(a => a.Text));
    }

    [Fact]
    public void A_comparison_has_a_row_per_set_up_with_both_bands_and_the_verdict()
    {
        CastAcross result = Across();
        Chart chart = CastAcrossChart.Build(result, new Shown(UnitChoice.Metric));
        Pictures.Render(chart);
        Assert.Equal(4, chart.Model.Annotations.OfType<RectangleAnnotation>().Count());
        Assert.Equal("mid casts 2.0 m farther than short: you will notice", chart.Model.Title);

        // Numbers over their meaning, in two lines beside the plot: no axis carries words.
        Assert.Equal(
            ["30 m", "reference", "32 m: 2.0 m farther", "you will notice", "no cast"], chart.Model.Annotations.OfType<TextAnnotation>().Select(a => a.Text));
        Assert.Equal(41.0 * 1.04, chart.Model.Axes.Single(a => a.Position == OxyPlot.Axes.AxisPosition.Bottom).Maximum, 3.0);
    }

    [Fact]
    public void A_picture_speaks_one_family_of_units()
    {
        Chart feet = CastAcrossChart.Build(Across(), new Shown(UnitChoice.Trade)), metres = CastAcrossChart.Build(Across(), new Shown(UnitChoice.Metric));
        Assert.EndsWith(", ft", feet.Model.Axes.Single(a => a.Position == OxyPlot.Axes.AxisPosition.Bottom).Title, StringComparison.Ordinal);
        Assert.EndsWith(", m", metres.Model.Axes.Single(a => a.Position == OxyPlot.Axes.AxisPosition.Bottom).Title, StringComparison.Ordinal);
        Assert.Equal("mid casts 6.6 ft farther than short: you will notice", feet.Model.Title);
        Assert.DoesNotContain(feet.Model.Annotations.OfType<TextAnnotation>(), a => a.Text!.Contains(" m", StringComparison.Ordinal) && !a.Text.Contains("notice", StringComparison.Ordinal));
    }

    [Fact]
    public void The_text_of_a_comparison_fits_the_terminal_and_names_the_failure()
    {
        string text = CastAcrossText.Build(Across(), new RunNotes([], []), pairs: true);
        Assert.Contains("long: too long", text, StringComparison.Ordinal);
        Assert.Contains("same load", text, StringComparison.Ordinal);
        Assert.All(text.Split('\n'), line => Assert.InRange(line.Length, 0, Closing.Width));
    }

    private static CastAcross Across()
    {
        CastResult one = Cast(ReelKind.Fixed), two = Cast(ReelKind.Fixed, 0.6);
        return new(
            "Made up", "rod length, ft", "the same load",
            [new("short", one, null, MadeUpCast.Draws(20.0, 30.0, 40.0)), new("mid", two, null, MadeUpCast.Draws(22.0, 33.0, 41.0)), new("long", null, "too long", MadeUpCast.Draws(double.NaN, double.NaN, double.NaN))],
            0, true);
    }

    private static CastResult Cast(ReelKind reel, double overhang = 0.45)
    {
        var line = new LineSpec(LineMaterial.Braid, 3.3e-4, 7.3e-5, 970, 5000, 1e-3, 0, SurfaceFilm.Dry, 220);
        var lure = new LureSpec(LureShape.Cigar, 0.11, 0.0205, 0.0205, 0.018, 0.051, 0, [], []);
        var setup = new Setup(
            "Made up", new WaterSpec(), new AirSpec(), new AnglerSpec(), new HandsSpec(), new RodSpec(2.13, 0.45, 3.0, 0.075),
            new ReelSpec(reel, 7.1, 0.034, 30).With(line), line, null, lure);
        return CastRunner.Run(setup, new CastTask(overhang)).Demand();
    }
}
