using System.Globalization;
using System.Net;
using System.Text;
using System.Text.RegularExpressions;
using LureSim.Model.Margin;
using LureSim.Reports.Kit.Drawing;
using LureSim.Reports.Kit.Text;
using LureSim.Reports.Page;
using LureSim.Reports.Tests.Support;
using LureSim.Studies.Design;
using LureSim.Studies.Page;

namespace LureSim.Reports.Tests.Page;

/// <summary>How the lure floats, on its page.</summary>
public sealed partial class FloatSectionTests
{
    // Size of the letters and what a number of the drawing is rounded to, px.
    private const double Letters = 14.0, Tenth = 0.1;

    public static TheoryData<string> Shipped => [.. MadeUpPage.Shipped.Select(f => Path.GetFileNameWithoutExtension(f)!)];

    [Theory]
    [MemberData(nameof(Shipped))]
    public void No_name_in_either_drawing_lies_on_another_or_leaves_it(string name)
    {
        foreach ((string svg, double width) in Drawings(Section(name)).Zip([760.0, 344.0]))
        {
            (string Text, double Left, double Right, double Foot)[] boxes = [.. Texts().Matches(svg).Select(Box)];
            Assert.True(boxes.Length >= 8, svg);
            Assert.All(boxes, b => Assert.True(b.Left >= 0.0 && b.Right <= width, b.Text));
            Assert.All(boxes.SelectMany((a, i) => boxes.Skip(i + 1).Select(b => (a, b))), p =>
                Assert.True(Math.Abs(p.a.Foot - p.b.Foot) >= Letters || p.a.Right < p.b.Left || p.b.Right < p.a.Left, $"{p.a.Text} on {p.b.Text}"));
        }
    }

    // The scale comes from the bar, so that nothing of the drawing's own arithmetic is taken for granted.
    [Theory]
    [InlineData("small-walker")]
    [InlineData("slanted-walker")]
    [InlineData("steep-walker")]
    [InlineData("hollow-weedless")]
    public void Angle_freeboard_and_distance_of_tie_and_weight_are_those_of_the_lure(string name)
    {
        DesignReport report = Report(name, false);
        foreach (string svg in Drawings(Section(name)))
        {
            double[] bar = Line(svg, "bar"), axis = Line(svg, "axis"), height = Line(svg, "height"), tie = Circle(svg, "tie"), gravity = Circle(svg, "gravity");
            double scale = (bar[2] - bar[0]) / (Bar().Match(svg) is { Success: true } m ? 0.01 * double.Parse(m.Groups[1].Value, CultureInfo.InvariantCulture) : 0.0);
            double drawn = Math.Atan2(axis[1] - axis[3], axis[2] - axis[0]);
            Assert.Equal(report.Rest!.Rest.TrimRad, drawn, 2.0 * Tenth / (axis[2] - axis[0]));
            Assert.Equal(report.Rest.FreeboardM, (height[3] - height[1]) / scale, (2.0 * Tenth / scale) + (0.01 * Math.Abs(report.Rest.FreeboardM)));

            // Turned, a lure keeps its lengths.
            double dx = report.Rest.Lure.TieXM - report.Rest.Rest.CentreOfGravityXM, dz = report.Rest.Lure.TieZM - report.Rest.Rest.CentreOfGravityZM;
            Assert.Equal(Math.Sqrt((dx * dx) + (dz * dz)), Math.Sqrt(Math.Pow(tie[0] - gravity[0], 2) + Math.Pow(tie[1] - gravity[1], 2)) / scale, 0.01 * report.Rest.Lure.LengthM);
        }
    }

