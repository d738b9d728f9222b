using LureSim.Scenarios.Outlines;
using SkiaSharp;

namespace LureSim.Reports.Tests.Files;

/// <summary>Our reader of path data against Skia's.</summary>
public sealed class SvgPathTests
{
    [Theory]
    [InlineData("M10 20C15 5 60 -4 80 20S110 30 120 20")]
    [InlineData("m10,20c5-15,50-24,70,0s30,10,40,0l-5,30H40v-9h-3V12z")]
    [InlineData("M0 0Q10 20 30 0T60 0t30.5.5q-1e1 2.5E+1-.5 30Z")]
    [InlineData("M10 20a50 10 0 0150-10 50 10 0 1 1-50 10z")]
    [InlineData("M0 0A30 12 25 0 1 50 20A30 12 -40 1 0 20 60A5 5 0 0 0 90 60Z")]
    [InlineData("M5,5 L 20 5 20 20 5 20 z m 40 0 l 9 0 0 9 z l -3 3 L 44 1")]
    public void Every_point_lies_on_the_line_that_skia_reads(string data)
    {
        Assert.Null(PathReader.Read(data, out List<List<Curve>> pieces));
        using SKPath path = SKPath.ParseSvgPathData(data);
        using var contour = new SKPathMeasure(path, forceClosed: false, resScale: 100f);
        int n = 0;
        do
        {
            List<Spot> points = [.. pieces[n].SelectMany(c => Enumerable.Range(0, 2001).Select(i => c.At(i / 2000.0)))];
            double length = points.Skip(1).Zip(points, (b, a) => (b - a).Length).Sum();
            Assert.Equal(contour.Length, length, 2e-3 * length);
            for (int i = 0; i <= 50; i++)
            {
                SKPoint on = contour.GetPosition(contour.Length * i / 50);
                Assert.InRange(points.Min(p => (p - new Spot(on.X, on.Y)).Length), 0.0, 0.05);
            }

            n++;
        }
        while (contour.NextContour());

        Assert.Equal(pieces.Count, n);
    }

    [Theory]
    [InlineData("M10 20L")]
    [InlineData("M10 20 Y 30")]
    [InlineData("10 20")]
    public void What_skia_refuses_is_refused(string data)
    {
        Assert.Null(SKPath.ParseSvgPathData(data));
        Assert.NotNull(PathReader.Read(data, out _));
    }
}
