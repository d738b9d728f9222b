using LureSim.Model.Lures;
using LureSim.Scenarios.Outlines;

namespace LureSim.Scenarios.Tests.Lures;

/// <summary>Bodies from drawings.</summary>
public sealed class OutlineTests
{
    private const string Ellipse = "<ellipse id=\"side\" cx=\"60\" cy=\"20\" rx=\"50\" ry=\"10\"/>";

    private static DrawnBody Body(string inside, string root = "viewBox=\"0 0 120 40\"")
    {
        Assert.Null(SvgReader.Read(Svg(inside, root), out DrawnBody? body));
        return body!;
    }

    private static string? Wrong(string inside, string root = "") => SvgReader.Read(Svg(inside, root), out _);

    private static string Svg(string inside, string root) => $"<?xml version=\"1.0\"?>\n<svg xmlns=\"http://www.w3.org/2000/svg\" {root}>{inside}</svg>";

    private static double VolumeM3(List<HullStation> stations, double length) =>
        HullShape.Create(new(LureShape.Stations, length, 0.03, 0.03, 0.01, 0.0, 0.0, [], [], [.. stations])).VolumeM3(2001);

    // 4/3 pi a b c, the body of check H2.
    [Fact]
    public void The_volume_of_a_drawn_ellipse_comes_nearer_with_the_square_of_its_sections()
    {
        DrawnBody body = Body(Ellipse + "<ellipse id=\"top\" cx=\"60\" cy=\"100\" rx=\"50\" ry=\"12\"/>");
        double exact = 4.0 / 3.0 * Math.PI * 0.05 * 0.010 * 0.012;
        double[] off = [.. new[] { 11, 21, 41, 81 }.Select(n => Math.Abs((VolumeM3(body.Stations(0.1, null, n), 0.1) / exact) - 1.0))];
        for (int i = 1; i < off.Length; i++)
        {
            Assert.InRange(off[i - 1] / off[i], 3.0, 5.0);
        }

        Assert.True(off[^1] < 1e-3, $"{off[^1]}");
        Assert.Equal(DrawnBody.Sections, body.Stations(0.1).Count);
    }

    // The same ellipse as a path of arcs, of cubics, and moved, turned and scaled by its groups. Four cubics are off by 2.7e-4 of the half-axis, 14 um.
    [Theory]
    [InlineData("<path id=\"side\" d=\"M10 20A50 10 0 1 1 110 20A50 10 0 0 1 10 20Z\"/>")]
    [InlineData("<path id=\"side\" d=\"m10,20a50,10 0 0150-10 50,10 0 0150,10 50,10 0 01-100,0z\"/>")]
    [InlineData("<g id=\"side\"><path d=\"M110 20C110 25.5228475 87.6142375 30 60 30S10 25.5228475 10 20 32.3857625 10 60 10 110 14.4771525 110 20Z\"/></g>")]
    [InlineData("<g transform=\"translate(60,20) scale(50 10)\"><circle id=\"side\" r=\"1\"/></g>")]
    [InlineData("<g transform=\"rotate(90)\"><g transform=\"translate(20 -60)\"><ellipse id=\"side\" rx=\"10\" ry=\"50\"/></g></g>")]
    [InlineData("<g transform=\"matrix(2 0 0 2 7 8)\"><g><ellipse id=\"side\" cx=\"60px\" cy=\"20\" rx=\"50\" ry=\"10\" transform=\"rotate(180, 60, 20)\"/></g></g>")]
    public void One_body_can_be_drawn_in_many_ways(string shape)
    {
        List<HullStation> expected = Body(Ellipse).Stations(0.1), stations = Body(shape).Stations(0.1);
        for (int i = 0; i < expected.Count; i++)
        {
            Assert.Equal(expected[i].XM, stations[i].XM, 1e-12);
            Assert.Equal(expected[i].HalfHeightM, stations[i].HalfHeightM, 1.5e-5);
            Assert.Equal(expected[i].CentreZM, stations[i].CentreZM, 5e-6);
        }
    }

