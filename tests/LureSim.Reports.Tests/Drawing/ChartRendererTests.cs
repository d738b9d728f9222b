using System.Globalization;
using System.Text;
using System.Xml.Linq;
using LureSim.Reports.Kit.Charts;
using LureSim.Reports.Kit.Drawing;
using LureSim.Reports.Kit.Json;
using LureSim.Reports.Kit.Text;
using LureSim.Reports.Retrieve;
using LureSim.Reports.Tests.Support;
using OxyPlot.Axes;
using SkiaSharp;

namespace LureSim.Reports.Tests.Drawing;

public sealed class ChartRendererTests
{
    private static Chart Plain(string title)
    {
        var model = ChartStyle.NewModel(title, " ");
        model.Axes.Add(ChartStyle.NewAxis(AxisPosition.Bottom, "Time, s", 0, 1));
        model.Axes.Add(ChartStyle.NewAxis(AxisPosition.Left, "Pull, N", 0, 1));
        return new Chart("plain", model, 800, 500);
    }

    [Fact]
    public void A_titled_picture_has_ink_where_its_title_stands()
    {
        Assert.True(Ink(Plain("Pull, slack, turn")) > 500);
        Assert.Equal(0, Ink(Plain(" ")));

        static int Ink(Chart chart)
        {
            using SKBitmap bitmap = SKBitmap.Decode(ChartRenderer.Png(chart));
            int dark = 0;
            for (int y = 5; y < 70; y++)
            {
                for (int x = 0; x < bitmap.Width; x++)
                {
                    dark += bitmap.GetPixel(x, y).Red < 128 ? 1 : 0;
                }
            }

            return dark;
        }
    }

    [Fact]
    public void What_steers_a_viewer_is_escaped_in_both_kinds_of_picture()
    {
        Chart chart = Plain("a\u001b[31m\u202eb\u0000");
        string svg = Encoding.UTF8.GetString(ChartRenderer.Svg(chart));
        Assert.Contains("a\\u001B[31m\\u202Eb\\u0000", XDocument.Parse(svg).Root!.Value, StringComparison.Ordinal);
        Assert.DoesNotContain('\u202e', svg);
        Assert.NotEmpty(ChartRenderer.Png(chart));
    }

    [Fact]
    public void The_drawing_library_looks_for_no_installed_fonts()
    {
        string? library = Directory
            .EnumerateFiles(AppContext.BaseDirectory, "libSkiaSharp.so", SearchOption.AllDirectories)
            .FirstOrDefault(f => f.Contains("linux-x64", StringComparison.Ordinal));
        Assert.NotNull(library);
        Assert.Equal(-1, File.ReadAllBytes(library).AsSpan().IndexOf("libfontconfig"u8));
    }

    [Fact]
    public void Same_chart_same_bytes()
    {
        Assert.Equal(ChartRenderer.Svg(Plain("a")), ChartRenderer.Svg(Plain("a")));
        Assert.Equal(ChartRenderer.Png(Plain("a")), ChartRenderer.Png(Plain("a")));
        Assert.NotEqual(ChartRenderer.Png(Plain("a")), ChartRenderer.Png(Plain("b")));
    }

    [Fact]
    public void Svg_is_well_formed_scales_and_names_its_font()
    {
        string text = Encoding.UTF8.GetString(ChartRenderer.Svg(Plain("Pull & slack < turn")));
        XElement svg = XDocument.Parse(text).Root!;
        Assert.Equal("0 0 800 500", svg.Attribute("viewBox")!.Value);
        XElement[] words = [.. svg.Descendants().Where(e => e.Name.LocalName == "text")];
        Assert.Contains(words, w => w.Value == "Pull & slack < turn");
        Assert.All(words, w => Assert.Equal("DejaVu Sans, sans-serif", w.Attribute("font-family")!.Value));
        Assert.DoesNotContain('\r', text);
    }

    [Fact]
    public void Pictures_and_words_do_not_depend_on_the_culture()
    {
        byte[] here = ChartRenderer.Svg(Plain("a"));
        string run = Whole();
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = new("de-DE");
            Assert.Equal(here, ChartRenderer.Svg(Plain("a")));
            Assert.Equal(run, Whole());
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }

        static string Whole() => RetrieveText.Build(MadeUpRetrieve.Result(), RunNotes.None)
            + string.Concat(RetrieveCharts.All(MadeUpRetrieve.Result(), Shown.Both).Select(c => Encoding.UTF8.GetString(ChartRenderer.Svg(c))));
    }
}
