using System.Globalization;
using System.Xml.Linq;
using LureSim.Model;
using LureSim.Model.Hands;
using LureSim.Model.Strike;
using LureSim.Reports.Kit.Charts;
using LureSim.Reports.Kit.Drawing;
using LureSim.Reports.Kit.Text;
using LureSim.Reports.Strike;
using LureSim.Reports.Tests.Support;
using LureSim.Studies.Strike;
using OxyPlot;

namespace LureSim.Reports.Tests.Charts.Strike;

/// <summary>The pictures of a strike: what they say, and that what is called to scale is.</summary>
public sealed class StrikeChartTests
{
    private static readonly Shown Metric = new(UnitChoice.Metric);

    [Fact]
    public void Every_picture_of_a_strike_is_drawn()
    {
        IReadOnlyList<Chart> charts = StrikeCharts.All(MadeUpStrike.Report(), Shown.Both);
        Assert.Equal(["strike_force", "drag_window", "strike_distance", "strike_margins"], charts.Select(c => c.Name));
        Assert.All(charts, Pictures.Render);
    }

    // The same rod, upright, pointing ahead and bent: as long on the picture, as a slide too. Places in the file have tenths of a pixel at worst: six links, 0.6 px of 250.
    [Theory]
    [InlineData(StrikeStyle.Snap, false)]
    [InlineData(StrikeStyle.Sweep, false)]
    [InlineData(StrikeStyle.Snap, true)]
    public void A_rod_has_one_length_at_all_moments(StrikeStyle style, bool slide)
    {
        Chart chart = StrikeForce.Build(MadeUpStrike.About(MadeUpStrike.Result(style)), Metric);
        double[] lengths = RodLengths(slide ? SlideFit.Of(chart) : chart);
        Assert.Equal(4, lengths.Length);
        Assert.True(lengths[0] > 100.0);
        Assert.All(lengths, l => Assert.Equal(lengths[0], l, 0.003 * lengths[0]));
    }

    // 26 N are 2.651 kg, 24 N 2.447 kg.
    [Fact]
    public void The_title_tells_peak_and_whether_it_is_enough()
    {
        Assert.Equal("The hook gets 2.7 kg after 0.20 s: enough for both points", Title(StrikeForce.Build(MadeUpStrike.About(MadeUpStrike.Result()), Metric)));
        Assert.Equal("The hook gets 2.0 kg, too little for both points: 2.4 kg would set them", Title(StrikeForce.Build(MadeUpStrike.About(MadeUpStrike.Result(peakN: 20.0)), Metric)));
    }

    // 54 N against 26 N; the low end of that guess is 31.5 N, that of the hold 48 N.
    [Theory]
    [InlineData(0.0, "The line never pulls: nothing is loaded")]
    [InlineData(26.0, "Nothing gives; first would be the rod, which bears 2.1 times its load")]
    [InlineData(50.0, "The rod bears 1.1 times its load; at the low end of that guess it breaks")]
    [InlineData(60.0, "The rod breaks: it bears 5.5 kg and gets 6.1 kg")]
    public void Margins_are_told_with_the_doubt_of_what_things_bear(double peakN, string title) =>
        Assert.Equal(title, Title(MarginBars.Build(MadeUpStrike.About(MadeUpStrike.Result(peakN: peakN)), Metric)));

    // The line of the file reaches 24 N at 31/(1 + 0.02 d) = 24, d = 14.6 m; drawn between 10 m and 15 m by a straight line.
    [Fact]
    public void Reach_is_where_the_curve_crosses_the_level()
    {
        StrikeCurves curves = MadeUpStrike.Report().Curves;
        Assert.Equal(14.6, CurveWords.Reach(curves.Lines[0], 24.0)!.Value.High, 0.1);
        Assert.Equal(3.0, CurveWords.Reach(curves.Lines[0], 24.0)!.Value.Low);
        Assert.Null(CurveWords.Reach(curves.Lines[0], 40.0));
        StrikeCurve hill = curves.Lines[0] with { Points = [At(10.0, 20.0), At(20.0, 30.0), At(30.0, 10.0)] };
        Ranged reach = CurveWords.Reach(hill, 25.0)!.Value;
        Assert.Equal((15.0, 22.5), (reach.Low, reach.High));
        Assert.Equal(25.0, CurveWords.Reach(hill, 20.0)!.Value.High);
    }

    [Fact]
    public void The_title_over_the_distance_compares_the_line_with_the_one_that_reaches_least()
    {
        StrikeCurves curves = MadeUpStrike.Report().Curves;
        Assert.Equal("Braid sets both points out to 15 m, soaked nylon nowhere", CurveWords.Title(curves, 2, Metric));
        Assert.Equal("Braid sets both points as far as 45 m, fluorocarbon out to 30 m", CurveWords.Title(curves with { SettingN = 8.0 }, 2, Metric));
        Assert.Equal("No line sets both points: 3.0 kg at most of the 8.2 kg due", CurveWords.Title(curves with { SettingN = 80.0 }, 2, Metric));
    }