    [Fact]
    public void A_wedge_stands_upright_with_its_nose_on_the_axis()
    {
        // High nose to the right: y of SVG goes down.
        List<HullStation> s = Body("<polygon id=\"side\" points=\"0,30 100,10 100,20 0,40\"/>").Stations(0.1);
        Assert.Equal(0.0, s[^1].CentreZM, 1e-9);
        Assert.Equal(-0.02, s[0].CentreZM, 1e-6);
        Assert.All(s, x => Assert.Equal(0.005, x.HalfHeightM, 1e-9));
        Assert.All(s, x => Assert.Equal(x.HalfHeightM, x.HalfBreadthM, 1e-15));
        Assert.Equal(0.015, Body("<rect id=\"side\" width=\"100\" height=\"10\"/>").Stations(0.1, 0.03)[40].HalfBreadthM, 1e-12);
    }

    [Theory]
    [InlineData("width=\"240mm\" viewBox=\"0 0 120 40\"", 0.2)]
    [InlineData("width=\"12cm\" height=\"4cm\" viewBox=\"0 0 120 40\"", 0.1)]
    [InlineData("width=\"2in\" height=\"9in\" viewBox=\"0 0 120 40\"", 0.0423333)]
    [InlineData("width=\"100mm\"", 0.0264583)]
    [InlineData("width=\"120\" height=\"40\"", null)]
    [InlineData("width=\"100%\" viewBox=\"0 0 120 40\"", null)]
    public void A_drawing_in_millimetres_says_its_size(string root, double? length)
    {
        double? found = Body(Ellipse, root).LengthM;
        Assert.Equal(length is null, found is null);
        Assert.Equal(length ?? 0.0, found ?? 0.0, 1e-7);
    }

    [Theory]
    [InlineData("<path id=\"outline\" d=\"M0 0h9v9z\"/>", "no shape with the id \"side\"; it has outline")]
    [InlineData("", "it has no shapes at all")]
    [InlineData("<path id=\"side\" d=\"M0 0L100 20L100 0L0 20Z\"/>", "crosses itself 50 % of the way")]
    [InlineData("<path id=\"side\" d=\"M0 0h40v10h-40z M60 0h40v10h-40z\"/>", "it has 2 pieces; one closed outline is due")]
    [InlineData("<path id=\"side\" d=\"M0 0L100 0L100 20L80 10L100 5L100 30L0 30Z\"/>", "itself")]
    [InlineData("<path id=\"side\" d=\"M0 0h100v10h-60v5h60v10h-100z\"/>", "folds back over itself 40 % of the way from its left end")]
    [InlineData("<path id=\"side\" d=\"M0 0h100v20h-50\"/>", "it is not closed: its ends lie 53.9 units apart")]
    [InlineData("<path id=\"side\" d=\"M0 0h100\"/>", "encloses nothing")]
    [InlineData("<path id=\"side\" d=\"M0 0h10 x5\"/>", "its path data cannot be read at character 9: 'x' is no command")]
    [InlineData("<path id=\"side\" d=\"M0 0 L10\"/>", "a number is due")]
    [InlineData("<path id=\"side\" d=\"L10 10\"/>", "a path begins with M")]
    [InlineData("<path id=\"side\" d=\"M0 0A5 5 0 2 1 9 9Z\"/>", "0 or 1 is due")]
    [InlineData("<polygon id=\"side\" points=\"0,0 5,5 9\"/>", "three pairs of numbers")]
    [InlineData("<rect id=\"side\" width=\"10cm\" height=\"9\"/>", "width = \"10cm\" cannot be read")]
    [InlineData("<g transform=\"perspective(5)\">" + Ellipse + "</g>", "transform = \"perspective(5)\" cannot be read")]
    [InlineData("<g style=\"transform:scale(2)\">" + Ellipse + "</g>", "a style moves it")]
    [InlineData("<defs>" + Ellipse + "</defs>", "stands inside <defs>")]
    [InlineData(Ellipse + Ellipse, "\"side\" holds 2 shapes")]
    [InlineData("<text id=\"side\">x</text>", "\"side\" holds 0 shapes")]
    [InlineData(Ellipse + "<ellipse id=\"top\" cx=\"9\" rx=\"40\" ry=\"9\"/>", "\"top\" is 80 units long, \"side\" 100")]
    [InlineData(Ellipse + "<path id=\"top\" d=\"M0 0L100 20V30L0 10z\"/>", "\"top\" is bent")]
    [InlineData("<path id=\"side\" d=\"M0 0\"", "it is no SVG: line 2, character")]
    public void What_is_no_body_is_said(string inside, string says) => Assert.Contains(says, Wrong(inside) ?? "nothing", StringComparison.Ordinal);

