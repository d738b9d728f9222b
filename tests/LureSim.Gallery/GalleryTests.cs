using System.Text;
using LureSim.Reports.Kit.Charts;
using LureSim.Reports.Kit.Drawing;
using OxyPlot;
using OxyPlot.Axes;
using OxyPlot.Series;
using SkiaSharp;

namespace LureSim.Gallery;

/// <summary>The list of pictures against the folder, and what finds a stale one. Whether they are stale: <c>--check</c>, in <c>.ci/run</c>.</summary>
public sealed class GalleryTests
{
    [Fact]
    public void Every_file_of_the_folder_is_on_the_list_and_every_entry_is_there()
    {
        string[] there = [.. Directory.GetFiles(Path.Combine(Program.Root(), "plots")).Select(f => Path.GetFileName(f)!).Where(f => f != Seals.FileName)];
        Assert.Equal(Pictures.All.Select(p => p.File).Order(StringComparer.Ordinal), there.Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Every_caption_is_one_or_two_sentences_without_marks()
    {
        Assert.All(Pictures.All, p => Assert.InRange(p.Caption.Length, 40, 260));
        Assert.All(Pictures.All, p => Assert.EndsWith(".", p.Caption, StringComparison.Ordinal));
        Assert.All(Pictures.All, p => Assert.True(p.Caption.IndexOfAny(['<', '*', '`', '|', '_']) < 0, p.Caption));
    }

    [Fact]
    public void The_moving_picture_is_small() =>
        Assert.InRange(new FileInfo(Path.Combine(Program.Root(), "plots", "walk.svg")).Length, 5_000, 150_000);

    [Fact]
    public void One_digit_of_a_label_makes_a_picture_stale()
    {
        Assert.True(Sameness.Of("a.png", Png("24 cm", 1.0), Png("24 cm", 1.0)));
        Assert.False(Sameness.Of("a.png", Png("24 cm", 1.0), Png("25 cm", 1.0)));
        Assert.False(Sameness.Of("a.png", Png("5 cm", 1.0), Png("6 cm", 1.0)));
        Assert.False(Sameness.Of("a.png", Png("24 cm", 1.0), Png("24 cm", 1.01)));
    }

    [Fact]
    public void The_rounding_of_a_processor_makes_none_stale()
    {
        byte[] png = Png("24 cm", 1.0);
        using SKBitmap bitmap = SKBitmap.Decode(png);
        for (int i = 0; i < bitmap.Width; i++)
        {
            SKColor c = bitmap.GetPixel(i, 40);
            bitmap.SetPixel(i, 40, new SKColor((byte)(c.Red ^ 1), c.Green, (byte)(c.Blue ^ 2)));
        }

        using SKData data = bitmap.Encode(SKEncodedImageFormat.Png, 100);
        Assert.NotEqual(png, data.ToArray());
        Assert.True(Sameness.Of("a.png", png, data.ToArray()));
        Assert.False(Sameness.Of("a.png", png, Encoding.UTF8.GetBytes("no picture")));
        Assert.False(Sameness.Of("a.svg", "1.0"u8.ToArray(), "1.1"u8.ToArray()));
    }

    [Fact]
    public void A_seal_sees_the_fourth_digit_and_not_the_twelfth()
    {
        Assert.Equal(Seals.Rounded("a 0.123412341234 b"), Seals.Rounded("a 0.123412341235 b"));
        Assert.NotEqual(Seals.Rounded("a 0.1234 b"), Seals.Rounded("a 0.1235 b"));
        Assert.NotEqual(Seals.Rounded("12 twitches"), Seals.Rounded("13 twitches"));
    }

    [Fact]
    public void A_command_is_read_as_typed() =>
        Assert.Equal(["luresim", "cadence", "a.toml", "--from", "1 /s", "--json"], Workshop.Words("luresim cadence a.toml --from \"1 /s\" --json"));

    private static byte[] Png(string words, double slope)
    {
        PlotModel model = ChartStyle.NewModel("A title", $"It goes {words} far");
        model.Axes.Add(ChartStyle.NewAxis(AxisPosition.Bottom, "x, m", 0, 1));
        model.Axes.Add(ChartStyle.NewAxis(AxisPosition.Left, "y, m", 0, 2));
        var line = new LineSeries { Color = ChartStyle.Blue, StrokeThickness = ChartStyle.LineWidth };
        line.Points.AddRange([new(0, 0), new(1, slope)]);
        model.Series.Add(line);
        return ChartRenderer.Png(new Chart("a", model));
    }
}
