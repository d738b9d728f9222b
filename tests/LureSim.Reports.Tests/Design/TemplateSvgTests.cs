using System.Globalization;
using System.Xml.Linq;
using LureSim.Model.Lures;
using LureSim.Model.Trim;
using LureSim.Reports.Design;
using LureSim.Reports.Kit.Plans;
using LureSim.Reports.Kit.Text;
using LureSim.Reports.Tests.Support;

namespace LureSim.Reports.Tests.Design;

/// <summary>The template read back from its SVG: a millimetre on the paper is a millimetre of the lure.</summary>
public sealed class TemplateSvgTests
{
    private const double Within = 0.01;

    private static XElement Svg(LureSpec lure, string title = "Made up") =>
        XDocument.Parse(System.Text.Encoding.UTF8.GetString(PlanSvg.Write(TemplateSheets.Whole(title, MadeUpDesign.Float(lure), Shown.Both), title))).Root!;

    private static XElement Named(XElement svg, string id) => svg.Descendants().Single(e => (string?)e.Attribute("id") == id);

    private static (double X, double Y)[] Points(XElement svg, string id) =>
        [.. ((string)Named(svg, id).Attribute("points")!).Split(' ').Select(p => p.Split(',')).Select(p => (Number(p[0]), Number(p[1])))];

    private static double Number(string text) => double.Parse(text, NumberStyles.Float, CultureInfo.InvariantCulture);

    [Fact]
    public void The_sheet_is_measured_in_millimetres()
    {
        XElement svg = Svg(MadeUpDesign.Cigar);
        double[] view = [.. ((string)svg.Attribute("viewBox")!).Split(' ').Select(Number)];
        Assert.Equal($"{view[2].ToString("F4", CultureInfo.InvariantCulture)}mm", (string)svg.Attribute("width")!);
        Assert.Equal($"{view[3].ToString("F4", CultureInfo.InvariantCulture)}mm", (string)svg.Attribute("height")!);
    }

    [Fact]
    public void Outlines_are_as_long_wide_and_high_as_the_lure()
    {
        Extent(Svg(MadeUpDesign.Cigar), "side", 115.0, 21.0);
        Extent(Svg(MadeUpDesign.Cigar), "top", 115.0, 21.0);
        Extent(Svg(MadeUpDesign.Long), "side", 360.0, 40.0);
        Extent(Svg(MadeUpDesign.Long), "top", 360.0, 30.0);
    }

    [Fact]
    public void Bars_are_50_mm_and_2_in_long()
    {
        XElement svg = Svg(MadeUpDesign.Cigar);
        Extent(svg, "bar-50-mm", 50.0, 0.0);
        Extent(svg, "bar-2-in", 50.8, 0.0);
    }

    [Fact]
    public void Holes_lie_where_the_weights_are_and_are_as_large_as_balls_of_lead()
    {
        XElement svg = Svg(MadeUpDesign.Cigar);
        double nose = Points(svg, "side").Max(p => p.X), axis = Points(svg, "side-axis")[0].Y;
        foreach ((string view, double down) in new[] { ("side", 6.0), ("top", 0.0) })
        {
            axis = Points(svg, view + "-axis")[0].Y;
            XElement hole = Named(svg, view + "-hole-B1");
            Assert.Equal(57.5 + 12.0, nose - Number((string)hole.Attribute("cx")!), Within);
            Assert.Equal(down, Number((string)hole.Attribute("cy")!) - axis, Within);

            // 2.5 g / (11.34 g/cm3) = 0.22046 cm3, a ball of 7.495 mm: worked by hand.
            Assert.Equal(0.5 * 7.495, Number((string)hole.Attribute("r")!), Within);
            Assert.Equal(57.5 - 28.0, nose - Points(svg, view + "-H1").Average(p => p.X), Within);
        }
    }

    [Fact]
    public void The_water_passes_the_tie_at_its_height_and_at_the_angle_at_which_the_lure_floats()
    {
        TrimResult trim = MadeUpDesign.Float(MadeUpDesign.Cigar);
        XElement svg = Svg(MadeUpDesign.Cigar);
        (double X, double Y)[] water = Points(svg, "water"), tie = Points(svg, "side-T");
        double dx = water[1].X - water[0].X, dy = water[1].Y - water[0].Y;
        Assert.Equal(trim.Rest.TrimRad, Math.Atan2(dy, dx), 1e-4);
        double over = ((water[0].Y - tie[0].Y) * dx) - ((water[0].X - tie.Average(p => p.X)) * dy);
        Assert.Equal(1000.0 * trim.Rest.TieHeightM, over / Math.Sqrt((dx * dx) + (dy * dy)), Within);
    }

    [Theory]
    [InlineData("Made up")]
    [InlineData("<b>Zander & \"Co\"</b> \u001b[31m\u202e ]]> 日本")]
    [InlineData("A title that is as long as a title can be, and then some more words of it, and again more, until nobody reads it any more, and even then it does not end at all")]
    public void No_word_leaves_the_sheet_or_lies_on_another(string title)
    {
        foreach (LureSpec lure in new[] { MadeUpDesign.Cigar, MadeUpDesign.Long })
        {
            (IReadOnlyList<PlacedText> texts, IReadOnlyList<string> cut) = SvgTexts.Read(PlanSvg.Write(TemplateSheets.Whole(title, MadeUpDesign.Float(lure), Shown.Both), title));
            Assert.Empty(cut);
            for (int i = 0; i < texts.Count; i++)
            {
                Assert.True(texts.Skip(i + 1).FirstOrDefault(texts[i].Overlaps) is not { } other, $"{texts[i]} lies on another");
            }
        }
    }

    [Fact]
    public void A_ball_that_is_too_large_for_the_body_is_told()
    {
        // Centre 7.5 mm under the axis of a body 10.5 mm deep there: 3.0 mm of room for a ball of 3.75 mm radius.
        LureSpec low = MadeUpDesign.Cigar with { Ballast = [new BallastSpec(0.0025, 0.0, -0.0075)] };
        Assert.Contains("stands out of the body by 0.7 mm", Words(low), StringComparison.Ordinal);
        Assert.DoesNotContain("stands out", Words(MadeUpDesign.Cigar), StringComparison.Ordinal);

        // Outside of the body altogether.
        Assert.Contains("stands out of the body by 9.2 mm", Words(low with { Ballast = [new BallastSpec(0.0025, 0.0, -0.016)] }), StringComparison.Ordinal);

        static string Words(LureSpec lure) => string.Join(' ', Svg(lure).Descendants().Where(e => e.Name.LocalName == "text").Select(e => e.Value));
    }

    private static void Extent(XElement svg, string id, double width, double height)
    {
        (double X, double Y)[] points = Points(svg, id);
        Assert.Equal(width, points.Max(p => p.X) - points.Min(p => p.X), Within);
        Assert.Equal(height, points.Max(p => p.Y) - points.Min(p => p.Y), Within);
    }
}