    [Fact]
    public void The_sentences_name_the_guess_and_the_table_what_moves_the_margin()
    {
        string text = Words(Section("small-walker", withChanges: true));
        Assert.Contains("It floats 2.8 deg tail-down, 0.47 in (1.2 cm) deep, with 0.23 in (5.9 mm) of freeboard", text, StringComparison.Ordinal);
        Assert.Contains("It stands up by itself from any heel; GM, which tells how stiffly, is 0.04 in (1.1 mm).", text, StringComparison.Ordinal);
        Assert.Contains("it comes straight: its margin is 0.35.", text, StringComparison.Ordinal);
        Assert.Contains("Nobody has measured chi: it is a guess that could be 0.50 to 1.25, and it comes straight over all of that.", text, StringComparison.Ordinal);
        Assert.Contains("as it is margin 0.35 turn at one pull 176 deg float angle 2.8 deg", text, StringComparison.Ordinal);
        Assert.Contains("rear hook left off margin -0.26 -0.61", text, StringComparison.Ordinal);
        Assert.Contains("all errors of building at once margin 0.14 to 0.56 turn at one pull - float angle 1.7 to 5.2 deg freeboard 0.18 to 0.27 in 4.5 to 6.9 mm", text, StringComparison.Ordinal);
        Assert.Contains("small-walker.toml has every change and error by itself", text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_margin_that_cannot_grow_says_so_and_the_table_tells_of_the_turn()
    {
        string text = Words(Section("hollow-weedless", withChanges: true));
        Assert.Contains("(0: it would come straight with none at all, so no lure has a larger margin with this chi)", text, StringComparison.Ordinal);
        Assert.Contains("None of the changes tried moves the margin; these change the turn at one pull most.", text, StringComparison.Ordinal);
        Assert.Contains("all errors of building at once margin 0.75 turn", text, StringComparison.Ordinal);
        Assert.Contains("hook or skirt", text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_chi_of_the_file_is_no_guess_and_one_too_small_leaves_the_line()
    {
        string text = Words(Section("small-walker", set: "lure.stern_shedding=0.3"));
        Assert.Contains("it leaves the straight line by itself: its margin is -0.10.", text, StringComparison.Ordinal);
        Assert.Contains("Chi is the one that the file gives.", text, StringComparison.Ordinal);
        Assert.DoesNotContain("Nobody has measured", text, StringComparison.Ordinal);
    }

    [Fact]
    public void What_was_left_out_or_could_not_be_computed_is_said_and_a_page_without_either_has_no_section()
    {
        Assert.Contains("was left out of this page", Words(Section("large-walker")), StringComparison.Ordinal);
        PageFile file = MadeUpPage.File("large-walker");
        PageCase without = MadeUpPage.Case(file, 0, MadeUpPage.Run(file)) with { Design = null };
        Assert.Contains("No float was computed: it sinks &lt;b&gt;.", Html(without with { DesignFault = "it sinks <b>" }), StringComparison.Ordinal);
        Assert.DoesNotContain("id=\"float\"", Html(without), StringComparison.Ordinal);
    }

    [Fact]
    public void The_page_has_the_bits_of_the_command()
    {
        PageFile file = MadeUpPage.File("carved-walker");
        DesignReport page = Report("carved-walker", true), command = DesignStudy.Run(file.Here, null, new MarginTask(), 2, CancellationToken.None);
        Assert.Equal(command.Own.CriticalShedding, page.Own.CriticalShedding);
        Assert.Equal(command.Changes.Select(c => (c.Change, c.MarginMove, c.After.PullTurnDeg)), page.Changes.Select(c => (c.Change, c.MarginMove, c.After.PullTurnDeg)));
    }

    private static DesignReport Report(string name, bool withChanges, params string[] set)
    {
        PageFile file = MadeUpPage.File(name, set);
        DesignReport report = DesignStudy.Afloat(file.Here, new MarginTask(), CancellationToken.None);
        return withChanges ? DesignStudy.WithChanges(report, file.Here, 1, CancellationToken.None) : report;
    }

    private static string Section(string name, bool withChanges = false, params string[] set)
    {
        PageFile file = MadeUpPage.File(name, set);
        PageCase made = MadeUpPage.Case(file, 0, MadeUpPage.Run(file)) with { Design = Report(name, withChanges, set) };
        string html = Html(made), from = html[html.IndexOf("<section id=\"float\"", StringComparison.Ordinal)..];
        return from[..from.IndexOf("</section>", StringComparison.Ordinal)];
    }

    private static string Html(PageCase made) => Encoding.UTF8.GetString(PageBuilder.Build(new([made], [], true), Shown.Both, "luresim page x.toml", PageEngine.None));

    private static string[] Drawings(string section) => [.. Svg().Matches(section).Select(m => m.Value)];

    private static string Words(string section) => Spaces().Replace(WebUtility.HtmlDecode(Tags().Replace(section, " ")).Replace('\u00A0', ' '), " ").Replace(" .", ".", StringComparison.Ordinal);

    private static (string Text, double Left, double Right, double Foot) Box(Match m)
    {
        string text = WebUtility.HtmlDecode(m.Groups[4].Value);
        double x = Number(m.Groups[1]), wide = TextLayout.Measure(text, Letters, OxyPlot.FontWeights.Bold).Width;
        double left = m.Groups[3].Value switch { "start" => x, "end" => x - wide, _ => x - (0.5 * wide) };
        return (text, left, left + wide, Number(m.Groups[2]));
    }

    private static double[] Line(string svg, string kind) => [.. Regex.Match(svg, $"<line class=\"{kind}\" x1=\"([^\"]*)\" y1=\"([^\"]*)\" x2=\"([^\"]*)\" y2=\"([^\"]*)\"").Groups.Values.Skip(1).Select(Number)];

    private static double[] Circle(string svg, string kind) => [.. Regex.Match(svg, $"<circle class=\"{kind}\" cx=\"([^\"]*)\" cy=\"([^\"]*)\"").Groups.Values.Skip(1).Select(Number)];

    private static double Number(Group group) => double.Parse(group.Value, CultureInfo.InvariantCulture);

    [GeneratedRegex("<svg.*?</svg>", RegexOptions.Singleline)]
    private static partial Regex Svg();

    [GeneratedRegex("<text class=\"[^\"]*\" x=\"([^\"]*)\" y=\"([^\"]*)\" text-anchor=\"([^\"]*)\">([^<]*)</text>")]
    private static partial Regex Texts();

    [GeneratedRegex(">([0-9.]+) cm</text>")]
    private static partial Regex Bar();

    [GeneratedRegex("<[^>]*>")]
    private static partial Regex Tags();

    [GeneratedRegex("\\s+")]
    private static partial Regex Spaces();
}