    [Fact]
    public void A_scenario_takes_its_body_from_a_drawing_and_its_effective_file_stands_alone()
    {
        using var folder = new Folder();
        folder.Write("body.svg", Svg(Ellipse, "width=\"120mm\" viewBox=\"0 0 120 40\""));
        string text = Texts.With("shape = \"cigar\"\nlength = \"115 mm\"\ndiameter = \"21 mm\"\nmass = \"18 g\"", "shape = \"outline\"\noutline = \"body.svg\"\nmaterial = \"cedar\"");
        ScenarioSource source = ScenarioSource.FromText(text, "s.toml", folder.Root);
        ScenarioResult first = source.Resolve();
        Assert.Empty(first.Errors);
        Assert.Equal(0.1, first.Setup!.Lure.LengthM, 1e-12);
        Assert.Equal(0.05, first.Setup.Lure.TieXM, 1e-12);
        Assert.Equal(0.12, source.Resolve(["lure.length=120 mm"]).Setup!.Lure.LengthM, 1e-12);
        ScenarioResult second = ScenarioSource.FromText(first.Effective().ToToml(), directory: "/").Resolve();
        Assert.Empty(second.Errors);
        Assert.Equal(SpecText.Of(first.Scenario!), SpecText.Of(second.Scenario!));
    }

    [Theory]
    [InlineData("shape = \"outline\"\nmass = \"18 g\"", "lure.outline: missing")]
    [InlineData("shape = \"outline\"\noutline = \"none.svg\"\nmass = \"18 g\"", "\"none.svg\": there is no such file")]
    [InlineData("shape = \"cigar\"\noutline = \"body.svg\"\nlength = \"10 cm\"\ndiameter = \"2 cm\"\nmass = \"18 g\"", "a drawing needs shape = \"outline\"")]
    [InlineData("shape = \"outline\"\noutline = \"body.svg\"\nmass = \"18 g\"", "lure.length: missing, and the drawing does not say its size")]
    [InlineData("shape = \"outline\"\noutline = \"body.svg\"\nlength = \"10 cm\"\nheight = \"2 cm\"\nmass = \"18 g\"", "lure.height: given beside lure.outline")]
    [InlineData("shape = \"outline\"\noutline = \"body.svg\"\nlength = \"10 cm\"\nthickest = 0.4\nmass = \"18 g\"", "lure.thickest: given beside sections")]
    [InlineData("shape = \"outline\"\noutline = \"body.svg\"\nlength = \"10 cm\"\ndiameter = \"12 cm\"\nmass = \"18 g\"", "the length is due from left to right")]
    public void What_does_not_go_with_a_drawing_is_said(string lines, string says)
    {
        using var folder = new Folder();
        folder.Write("body.svg", Svg(Ellipse, ""));
        string text = Texts.With("shape = \"cigar\"\nlength = \"115 mm\"\ndiameter = \"21 mm\"\nmass = \"18 g\"", lines);
        Assert.Contains(ScenarioSource.FromText(text, "s.toml", folder.Root).Resolve().Errors, e => e.ToString().Contains(says, StringComparison.Ordinal));
    }
}
