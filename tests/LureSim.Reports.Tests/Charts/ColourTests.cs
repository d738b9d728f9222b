using LureSim.Model.Retrieve;
using LureSim.Reports.Cadence;
using LureSim.Reports.Kit.Charts;
using LureSim.Reports.Tests.Support;
using OxyPlot;

namespace LureSim.Reports.Tests.Charts;

/// <summary>The table of colours: read on white, told apart on a projector and by colour-blind readers.</summary>
public sealed class ColourTests
{
    // WCAG 2.2: 1.4.3 text, 1.4.11 lines.
    private const double TextContrast = 4.5, LineContrast = 3.0;

    // Some eight steps that are just noticed: lines are thin, and a projector takes half of the distance.
    private const double LinesApart = 20.0;

    // Areas are large, lie side by side and carry their names.
    private const double AreasApart = 15.0;

    public static TheoryData<string> Eyes => [.. ColourScience.Eyes.Keys];

    [Fact]
    public void Text_and_lines_stand_out_from_white()
    {
        Assert.All([ChartStyle.Ink, ChartStyle.Grey], c => Assert.True(ColourScience.Contrast(c, OxyColors.White) >= TextContrast, $"{c}"));
        Assert.All(
            [.. Looks.Things.Select(t => t.Look.Color), Looks.Reference.Color, Looks.Mean],
            c => Assert.True(ColourScience.Contrast(c, OxyColors.White) >= LineContrast, $"{c}: {ColourScience.Contrast(c, OxyColors.White)}"));

        // The measure can fail: yellow on white.
        Assert.True(ColourScience.Contrast(ChartStyle.Yellow, OxyColors.White) < LineContrast);
    }

    [Theory]
    [MemberData(nameof(Eyes))]
    public void Things_are_told_apart_by_colour(string eyes)
    {
        Assert.All(Pairs(Looks.Things), p => Apart(p.A.Look.Color, p.B.Look.Color, eyes, LinesApart, $"{p.A.Thing} and {p.B.Thing}"));
        Apart(Looks.LowEnd, Looks.HighEnd, eyes, LinesApart, "ends of a guess");
        Apart(Looks.Casts, Looks.Guesses, eyes, LinesApart, "scatter and guesses");
        Apart(Looks.Casts, Looks.Mean, eyes, LinesApart, "scatter and mean");
    }

    // The purple of Okabe and Ito, which the wine red replaces.
    [Fact]
    public void The_measure_of_distance_can_fail() =>
        Assert.True(ColourScience.Distance(ChartStyle.Purple, Looks.Line.Color, "deuteranopia") < LinesApart);

    // CIE 1976 by its definition: white to black is 100 of lightness.
    [Fact]
    public void White_is_a_hundred_from_black() => Assert.Equal(100.0, ColourScience.Distance(OxyColors.White, OxyColors.Black, "usual"), 0.01);

    [Fact]
    public void Things_are_told_apart_by_dashes_and_by_markers_too()
    {
        Assert.All(Pairs(Looks.Things), p => Assert.True(p.A.Look.Style != p.B.Look.Style && p.A.Look.Marker != p.B.Look.Marker, $"{p.A.Thing} and {p.B.Thing}"));
        Look[] series = [.. Enumerable.Range(0, 3 * Looks.Things.Count).Select(Looks.Series)];
        Assert.Equal(series.Length, series.Select(s => (s.Color, s.Style)).Distinct().Count());
    }

    [Theory]
    [MemberData(nameof(Eyes))]
    public void Patterns_are_told_apart_and_their_names_read_on_them(string eyes)
    {
        (string Name, OxyColor Color)[] all =
        [
            .. Enum.GetValues<WalkPattern>().Cast<WalkPattern?>().Append(null).Select(p => (PatternClasses.Name(p), PatternClasses.Color(p))),
        ];
        Assert.All(Pairs(all), p => Apart(p.A.Color, p.B.Color, eyes, AreasApart, $"{p.A.Name} and {p.B.Name}"));
        Assert.All(all, p => Assert.True(ColourScience.Contrast(ChartStyle.TextOn(p.Color), p.Color) >= TextContrast, p.Name));
    }

    private static void Apart(OxyColor a, OxyColor b, string eyes, double least, string words)
    {
        double distance = ColourScience.Distance(a, b, eyes);
        Assert.True(distance >= least, $"{words}, {eyes}: {distance:F1}");
    }

    private static IEnumerable<(T A, T B)> Pairs<T>(IReadOnlyList<T> all) => all.SelectMany((a, i) => all.Skip(i + 1).Select(b => (a, b)));
}