    [Fact]
    public void Zones_cover_all_drags_once()
    {
        DragRange window = new(10.0, 30.0, WeakPlace.Knot, DragCase.Strike);
        Assert.Equal([(0.0, 10.0, false, true), (10.0, 30.0, true, true), (30.0, 50.0, true, false)], Zones(window));
        Assert.Equal([(0.0, 10.0, false, true), (10.0, 30.0, false, false), (30.0, 50.0, true, false)], Zones(window with { LowN = 30.0, HighN = 10.0 }));
        Assert.Equal([(0.0, 50.0, false, true)], Zones(new(null, 50.0, null, DragCase.Strike)));
        Assert.Equal([(0.0, 10.0, false, false), (10.0, 50.0, true, false)], Zones(window with { HighN = null }));
    }

    [Theory]
    [InlineData(0, "1.4 to 4.0 kg of drag sets both points, and nothing gives; best is 2.4 kg")]
    [InlineData(1, "Set both points with 2.0 kg of drag, then ease to 1.5 kg: no one drag does both")]
    [InlineData(2, "No drag sets both points: even shut the hook gets 4.1 kg of the 12 kg due")]
    [InlineData(3, "Strike with the drag shut: from 1.4 kg on it sets both points, and nothing gives; ease to 4.6 kg at the boat")]
    [InlineData(4, "The knot breaks before the strike sets both points, at any drag")]
    public void The_window_is_told_with_its_recommendation(int which, string title)
    {
        StrikeReport report = new[] { MadeUpStrike.Report(), MadeUpStrike.Empty(), MadeUpStrike.TooWeak(), MadeUpStrike.Strong(), MadeUpStrike.Brittle() }[which];
        Assert.Equal(title, DragWindowWords.Title(report.Window, 2, Metric));
    }

    // What is of one place stands together; a tag keeps off what is drawn and off the others where there is room.
    [Fact]
    public void Tags_keep_off_each_other_and_off_what_is_drawn()
    {
        var room = new OxyRect(0, 0, 1000, 400);
        Tag a = new(1, new(300, 200), "start"), same = new(2, new(305, 205), "tight"), far = new(3, new(380, 200), "peak");
        ScreenPoint[] line = [.. Tags.Along([new(0, 180), new(1000, 180)])];
        (string Text, OxyRect Box, ScreenPoint At)[] placed = [.. Tags.Place(room, [a, same, far], line)];
        Assert.Equal(["1: start, 2: tight", "3: peak"], placed.Select(t => t.Text));
        Assert.True(placed[0].Box.Right <= placed[1].Box.Left || placed[0].Box.Top >= placed[1].Box.Bottom || placed[1].Box.Top >= placed[0].Box.Bottom);
        Assert.All(placed, t => Assert.DoesNotContain(line, p => p.Y > t.Box.Top && p.Y < t.Box.Bottom && p.X > t.Box.Left && p.X < t.Box.Right));
        OxyRect box = Tags.Place(room, [new(1, new(0, 0), "in the corner")], [])[0].Box;
        Assert.True(box.Left >= 0 && box.Top >= 0);
    }

    [Fact]
    public void Names_of_ends_keep_a_row_apart_inside_the_panel()
    {
        double[] at = EndNames.Spread([100, 101, 102, 395], 20, 380);
        Assert.All(at.Zip(at.Skip(1), (a, b) => b - a), gap => Assert.True(gap >= 1.25 * ChartStyle.TextSize - 1e-9));
        Assert.True(at[0] >= 20 && at[^1] <= 380);
        Assert.Equal([50.0, 200.0], EndNames.Spread([50, 200], 20, 380));
    }

    private static IEnumerable<(double, double, bool, bool)> Zones(DragRange range) => DragZone.Of(range, 50.0).Select(z => (z.FromN, z.ToN, z.Sets, z.Spares));

    private static StrikeCurvePoint At(double m, double n) => new(m, n, 1.0, null, 0.0, 0.0, StrikeLimit.Hands);

    private static string Title(Chart chart) => chart.Model.Title.ReplaceLineEndings(" ");

    // Strokes in the colours of the rod; the swatch of the legend has no more than two points.
    private static double[] RodLengths(Chart chart)
    {
        string[] colors = [.. new[] { Looks.Rod.Color, Looks.Rod.Pale(0.55).Color }.Select(c => string.Create(CultureInfo.InvariantCulture, $"rgb({c.R},{c.G},{c.B})"))];
        XElement root = XDocument.Load(new MemoryStream(ChartRenderer.Svg(chart))).Root!;
        return
        [
            .. root.Descendants().Where(e => e.Name.LocalName == "polyline" && colors.Any(c => ((string?)e.Attribute("style") ?? "").Contains(c, StringComparison.Ordinal)))
                .Select(e => Corners((string)e.Attribute("points")!)).Where(p => p.Length > 2).Select(p => p.Zip(p.Skip(1), (a, b) => a.DistanceTo(b)).Sum()),
        ];
    }

    private static ScreenPoint[] Corners(string points)
    {
        double[] numbers = [.. points.Split([' ', ','], StringSplitOptions.RemoveEmptyEntries).Select(n => double.Parse(n, CultureInfo.InvariantCulture))];
        return [.. numbers.Chunk(2).Select(p => new ScreenPoint(p[0], p[1]))];
    }
}
