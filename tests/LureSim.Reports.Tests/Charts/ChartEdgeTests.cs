using LureSim.Reports.Kit.Charts;
using LureSim.Reports.Kit.Drawing;
using LureSim.Reports.Tests.Support;
using OxyPlot.Axes;

namespace LureSim.Reports.Tests.Charts;

/// <summary>Every picture at its edges: no word is cut off, none lies on another or on a swatch, none is too small, whatever the names and the units.</summary>
public sealed class ChartEdgeTests
{
    // Letters of a picture 1600 px wide that is shown over the width of a page are as large as the text of that page.
    private const double SmallestPx = 24;

    private static readonly (string Name, Func<Chart> Build)[] Charts = [.. StoredCharts.All.Select(c => (c.Name, c.Build)), .. HardCharts.All];

    public static TheoryData<string> Names => [.. Charts.Select(c => c.Name)];

    [Theory]
    [MemberData(nameof(Names))]
    public void No_word_is_cut_off_or_covered(string name)
    {
        Chart chart = Build(name);
        Pictures.Keep(chart with { Name = name });
        (IReadOnlyList<PlacedText> texts, IReadOnlyList<string> cutOff) = SvgTexts.Read(ChartRenderer.Svg(chart));
        Assert.True(texts.Count > 3, "no words found");
        Assert.True(cutOff.Count == 0, "cut off: " + string.Join("; ", cutOff));
        for (int i = 0; i < texts.Count; i++)
        {
            Assert.True(texts[i].Size >= SmallestPx, $"too small: {texts[i]}, {texts[i].Size} px");
            PlacedText? covered = texts.Skip(i + 1).FirstOrDefault(texts[i].Overlaps);
            Assert.True(covered is null, $"{texts[i]} lies on {covered}");
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void No_word_lies_on_a_swatch_of_the_legend(string name)
    {
        Chart chart = Build(name);
        HashSet<string> labels = [.. chart.Model.Annotations.OfType<PanelHeader>().SelectMany(h => h.Entries).Select(e => HeaderLayout.Fit(e.Label))];
        IReadOnlyList<PlacedText> texts = SvgTexts.Read(ChartRenderer.Svg(chart)).Texts;
        // Legends stand above; names written into a picture have no swatch.
        foreach (PlacedText label in texts.Where(t => labels.Contains(t.Text)).GroupBy(t => t.Text).Select(g => g.MinBy(t => t.Top)!))
        {
            PlacedText swatch = label with { Text = $"swatch of '{label.Text}'", Left = label.Left - HeaderLayout.SwatchWidth - HeaderLayout.Gap, Right = label.Left };
            PlacedText? on = texts.FirstOrDefault(t => t != label && t.Overlaps(swatch));
            Assert.True(on is null, $"{on} lies on {swatch}");
        }
    }

    // Words past the right edge, words on words: both are seen.
    [Fact]
    public void The_check_finds_what_it_looks_for()
    {
        Chart chart = Build("cast_match");
        chart.Model.Title = new string('W', 80);
        Assert.NotEmpty(SvgTexts.Read(ChartRenderer.Svg(chart)).CutOff);
        PlacedText a = new("a", 0, 0, 100, 20, 26);
        Assert.True(a.Overlaps(a with { Left = 90, Right = 190 }));
        Assert.False(a.Overlaps(a with { Left = 101, Right = 190 }));
    }

    [Fact]
    public void Pictures_of_a_few_rows_keep_one_shape()
    {
        string[] folders = ["Cast", "Cadence", "Doubt", "Sweep"];
        Chart[] mine = [.. StoredCharts.All.Where(c => folders.Any(f => c.Builder.Namespace!.EndsWith('.' + f, StringComparison.Ordinal))).Select(c => c.Build())];
        mine = [.. mine.Where(c => c.Model.Axes.Count(a => a.Position == AxisPosition.Left) <= 4)];
        Assert.True(mine.Length > 15);
        Assert.All(mine, c => Assert.True((double)c.Width / c.Height is >= 1.59 and <= 1.78, $"{c.Name}: {c.Width} x {c.Height}"));
    }

    private static Chart Build(string name) => Charts.Single(c => c.Name == name).Build();
}
