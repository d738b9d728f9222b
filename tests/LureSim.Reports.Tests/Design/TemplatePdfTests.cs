using LureSim.Model.Lures;
using LureSim.Model.Trim;
using LureSim.Reports.Design;
using LureSim.Reports.Kit.Plans;
using LureSim.Reports.Kit.Text;
using LureSim.Reports.Tests.Support;
using SkiaSharp;

namespace LureSim.Reports.Tests.Design;

/// <summary>The template as pages: true to scale in the file itself, whole over several pages, the same bytes each time.</summary>
public sealed class TemplatePdfTests
{
    private const double Within = 0.01, PointsPerMm = 72.0 / 25.4;

    private static IReadOnlyList<PlanSheet> Pages(LureSpec lure, PaperSize paper) => TemplateSheets.Pages("Made up", MadeUpDesign.Float(lure), paper, Shown.Both);

    [Fact]
    public void Pages_are_as_large_as_the_paper()
    {
        foreach ((PaperSize paper, double width, double height) in new[] { (PaperSize.A4, 297.0 * PointsPerMm, 210.0 * PointsPerMm), (PaperSize.Letter, 792.0, 612.0) })
        {
            (double w, double h) = Assert.Single(PdfPaths.Pages(PlanPdf.Write(Pages(MadeUpDesign.Cigar, paper), "Made up")));
            Assert.Equal(width, w, 0.01);
            Assert.Equal(height, h, 0.01);
        }
    }

    [Fact]
    public void In_the_file_itself_bars_and_outline_have_their_lengths()
    {
        IReadOnlyList<IReadOnlyList<PlanPoint>> paths = PdfPaths.Stroked(PlanPdf.Write(Pages(MadeUpDesign.Cigar, PaperSize.Letter), "Made up"));
        Assert.Contains(paths, p => Is(p, 50.0, 0.0));
        Assert.Contains(paths, p => Is(p, 50.8, 0.0));
        Assert.Equal(2, paths.Count(p => Is(p, 115.0, 21.0)));
        Assert.DoesNotContain(paths, p => Is(p, 50.1, 0.0));

        static bool Is(IReadOnlyList<PlanPoint> path, double width, double height) =>
            Math.Abs(path.Max(p => p.X) - path.Min(p => p.X) - width) < Within && Math.Abs(path.Max(p => p.Y) - path.Min(p => p.Y) - height) < Within;
    }

    [Fact]
    public void On_a_raster_of_300_dots_an_inch_the_bar_has_591_dots()
    {
        const double dots = 300.0 / 25.4;
        PlanSheet page = Assert.Single(Pages(MadeUpDesign.Cigar, PaperSize.A4));
        PlanPath bar = page.Items.OfType<PlanPath>().Single(p => p.Name == "bar-50-mm");
        using var bitmap = new SKBitmap((int)(page.WidthMm * dots), (int)(page.HeightMm * dots));
        using var canvas = new SKCanvas(bitmap);
        canvas.Clear(SKColors.White);
        canvas.Scale((float)dots);
        PlanCanvas.Draw(canvas, page.Items);

        // The longest run of ink in its row: 50 mm of 11.81 dots and half a tick at each end.
        int row = (int)(bar.Points[0].Y * dots), run = 0, longest = 0;
        for (int x = 0; x < bitmap.Width / 3; x++)
        {
            run = bitmap.GetPixel(x, row).Red < 160 ? run + 1 : 0;
            longest = Math.Max(longest, run);
        }

        Assert.InRange(longest, 590, 594);
    }

    [Fact]
    public void Two_writings_give_the_same_bytes_and_no_date()
    {
        byte[] one = PlanPdf.Write(Pages(MadeUpDesign.Long, PaperSize.A4), "Made up"), two = PlanPdf.Write(Pages(MadeUpDesign.Long, PaperSize.A4), "Made up");
        Assert.Equal(one, two);
        Assert.DoesNotContain("Date", System.Text.Encoding.Latin1.GetString(one), StringComparison.Ordinal);
    }

    [Fact]
    public void A_long_or_high_lure_is_whole_over_its_pages()
    {
        foreach ((LureSpec lure, PaperSize paper) in new[] { (MadeUpDesign.Long, PaperSize.A4), (MadeUpDesign.High, PaperSize.Letter) })
        {
            IReadOnlyList<PlanSheet> pages = Pages(lure, paper);
            PlanWindow[] windows = [.. pages.SelectMany(p => p.Items.OfType<PlanWindow>())];
            Assert.True(windows.Length > 1);
            PlanPoint[] all = [.. windows[0].Items.OfType<PlanPath>().SelectMany(p => p.Points)];
            Assert.DoesNotContain(all, p => !windows.Any(w => Inside(w, p)));
            Assert.All(pages.SelectMany(p => p.Items.OfType<PlanWindow>().Select(w => (Page: p, Window: w))), x =>
                Assert.True(x.Window.Corner.X + x.Window.WidthMm <= x.Page.WidthMm - 9.0 && x.Window.Corner.Y + x.Window.HeightMm <= x.Page.HeightMm - 9.0));
        }

        static bool Inside(PlanWindow w, PlanPoint p) =>
            p.X >= w.From.X && p.X <= w.From.X + w.WidthMm && p.Y >= w.From.Y && p.Y <= w.From.Y + w.HeightMm;
    }

    [Fact]
    public void Joins_of_neighbouring_pages_are_the_same_place_of_the_lure()
    {
        IReadOnlyList<PlanSheet> pages = Pages(MadeUpDesign.Long, PaperSize.A4);
        Assert.Equal(2, pages.Count(p => p.Items.OfType<PlanWindow>().Any()));
        Assert.Equal(Place(pages[0], "join-after"), Place(pages[1], "join-before"), 1e-9);

        static double Place(PlanSheet page, string name)
        {
            PlanWindow window = page.Items.OfType<PlanWindow>().Single();
            return page.Items.OfType<PlanPath>().Single(p => p.Name == name).Points[0].X - window.Corner.X + window.From.X;
        }
    }

    [Fact]
    public void A_lure_that_lies_over_has_no_line_of_water()
    {
        LureSpec high = MadeUpDesign.Cigar with { Ballast = [new BallastSpec(0.004, 0.0, 0.008)] };
        TrimResult trim = MadeUpDesign.Float(high);
        Assert.False(trim.IsUpright);
        Assert.DoesNotContain(TemplateSheets.Whole("Made up", trim, Shown.Both).Items, i => i.Name == "water");
    }
}
